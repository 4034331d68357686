using System.Globalization;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>The tables in <c>docs/weeding-model.md</c> are what the model says today.</summary>
public sealed class DocumentedTablesTests
{
    private static readonly string s_page = File.ReadAllText(
            Path.Combine(Path.GetDirectoryName(Repository.Rules)!, "docs", "weeding-model.md")
        )
        .ReplaceLineEndings("\n");

    [Fact]
    public void Hours_of_six_weeds() =>
        Stands("weed, alone, nothing stopped", season => Tenths(season.Hours), SixAlone);

    [Fact]
    public void Seeds_of_six_weeds() =>
        Stands("thousand seeds shed", season => Tenths(season.SeedsShed / 1000), SixAlone);

    [Fact]
    public void Hours_by_the_share_missed() =>
        Stands("missed", season => Tenths(season.Hours), [.. Shares.Select(share => ($"{share} %", Missing(share)))]);

    [Fact]
    public void Seeds_by_the_share_missed() =>
        Stands(
            "missed, thousand seeds",
            season => Tenths(season.SeedsShed / 1000),
            [.. Shares.Select(share => ($"{share} %", Missing(share)))]
        );

    private static int[] Shares => [0, 5, 10, 20];

    private static (string, WeedingSetup)[] SixAlone =>
        [.. Yard.SixWeeds.Select(weed => (ShippedRules.Knowledge.Weeds[weed].Name, Yard.Setup(weed)))];

    private static WeedingSetup Missing(int percent) =>
        Yard.Setup(Yard.SixWeeds) with
        {
            Control = 0.7,
            Missed = percent / 100.0,
        };

    private static void Stands(string title, Func<WeedingSeason, string> cell, (string Name, WeedingSetup Setup)[] rows)
    {
        int[] intervals = [.. IntervalComparison.UsualIntervals];
        string[] lines =
        [
            Row([title, .. intervals.Select(weeks => weeks == 1 ? "1 week" : $"{weeks} weeks")]),
            Row(["---", .. intervals.Select(_ => "---:")]),
            .. rows.Select(row => Row([row.Name, .. intervals.Select(weeks => cell(Yard.Run(row.Setup, weeks)))])),
        ];
        Assert.Contains(string.Join('\n', lines) + "\n", s_page, StringComparison.Ordinal);
    }

    private static string Row(string[] cells) => $"| {string.Join(" | ", cells)} |";

    private static string Tenths(double value) => value.ToString("#,0.0", CultureInfo.InvariantCulture);
}
