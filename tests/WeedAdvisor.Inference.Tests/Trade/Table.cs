using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// A published table transcribed for the tests: lines of cells, with what it is and where it was read at its top.
/// </summary>
internal static class Table
{
    /// <summary>The cells of every line but the notes.</summary>
    public static string[][] Read(string name)
    {
        string root = Path.GetDirectoryName(Repository.Rules)!;
        string path = Path.Combine(root, "tests", "WeedAdvisor.Inference.Tests", "Trade", "Tables", name);
        return [.. File.ReadLines(path).Where(line => !line.StartsWith('#')).Select(line => line.Split(';'))];
    }
}
