using System.Collections.Immutable;
using System.Text.RegularExpressions;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>One setting of units, in visit, option and region, and every report follows it.</summary>
public sealed partial class UnitsTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_demo = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    public static TheoryData<string[]> Reports { get; } =
        new(
            ["advise", s_demo, "--full"],
            ["why", s_demo, "oxadiazon-granule"],
            ["weeding", s_demo],
            ["money", s_demo],
            ["season", s_demo, "--area", Sizes.IsLong ? "container-yard" : "liner-bed", "--full"],
            ["rate", "product", "treatment", "--treatment", "oxadiazon-granule", "--area", "1000 ft2"]
        );

    [Theory]
    [MemberData(nameof(Reports))]
    public void Metric_and_US_pages_tell_the_same_quantities_each_in_its_units(string[] command)
    {
        string[] metric = Quantities(Run([.. command, "--units", "metric"]));
        string[] us = Quantities(Run([.. command, "--units", "us"]));
        Assert.NotEmpty(metric);
        Assert.All(metric, quantity => Assert.Matches("(mm|cm|m|m²|m2|km|kg/ha|g/ha|g/m2|kg|g|L|C)$", quantity));
        Assert.All(us, quantity => Assert.Matches("(in|ft|ft²|ft2|mi|lb/acre|lb/1000ft2|oz/acre|oz|lb|F)$", quantity));
        if (command[0] != "rate") // A rate is told in several units of one system.
            Assert.Equal(metric.Length, us.Length);
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void Nobody_who_says_nothing_and_nobody_who_wants_both_loses_a_quantity(string[] command)
    {
        string plain = Flat(Run(command)),
            both = Flat(Run([.. command, "--units", "both"]));
        Assert.All(Quantities(plain), quantity => Assert.Contains(quantity, both, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void A_word_that_is_no_unit_is_refused_with_the_nearest(string[] command)
    {
        CommandRun run = CommandRun.Of([.. command, "--units", "metrc", "--knowledge", s_rules]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(
            "--units is one of metric, us, both, not 'metrc' (did you mean 'metric'?)",
            run.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_visit_names_its_units_and_the_option_comes_before_them()
    {
        string file = Path.Combine(Directory.CreateTempSubdirectory().FullName, "visit.yaml");
        AtomicFile.Write(file, "units: us\n" + File.ReadAllText(s_demo));
        Assert.Equal(Run(["advise", s_demo, "--units", "us"]), Run(["advise", file]));
        Assert.Equal(Run(["advise", s_demo, "--units", "metric"]), Run(["advise", file, "--units", "metric"]));
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
    }

    [Fact]
    public void The_region_proposes_where_the_visit_says_nothing()
    {
        KnowledgeBase shipped = ShippedRules.Knowledge;
        Visit visit = VisitFile.Read(s_demo, shipped).Value!;
        Assert.Null(VisitUnits.Of(visit, shipped));
        KnowledgeBase metric = shipped with
        {
            Regions = shipped.Regions.ToImmutableSortedDictionary(
                one => one.Key,
                one => one.Value with { Units = UnitsWanted.Metric },
                StringComparer.Ordinal
            ),
        };
        Assert.Equal(UnitsWanted.Metric, VisitUnits.Of(visit, metric));
        Assert.Equal(UnitsWanted.Us, VisitUnits.Of(visit with { Units = UnitsWanted.Us }, metric));
    }

    private static string[] Quantities(string page) => [.. Quantity().Matches(Flat(page)).Select(match => match.Value)];

    private static string Flat(string page) => Blanks().Replace(page, " ");

    private static string Run(string[] command)
    {
        CommandRun run = CommandRun.Told([.. command, "--format", "text", "--knowledge", s_rules]);
        Assert.Equal(ExitCode.Done, run.Code);
        // What is worked out stays in the units that were given.
        return run.Out.Split("WORKING")[0];
    }

    [GeneratedRegex(
        @"(?<![\w.,/$-])\d[\d.,]* (mm|cm|m²|m2|km|m|ft²|ft2|ft|in(?! \d)|mi|kg/ha|g/ha|lb/acre|g/m2|lb/1000ft2|"
            + @"oz/acre|C|F)(?![\w/²-])"
    )]
    private static partial Regex Quantity();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
