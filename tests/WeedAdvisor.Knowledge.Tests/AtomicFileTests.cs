using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class AtomicFileTests : IDisposable
{
    private readonly TempFolder _folder = new();

    private string File1 => _folder.At("visit.yaml");

    [Fact]
    public void A_new_file_holds_the_text_and_nothing_else_is_left_behind()
    {
        AtomicFile.Write(File1, "grün\n");

        Assert.Equal([(byte)'g', (byte)'r', 0xC3, 0xBC, (byte)'n', (byte)'\n'], File.ReadAllBytes(File1));
        Assert.Equal(["visit.yaml"], Names());
    }

    [Fact]
    public void The_permissions_of_the_file_are_kept()
    {
        if (OperatingSystem.IsWindows())
            return;
        AtomicFile.Write(File1, "one");
        File.SetUnixFileMode(File1, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        AtomicFile.Write(File1, "two");

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(File1));
    }

    [Fact]
    public void A_link_stays_a_link_and_its_target_changes()
    {
        string target = _folder.Write("elsewhere/real.yaml", "one");
        File.CreateSymbolicLink(File1, target);

        AtomicFile.Write(File1, "two");

        Assert.NotNull(new FileInfo(File1).LinkTarget);
        Assert.Equal("two", File.ReadAllText(target));
    }

    [Fact]
    public void A_link_to_nothing_yet_is_followed_too()
    {
        File.CreateSymbolicLink(File1, _folder.At("new.yaml"));

        AtomicFile.Write(File1, "one");

        Assert.Equal("one", File.ReadAllText(_folder.At("new.yaml")));
        Assert.NotNull(new FileInfo(File1).LinkTarget);
    }

    [Fact]
    public void When_the_target_is_a_folder_it_fails_and_leaves_nothing_behind()
    {
        Directory.CreateDirectory(File1);

        Exception? failure = Record.Exception(() => AtomicFile.Write(File1, "text"));

        Assert.True(failure is IOException or UnauthorizedAccessException, failure?.ToString());
        Assert.Equal(["visit.yaml"], Names());
    }

    [Fact]
    public void Without_its_folder_it_fails_and_says_so() =>
        Assert.Throws<DirectoryNotFoundException>(() => AtomicFile.Write(_folder.At("missing/visit.yaml"), "text"));

    [Fact]
    public async Task Whoever_reads_while_it_is_written_finds_a_whole_file()
    {
        string[] contents = [new string('a', 50_000), new string('b', 50_000)];
        AtomicFile.Write(File1, contents[0]);
        using var done = new CancellationTokenSource();
        Task<int> reading = Task.Run(
            () =>
            {
                int reads = 0;
                for (; !done.IsCancellationRequested; reads++)
                    Assert.Contains(File.ReadAllText(File1), contents);
                return reads;
            },
            TestContext.Current.CancellationToken
        );

        for (int i = 0; i < 200; i++)
            AtomicFile.Write(File1, contents[i % 2]);
        await done.CancelAsync();

        Assert.True(await reading > 0);
    }

    public void Dispose() => _folder.Dispose();

    private IEnumerable<string?> Names() =>
        new DirectoryInfo(_folder.Path)
            .EnumerateFileSystemInfos()
            .Select(entry => entry.Name)
            .Where(name => name != "elsewhere")
            .Order(StringComparer.Ordinal);
}
