using System.Reflection;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Rooms;

/// <summary>Each layer knows only those below it, and each package has one room.</summary>
public sealed class LayersTests
{
    // Layer, what it may use of ours, and which packages are at home in it, by the room that speaks to them.
    private static readonly (Assembly Layer, string[] Below, (string Package, string Room)[] Packages)[] s_layers =
    [
        (typeof(KnowledgeBase).Assembly, [], [("YamlDotNet", "Yaml")]),
        (typeof(Advisor).Assembly, ["WeedAdvisor.Knowledge"], [("NRules", "Engine"), ("NodaTime", "Entry")]),
        (typeof(Wage).Assembly, ["WeedAdvisor.Knowledge", "WeedAdvisor.Inference"], []),
        (typeof(Safety).Assembly, ["WeedAdvisor.Knowledge", "WeedAdvisor.Inference", "WeedAdvisor.Planning"], []),
    ];

    [Fact]
    public void A_layer_knows_only_those_below_it_and_its_own_packages()
    {
        foreach ((Assembly layer, string[] below, (string Package, string Room)[] packages) in s_layers)
        {
            string[] used =
            [
                .. layer
                    .GetReferencedAssemblies()
                    .Select(name => name.Name!)
                    .Where(name =>
                        !name.StartsWith("System", StringComparison.Ordinal)
                        && name is not ("netstandard" or "mscorlib")
                        && !name.StartsWith("Microsoft.", StringComparison.Ordinal)
                    ),
            ];
            string[] allowed =
            [
                .. below,
                .. packages.Select(one => one.Package),
                .. packages.Select(one => one.Package + ".RuleModel"),
            ];
            Assert.Empty(used.Except(allowed, StringComparer.Ordinal));
        }
    }

    [Fact]
    public void A_package_is_spoken_to_in_one_room()
    {
        foreach ((Assembly layer, _, (string Package, string Room)[] packages) in s_layers)
        {
            foreach ((string package, string room) in packages)
            {
                string[] where =
                [
                    .. Sources
                        .Of(layer.GetName().Name!)
                        .Where(file => file.Uses(package))
                        .Select(file => file.Room)
                        .Distinct(),
                ];
                Assert.Equal([room], where);
            }
        }

        SourceFile[] program = Sources.Of("WeedAdvisor");
        Assert.Equal(
            ["Screens"],
            program.Where(file => file.Uses("Terminal.Gui")).Select(file => file.Room).Distinct()
        );
        Assert.All(program.Where(file => file.Uses("System.CommandLine")), file =>
            Assert.True(file.Room is "Commands" or "", file.Path)
        );
    }

    [Fact]
    public void Packages_do_not_flow_to_who_uses_a_layer()
    {
        foreach (string project in (string[])["WeedAdvisor.Knowledge", "WeedAdvisor.Inference"])
        {
            string text = File.ReadAllText(Path.Combine(Repository.Folder, "src", project, project + ".csproj"));
            Assert.All(
                text.Split('\n').Where(line => line.Contains("<PackageReference", StringComparison.Ordinal)),
                line => Assert.Contains("PrivateAssets=\"compile\"", line, StringComparison.Ordinal)
            );
        }
    }

    // A sum may use those before it and never those after.
    [Fact]
    public void The_rooms_of_planning_know_each_other_in_one_direction() =>
        AssertOneDirection(
            "WeedAdvisor.Planning",
            "",
            ["Rates", "Dates", "Blocks", "Costs", "Weeding", "OneYear", "Rounds", "Money", "Season", "Plan"]
        );

    [Fact]
    public void The_rooms_of_the_interview_know_each_other_in_one_direction() =>
        AssertOneDirection(
            "WeedAdvisor",
            "Interview",
            ["Words", "Earlier", "Files", "Session", "Pages", "Desks", "Pickers"]
        );

    // Lines on paper and screens show what an interview says; it knows of neither.
    [Fact]
    public void The_interview_knows_nobody_who_shows_it()
    {
        string[] showing = ["Asking", "Commands", "Screens"];
        Assert.All(Sources.Of("WeedAdvisor").Where(file => file.Room == "Interview"), file =>
            Assert.DoesNotContain(showing, room => file.Uses("WeedAdvisor." + room))
        );
    }

    // Every room under a folder has its place in the order, and uses only those before it.
    private static void AssertOneDirection(string project, string folder, string[] order)
    {
        string home = folder.Length == 0 ? project : $"{project}.{folder}";
        SourceFile[] files = [.. Sources.Of(project).Where(file => folder.Length == 0 || file.Room == folder)];
        Assert.NotEmpty(files);
        foreach (SourceFile file in files)
        {
            string room = folder.Length == 0 ? file.Room : file.RoomIn(folder);
            int own = Array.IndexOf(order, room);
            if (folder.Length > 0)
                Assert.True(own >= 0, $"{file.Path} stands in no room of {folder}");
            foreach (string later in order.Skip(own + 1))
                Assert.False(file.Uses($"{home}.{later}") && own >= 0, $"{file.Path} uses {later}");
        }
    }
}
