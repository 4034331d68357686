using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Rooms;

/// <summary>A line of code is read without moving the window: no line has more than 120 columns.</summary>
public sealed class ColumnsTests
{
    private const int Most = 120;

    // Addresses and patterns cannot be broken; the files of a knowledge folder stand in tests as they would on disk.
    private static readonly string[] s_unbreakable = ["://", "@\"^"];

    private static readonly string[] s_keptAsTheyAre = ["WeedAdvisor.Knowledge.Tests/Support/FixtureFiles.cs"];

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    public void No_line_of_code_is_longer_than_120_columns(string folder)
    {
        string root = Path.Combine(Repository.Folder, folder);
        IEnumerable<string> tooLong =
            from file in Directory.GetFiles(root, "*.cs", SearchOption.AllDirectories)
            let path = Path.GetRelativePath(root, file).Replace('\\', '/')
            where !path.Contains("/obj/", StringComparison.Ordinal) && !s_keptAsTheyAre.Contains(path)
            from line in File.ReadLines(file).Select((text, at) => (Text: text, Number: at + 1))
            where line.Text.Length > Most && !s_unbreakable.Any(line.Text.Contains)
            select $"{path}:{line.Number}";

        Assert.Empty(tooLong);
    }
}
