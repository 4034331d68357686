using System.Text.RegularExpressions;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// No line of a page names a thing that the facts told exclude: no fan under the open sky, no pot on a path, no
/// sprinkler head where a hose waters (common practice). The oracle is a small table from what was told to words; it
/// reads finished text and shares no code with what writes the page.
/// </summary>
public sealed partial class WordsThatFitTests
{
    private const string Pots = "propagation-house growing-house overwintering-house liner-bed container-yard";
    private const string Yards = "growing-house overwintering-house liner-bed container-yard";
    private const string NoPots = "house-bed house-floor walkway substrate-pile pot-store noncrop-strip water-edge";
    private const string Outdoors = "liner-bed container-yard walkway substrate-pile noncrop-strip water-edge";

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    // What is told, and words that it excludes. Seed heads are heads, and clean mats of felt may lie under pots.
    private static readonly (string Fact, Func<Told, bool> Holds, Regex Never)[] s_table =
    [
        ("open sky over pots", told => told.Is("cover", "open-sky shade-cloth") && told.Is("place", Pots), OfAir()),
        (
            "outdoors, and not on benches",
            told =>
                told.Is("cover", "open-sky shade-cloth")
                && told.Is("place", Outdoors)
                && !told.Is("floor", "raised-benches"),
            OfHouses()
        ),
        ("no pots stand in such a place", told => told.Is("place", NoPots), OfPots()),
        ("a path, a strip or a bank", told => told.Is("place", "walkway noncrop-strip water-edge"), OfBenches()),
        (
            "pots stand on the ground outdoors",
            told =>
                told.Is("place", "liner-bed container-yard")
                && told.Is("floor", "gravel gravel-over-fabric fabric bare-soil mulch concrete"),
            OfBenchesAlone()
        ),
        (
            "no unrooted cuttings",
            told =>
                told.Is("place", Pots)
                && told.Is("stock", "seedlings-and-plugs rooted-liners newly-potted established none-present"),
            OfCuttings()
        ),
        (
            "neither plugs nor seedlings",
            told => told.Is("place", Yards) && told.Is("stock", "newly-potted established"),
            OfPlugs()
        ),
        (
            "watered by hose, drip or from below, or not",
            told => told.Is("irrigation", "hand drip subirrigation none"),
            OfHeads()
        ),
        (
            "no film or mat of moss or algae",
            told => told.Kinds is { } kinds && !kinds.Any(kind => kind is "bryophyte" or "alga" or "fern"),
            OfMats()
        ),
        ("no customers", told => told.Is("public-access", "no"), OfCustomers()),
        ("no water near", told => told.Is("water-nearby", "none-near") && !told.Is("place", "water-edge"), OfWater()),
        (
            "no film is to go on",
            told => told.Is("covering-planned", "no") && told.Is("cover", "open-sky shade-cloth"),
            OfFilm()
        ),
        ("not organic", told => told.Is("organic", "no"), OfOrganic()),
        ("nobody is next door", told => told.Is("neighbours", "none-near"), OfNeighbours()),
        ("bare mix", told => told.Is("mulch", "none"), OfCovered()),
        ("nothing stands in it", told => told.Is("place", Pots) && told.Is("stock", "none-present"), OfPots()),
        ("no mist", told => told.Is("irrigation", "hand drip subirrigation none overhead"), OfMist()),
    ];

    [Fact]
    public void No_line_of_a_page_names_a_thing_that_what_was_told_excludes()
    {
        int looked = 0;
        SortedSet<string> wrong = new(StringComparer.Ordinal);
        void Look(AreaAdvice advice)
        {
            if (advice.Gaps.Any(gap => gap.Kind == GapKind.Contradiction))
                return;
            var told = new Told(advice.Area);
            string[]? lines = null;
            foreach (var (fact, _, never) in s_table.Where(row => row.Holds(told)))
            {
                lines ??= Sentences(advice);
                looked++;
                foreach (string line in lines.Where(line => never.IsMatch(line)))
                    wrong.Add($"{fact}: {line}");
            }
        }

        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
            Look(advice);
        DrawnAdvice.OfCases.Sample((_, advice) => Look(advice), Sizes.Of(few: 150, many: 5_000));
        Assert.True(looked > 200, $"only {looked} facts were told");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    // Every line whole, without what the grower told himself and without the question that is asked next.
    private static string[] Sentences(AreaAdvice advice)
    {
        string page = PageOfArea.Of(advice);
        int work = page.IndexOf("====", page.IndexOf("====\n", StringComparison.Ordinal) + 5, StringComparison.Ordinal);
        int ask = page.IndexOf("\nASK NEXT\n", StringComparison.Ordinal);
        string body = page[work..(ask < 0 ? page.Length : ask)];
        return [.. Item().Split(body).Select(Plain).Where(text => text.Length > 0)];
    }

    // The name of a chemical says where else it is used, and the place is called as the grower called it.
    private static string Plain(string text) =>
        s_names.Aggregate(Blanks().Replace(text, " ").Trim(), (line, name) =>
            line.Replace(name, "...", StringComparison.OrdinalIgnoreCase)
        );

    private static readonly string[] s_names =
    [
        .. s_knowledge
            .Treatments.Values.Select(one => one.Name)
            .Concat(s_knowledge.Questions.Single(one => one.Id == "place").Choices.Select(choice => choice.Text))
            .OrderByDescending(name => name.Length),
    ];

    // Items and headings begin lines; what is set further in goes on.
    [GeneratedRegex(
        @"\n(?=\n|[A-Z]|  - |  [A-Z]|  \?| +\d+\. |     (?:why|but|mind|or|by|today|as soon|unless|ask|only)\b)"
    )]
    private static partial Regex Item();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"\b(fans?|vents?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfAir();

    [GeneratedRegex(
        @"\b(in this house|out of the house|through the whole house|the bench|under the benches)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex OfHouses();

    [GeneratedRegex(
        @"\b(in the pots?|whole pot|pot rim|the pot itself|between the pots|knock (that|it|the plant) out)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex OfPots();

    [GeneratedRegex(@"\b(bench|benches|(?<!(pots|mix) and )trays?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfBenches();

    [GeneratedRegex(@"\b(cuttings?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfCuttings();

    [GeneratedRegex(@"\b(plugs?|(?<!(pots|mix) and )trays?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfPlugs();

    [GeneratedRegex(@"\b(sprinklers?|uneven heads|heads (upright|that overlap)|two heads)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfHeads();

    [GeneratedRegex(@"(?<!drops or )\bmist\b(?! house| bench)", RegexOptions.IgnoreCase)]
    private static partial Regex OfMist();

    [GeneratedRegex(@"\bbench(es)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfBenchesAlone();

    [GeneratedRegex(@"\bcustomers? (walk|carry|handle|take)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfCustomers();

    [GeneratedRegex(@"\b(into the pond|the pond or|the stream|irrigation pond)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfWater();

    [GeneratedRegex(@"\b(the film goes on|film goes on|the covering day|before covering)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfFilm();

    [GeneratedRegex(@"\b(organic (rules|growing|grower)|certifier)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfOrganic();

    [GeneratedRegex(@"\b(a school|next door are|lie next door)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfNeighbours();

    [GeneratedRegex(@"\b(covered already|layer that lies there)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfCovered();

    [GeneratedRegex(@"\b(the mat|mats of|lift the mat|cups stand)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OfMats();

    private sealed class Told(VisitArea area)
    {
        // Of the weeds told, those known from last year too; null where none was told.
        public string[]? Kinds =>
            area.Weeds is { } weeds ? [.. weeds.Select(seen => s_knowledge.Weeds[seen.Weed].Kind)] : null;

        public bool Is(string question, string words) =>
            area.Answers.GetValueOrDefault(question) is Answer.Words { Value: var said }
            && said.Count == 1
            && words.Split(' ').Contains(said.First());
    }
}
