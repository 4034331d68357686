using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Screens;

public sealed class LayerTests
{
    [Fact]
    public void The_terminal_library_is_met_only_by_the_screens()
    {
        string program = Path.Combine(Repository.Folder, "src", "WeedAdvisor");
        string[] meeting =
        [
            .. Directory
                .EnumerateFiles(program, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(program, file).Replace('\\', '/'))
                .Where(file =>
                    !file.StartsWith("obj/", StringComparison.Ordinal)
                    && !file.StartsWith("bin/", StringComparison.Ordinal)
                )
                .Where(file =>
                    File.ReadAllText(Path.Combine(program, file)).Contains("Terminal.Gui", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal),
        ];
        Assert.NotEmpty(meeting);
        Assert.All(meeting, file => Assert.StartsWith("Screens/", file, StringComparison.Ordinal));
    }
}
