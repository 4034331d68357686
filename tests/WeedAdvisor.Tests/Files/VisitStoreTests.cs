using System.Net.Sockets;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Files;

public sealed class VisitStoreTests : IDisposable
{
    private const string Told =
        "# told by the foreman\nvisit: v\nformat: 2\ndate: 2026-04-14 # a Tuesday\nareas:\n- id: a\n  name: A\nexpect: "
        + "[]\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("weedadvisor-").FullName;

    private readonly string _state = Directory.CreateTempSubdirectory("weedadvisor-").FullName;
    private readonly List<BackupLedger> _windows = [];

    public void Dispose()
    {
        _windows.ForEach(window => window.Dispose());
        Directory.Delete(_folder, recursive: true);
        Directory.Delete(_state, recursive: true);
    }

    [Fact]
    public void Saving_changes_the_lines_of_what_was_edited_and_nothing_else_and_keeps_the_state_before_the_first_save()
    {
        Write("a.yaml", Told);
        VisitStore store = Store();
        Visit visit = store.Load("a.yaml").Visit!;

        Assert.Equal(["a.yaml.bak"], [store.Save("a.yaml", visit with { Title = "One" }, "a.yaml").Value!.Copy]);
        Assert.Null(store.Save("a.yaml", visit with { Title = "Two" }, "a.yaml").Value!.Copy);
        Assert.Null(store.Save("a.yaml", visit with { Title = "Two" }, "a.yaml").Value!.Copy);

        Assert.Equal(Told.Replace("format: 2\n", "format: 2\ntitle: Two\n", StringComparison.Ordinal), Read("a.yaml"));
        Assert.Equal(Told, Read("a.yaml.bak"));
        Assert.Equal(["a.yaml", "a.yaml.bak"], Names());
    }

    [Fact]
    public void A_visit_that_was_not_edited_is_saved_without_touching_the_file()
    {
        Write("a.yaml", "\uFEFF" + Told);
        VisitStore store = Store();
        byte[] before = File.ReadAllBytes(At("a.yaml"));

        Assert.True(store.Save("a.yaml", store.Load("a.yaml").Visit!, "a.yaml").IsGood);

        Assert.Equal(before, File.ReadAllBytes(At("a.yaml")));
        Assert.Equal(["a.yaml"], Names());
    }

    [Fact]
    public void Under_another_name_the_comments_go_along()
    {
        Write("a.yaml", Told);
        VisitStore store = Store();
        Visit visit = store.Load("a.yaml").Visit!;

        Saved saved = store.Save("b.yaml", visit with { Title = "One" }, "a.yaml").Value!;

        Assert.Equal("Saved to b.yaml.", saved.Told("b.yaml"));
        Assert.Equal(Told.Replace("format: 2\n", "format: 2\ntitle: One\n", StringComparison.Ordinal), Read("b.yaml"));
        Assert.Equal(Told, Read("a.yaml"));
    }

    [Fact]
    public void A_copy_that_is_not_the_programs_own_is_left_alone()
    {
        Write("a.yaml", Told);
        Write("a.yaml.bak", "somebody's");
        Write("a.yaml.1.bak", "somebody else's");

        Saved saved = Store().Save("a.yaml", Visit()).Value!;

        Assert.Equal("a.yaml.2.bak", saved.Copy);
        Assert.Contains("a.yaml.bak was left alone", Assert.Single(saved.Notes), StringComparison.Ordinal);
        Assert.Equal(
            ["somebody's", "somebody else's", Told],
            [Read("a.yaml.bak"), Read("a.yaml.1.bak"), Read("a.yaml.2.bak")]
        );
    }

    [Fact]
    public void A_copy_of_an_earlier_start_is_replaced_unless_somebody_has_changed_it()
    {
        Write("a.yaml", Told);
        Store().Save("a.yaml", Visit() with { Title = "One" });
        string one = Read("a.yaml");
        _windows[^1].Dispose();
        Assert.Equal("a.yaml.bak", Store().Save("a.yaml", Visit() with { Title = "Two" }).Value!.Copy);
        Assert.Equal(one, Read("a.yaml.bak"));

        _windows[^1].Dispose();
        Write("a.yaml.bak", "changed by hand");
        Assert.Equal("a.yaml.1.bak", Store().Save("a.yaml", Visit() with { Title = "Three" }).Value!.Copy);
        Assert.Equal("changed by hand", Read("a.yaml.bak"));
    }

    [Fact]
    public void A_copy_of_a_window_that_is_still_open_is_left_alone()
    {
        Write("a.yaml", Told);
        Store().Save("a.yaml", Visit() with { Title = "One" });
        Assert.Equal("a.yaml.1.bak", Store().Save("a.yaml", Visit() with { Title = "Two" }).Value!.Copy);
        Assert.Equal(Told, Read("a.yaml.bak"));
    }

    [Fact]
    public void A_file_changed_by_others_is_left_alone_until_writing_over_it_is_asked_for()
    {
        Write("a.yaml", Told);
        VisitStore store = Store();
        Visit mine = store.Load("a.yaml").Visit! with { Title = "Mine" };
        store.Save("a.yaml", mine, "a.yaml");
        string theirs = Told.Replace("by the foreman", "by another", StringComparison.Ordinal);
        Write("a.yaml", theirs);

        NotSaved refused = store.Save("a.yaml", mine, "a.yaml").Refusals[0];
        Assert.True(refused.IsChanged);
        Assert.Equal("a.yaml was changed by another window or program since it was read here.", refused.Why);
        Assert.Equal(theirs, Read("a.yaml"));

        Saved saved = store.Save("a.yaml", mine, "a.yaml", over: true).Value!;
        Assert.Equal("a.yaml.1.bak", saved.Copy);
        Assert.Equal([Told, theirs], [Read("a.yaml.bak"), Read("a.yaml.1.bak")]);
        Assert.Equal(
            theirs.Replace("format: 2\n", "format: 2\ntitle: Mine\n", StringComparison.Ordinal),
            Read("a.yaml")
        );
        Assert.True(store.Save("a.yaml", mine with { Title = "Again" }, "a.yaml").IsGood);
    }

    [Fact]
    public void A_file_that_was_deleted_is_written_anew_with_its_comments_and_that_is_told()
    {
        Write("a.yaml", Told);
        VisitStore store = Store();
        Visit visit = store.Load("a.yaml").Visit!;
        File.Delete(At("a.yaml"));

        Saved saved = store.Save("a.yaml", visit, "a.yaml").Value!;

        Assert.Equal(
            "Saved to a.yaml. The file had been deleted since it was read here; it is written anew.",
            saved.Told("a.yaml")
        );
        Assert.Equal(Told, Read("a.yaml"));
    }

    [Fact]
    public void What_cannot_be_changed_line_by_line_is_written_anew_and_it_is_told_where_the_comments_are()
    {
        const string told = "{visit: v, date: 2026-04-14, areas: [{id: a, name: A}]} # all on one line\n";
        Write("a.yaml", told);
        VisitStore store = Store();
        Visit visit = store.Load("a.yaml").Visit!;
        store.Save("a.yaml", visit with { Title = "One" }, "a.yaml");

        Assert.Equal(told, Read("a.yaml.bak"));
        Assert.Equal(VisitText.Of(visit with { Title = "One" }), Read("a.yaml"));
        Write("b.yaml", told);
        visit = store.Load("b.yaml").Visit!;
        Assert.Equal(
            "The file could not be changed line by line and was written anew; its layout and comments are in "
                + "b.yaml.bak.",
            Assert.Single(store.Save("b.yaml", visit with { Title = "One" }, "b.yaml").Value!.Notes)
        );
    }

    [Fact]
    public void What_a_file_may_not_hold_is_saved_recovered_and_told()
    {
        Visit visit = Visit()
            .WithArea(
                0,
                VisitArea.Blank("area-1", "Area 1") with
                {
                    Past =
                    [
                        new PastApplication("pendimethalin-granules", new DateOnly(2026, 4, 20), null, WordSet.Empty),
                    ],
                }
            );

        string note = Assert.Single(Store().Save("a.yaml", visit).Value!.Notes);
        Assert.StartsWith(
            "It cannot be opened again before this is put right: a.yaml:",
            note,
            StringComparison.Ordinal
        );
        Assert.Equal(VisitText.Of(visit), Read("a.yaml"));

        Write("draft.yaml", new Draft(visit, "/a file.yaml", FileStamp.Of("x"u8)).Text());
        Draft draft = Draft.Read(At("draft.yaml"), SmallTrade.Knowledge)!;
        Assert.Equal(
            ("/a file.yaml", FileStamp.Of("x"u8), VisitText.Of(visit)),
            (draft.File, draft.Stamp, VisitText.Of(draft.Visit))
        );
    }

    [Fact]
    public async Task Only_files_are_replaced_and_nothing_else_is_opened()
    {
        if (OperatingSystem.IsWindows())
            return;
        Pipes.Make(At("pipe"));
        Directory.CreateDirectory(At("folder"));
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(At("socket")));
        File.CreateSymbolicLink(At("link"), At("pipe"));
        foreach (
            (string path, string kind) in new[]
            {
                ("pipe", "a pipe"),
                ("link", "a pipe"),
                ("folder", "a folder"),
                ("socket", "a socket"),
                ("/dev/null", "a device"),
            }
        )
        {
            // A pipe that was opened would wait for its other end for ever.
            Outcome<Saved, NotSaved> outcome = await Task.Run(
                    () => Store().Save(path, Visit(), null, over: true),
                    TestContext.Current.CancellationToken
                )
                .WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
            Assert.Equal(
                $"'{path}' is {kind}, not a file; nothing was written to it.",
                Assert.Single(outcome.Refusals).Why
            );
        }

        Assert.Equal(["folder", "link", "pipe", "socket"], Names());
        Assert.Equal(FileKind.Device, FileKinds.Of("/dev/null"));
    }

    [Fact]
    public void A_link_stays_a_link_and_its_target_is_saved_with_its_permissions()
    {
        if (OperatingSystem.IsWindows())
            return;
        Directory.CreateDirectory(At("elsewhere"));
        Write("elsewhere/real.yaml", Told);
        File.SetUnixFileMode(At("elsewhere/real.yaml"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(At("a.yaml"), At("elsewhere/real.yaml"));
        VisitStore store = Store();

        Saved saved = store.Save("a.yaml", store.Load("a.yaml").Visit! with { Title = "One" }, "a.yaml").Value!;

        Assert.NotNull(new FileInfo(At("a.yaml")).LinkTarget);
        Assert.Contains("title: One", Read("elsewhere/real.yaml"), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(At("elsewhere/real.yaml")));
        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite,
            File.GetUnixFileMode(At("elsewhere/real.yaml.bak"))
        );
        Assert.Equal(At("elsewhere/real.yaml.bak"), saved.Copy);
        Assert.Empty(saved.Notes);
    }

    private static Visit Visit() => VisitEdits.Begin(new DateOnly(2026, 4, 14));

    private VisitStore Store()
    {
        var ledger = new BackupLedger(_state);
        _windows.Add(ledger);
        return new VisitStore(SmallTrade.Knowledge, path => Path.GetFullPath(path, _folder), new FileSaver(ledger));
    }

    private string At(string name) => Path.Combine(_folder, name);

    private string Read(string name) => File.ReadAllText(At(name));

    private void Write(string name, string text) => AtomicFile.Write(At(name), text);

    private string?[] Names() =>
        [.. Directory.EnumerateFileSystemEntries(_folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)];
}
