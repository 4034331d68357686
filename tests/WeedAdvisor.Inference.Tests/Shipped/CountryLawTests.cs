using System.Collections.Concurrent;
using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// Whose law is told, and what no country's law and no missing answer clears. Which rule is whose is read here from the
/// lines of the files, without the reader.
/// </summary>
public sealed class CountryLawTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly RandomVisits s_visits = new(s_knowledge);

    private static readonly Dictionary<string, string> s_regions = new()
    {
        ["us"] = "north-carolina-piedmont",
        ["gb"] = "forth-lowlands",
        ["ie"] = "cork-south-coast",
        ["ca"] = "fraser-valley",
        ["au"] = "sydney-basin",
        ["other"] = "elsewhere-southern",
    };

    // Words by which a duty is known to be of one country: its statutes, offices and places.
    private static readonly Dictionary<string, string[]> s_marks = new()
    {
        ["us"] = ["CFR", "EPA", "your state asks", "United States"],
        ["gb"] = ["Health and Safety Executive", "certificate of competence", "Great Britain", "United Kingdom"],
        ["ie"] = ["Department of Agriculture", "Ireland has", "2023/564", "2009/128", "for Ireland"],
        ["ca"] = ["Health Canada", "Ontario", "your province", "Canadian"],
        ["au"] = ["Australia", "DO NOT", "agriculture department of your state"],
    };

    private static readonly AdviceByThread s_numbered = new(() => WithLabels("12345"));
    private static readonly AdviceByThread s_unnumbered = new(() => WithLabels(null));

    // What is told of the worked visits as if they lay in each country: two laws look at it.
    private static readonly ConcurrentDictionary<string, Lazy<Told>> s_workedIn = new();

    public static TheoryData<string> Countries => [.. s_regions.Keys];

    public static TheoryData<string> CountriesWithoutRegister => [.. s_regions.Keys.Where(country => country != "us")];

    [Fact]
    public void Each_country_has_its_file_and_a_region_of_its_own_or_two()
    {
        string[] held = [.. s_regions.Keys.Where(country => country != "other").Order(StringComparer.Ordinal)];
        Assert.Equal(held, Files().Select(file => file.Country).Order(StringComparer.Ordinal));
        Assert.All(held, country =>
            Assert.True(s_knowledge.Regions.Values.Count(region => region.Country == country) >= 2, country)
        );
        Assert.All(s_regions, pair => Assert.Equal(pair.Key, s_knowledge.Regions[pair.Value].Country));
    }

    [Theory]
    [MemberData(nameof(Countries))]
    public void No_duty_of_one_country_is_told_in_another(string country)
    {
        var foreign = Files().Where(file => file.Country != country).SelectMany(file => file.Rules).ToHashSet();
        string[] marks = [.. s_marks.Where(pair => pair.Key != country).SelectMany(pair => pair.Value)];
        Told told = WorkedVisitsIn(country);
        Assert.Empty(told.Judgements.Intersect(foreign));
        Assert.NotEmpty(told.Texts);
        Assert.All(told.Texts, text =>
            Assert.All(marks, mark => Assert.DoesNotContain(mark, text, StringComparison.Ordinal))
        );
    }

    // Nothing of a country's law is certain before it is said where the nursery lies.
    [Fact]
    public void Without_the_place_no_law_is_told_and_no_chemical_is_clear()
    {
        var anyones = Files().SelectMany(file => file.Rules).ToHashSet();
        foreach (
            Worked visit in WorkedVisits(area => area.Without("region"))
                .Where((_, place) => place % Sizes.Of(2, 1) == 0)
        )
        {
            AreaAdvice[] areas = [.. ShippedRules.Advisor.Advise(visit.Visit).Areas];
            Assert.All(areas, area => Assert.Empty(ClearTreatments(area)));
            Assert.All(areas, area =>
                Assert.DoesNotContain(area.AllConclusions(), one => one.IsCertain && anyones.Contains(one.Judgement))
            );
        }
    }

    [Theory]
    [MemberData(nameof(CountriesWithoutRegister))]
    public void Where_no_register_is_held_every_chemical_waits_for_the_label_book(string country)
    {
        Assert.Empty(WorkedVisitsIn(country).ClearTreatments);
        s_visits.Area.Sample(
            area =>
            {
                VisitArea here = area.With("region", s_regions[country]);
                Assert.Empty(ClearTreatments(ShippedRules.On(On(here))));
                Assert.Empty(ClearTreatments(s_unnumbered.On(On(here))));
            },
            iter: Sizes.Of(15, 500)
        );
    }

    [Theory]
    [MemberData(nameof(CountriesWithoutRegister))]
    public void A_label_with_its_number_ends_the_wait_and_only_where_the_place_is_said(string country)
    {
        Visit visit = ShippedRules.Visit("region-not-known");
        VisitArea yard = visit.Areas[0].With("region", s_regions[country]).With("covering-planned", "no");
        Assert.NotEmpty(Clear(s_numbered, yard));
        Assert.Empty(Clear(s_numbered, yard.Without("region")));
        Assert.Empty(Clear(s_unnumbered, yard));

        string[] Clear(AdviceByThread advice, VisitArea area) =>
            ClearTreatments(advice.On(AreaCase.Alone(visit.Date, area)));
    }

    // In the shape of the law of missing answers: what is taken away never clears a chemical that was not clear.
    [Theory]
    [MemberData(nameof(Countries))]
    public void Taking_an_answer_away_never_clears_a_chemical(string country) =>
        Gen.Select(s_visits.Area, Gen.Int[0, s_knowledge.Questions.Length - 1])
            .Sample(
                (area, question) =>
                {
                    VisitArea here = area.With("region", s_regions[country]);
                    string taken = s_knowledge.Questions[question].Id;
                    // Taking back one of two answers that contradict each other tells more, not less.
                    if (taken is "stock" or "crops" or "put-on-lately")
                        return;
                    string[] before = ClearTreatments(s_numbered.On(On(here)));
                    string[] after = ClearTreatments(s_numbered.On(On(here.Without(taken))));
                    Assert.DoesNotContain(after.Except(before), id => WasRefused(here, id));
                },
                iter: Sizes.Of(15, 500)
            );

    [Fact]
    public void Beside_homes_and_schools_what_drifts_waits_until_nobody_is_there_in_every_country()
    {
        Visit school = ShippedRules.Visit("yard-beside-a-school");
        foreach (string region in s_regions.Values)
        {
            AreaAdvice advice = ShippedRules.Advisor.Advise(In(school, area => area.With("region", region))).Areas[0];
            string[] drifting =
            [
                .. s_knowledge
                    .Treatments.Values.Where(one => one.DriftHazard && one.Applied.Any(Sprayed))
                    .Select(one => one.Id),
            ];
            Assert.NotEmpty(drifting);
            Assert.All(drifting, id => Assert.Contains(advice.Barred, barred => barred.Action == id));
        }

        static bool Sprayed(string how) => how is "spray-over-top" or "directed-spray" or "floor-spray";
    }

    private static bool WasRefused(VisitArea area, string id)
    {
        AreaAdvice advice = s_numbered.On(On(area));
        return advice.Barred.Any(one => one.Action == id) || advice.Waiting.Any(one => one.Action == id);
    }

    private static Told WorkedVisitsIn(string country) =>
        s_workedIn.GetOrAdd(country, _ => new Lazy<Told>(() => ToldIn(s_regions[country]))).Value;

    private static Told ToldIn(string region)
    {
        var told = new Told([], [], []);
        // Each visit lies in two of the countries; in the long run in all of them.
        int share = Sizes.Of(3, 1),
            first = s_regions.Values.Order(StringComparer.Ordinal).ToList().IndexOf(region);
        foreach (
            Worked worked in WorkedVisits(area => area.With("region", region))
                .Where((_, place) => (place + first) % share == 0)
        )
        {
            foreach (AreaAdvice area in ShippedRules.Advisor.Advise(worked.Visit).Areas)
            {
                told.ClearTreatments.UnionWith(ClearTreatments(area));
                foreach (Reason reason in area.AllConclusions())
                {
                    told.Judgements.Add(reason.Judgement);
                    told.Texts.Add($"{reason.Caution?.Text} {reason.Text}");
                }
            }
        }

        return told;
    }

    private static IEnumerable<Worked> WorkedVisits(Func<VisitArea, VisitArea> change) =>
        s_knowledge.WorkedVisits.Select(worked => new Worked(In(worked.Visit, change)));

    private static Visit In(Visit visit, Func<VisitArea, VisitArea> change) =>
        visit with
        {
            Head = visit.Head.Remove("region"),
            Areas = [.. visit.Areas.Select(change)],
        };

    private static AreaCase On(VisitArea area) => AreaCase.Alone(RandomVisits.Day, area);

    private static string[] ClearTreatments(AreaAdvice area) =>
        [.. area.Clear.Select(one => one.Action).Where(s_knowledge.Treatments.ContainsKey)];

    private static Advisor WithLabels(string? number) =>
        Advisor.Of(
            LabelOverlay.Of(
                s_knowledge,
                new LabelBook(
                    [
                        .. s_knowledge.Treatments.Values.Select(one => new ProductLabel
                        {
                            Id = one.Id,
                            Name = one.Name,
                            Treatment = one.Id,
                            RegistrationNumber = number,
                            Read = RandomVisits.Day,
                            Crops = WordSet.Of(s_knowledge.Crops.Keys),
                            Where = one.Where,
                        }),
                    ],
                    new string('0', 64)
                )
            )
        );

    // The rules of each file of law, by its lines alone.
    private static IEnumerable<(string Country, ImmutableArray<string> Rules)> Files() =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Rules, "law"), "*.yaml")
            .Select(file => (Path.GetFileNameWithoutExtension(file), File.ReadAllText(file)))
            .Select(file => (file.Item1, Rules(file.Item1, file.Item2)));

    private static ImmutableArray<string> Rules(string country, string text) =>
        [
            .. text.Split("\n- ")
                .Skip(1)
                .Select(rule =>
                    rule.StartsWith("id: ", StringComparison.Ordinal)
                        ? rule.Split('\n')[0][4..].Trim()
                        : $"{country}-{TopicIn(rule)}-is-not-held"
                ),
        ];

    private static string TopicIn(string rule) =>
        rule[(rule.IndexOf("topic: ", StringComparison.Ordinal) + 7)..].Split(',', '\n')[0];

    private sealed record Worked(Visit Visit);

    private sealed record Told(HashSet<string> ClearTreatments, HashSet<string> Judgements, HashSet<string> Texts);
}
