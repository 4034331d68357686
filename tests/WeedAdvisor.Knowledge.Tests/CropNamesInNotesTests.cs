using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// A plant that a note or a caution names as hurt is a kind of its own that a record or a rule reads: words that no
/// rule reads protect nobody.
/// </summary>
public sealed partial class CropNamesInNotesTests
{
    // Names of plants as the trade uses them, written down here and not read from the records.
    private static readonly string[] s_plants =
    [
        "ajuga",
        "andromeda",
        "apple",
        "arborvitae",
        "astilbe",
        "azalea",
        "boxwood",
        "burning bush",
        "butterfly bush",
        "camellia",
        "chrysanthemum",
        "clematis",
        "columbine",
        "coneflower",
        "coral bells",
        "cotoneaster",
        "crape myrtle",
        "currant",
        "daylily",
        "deutzia",
        "digitalis",
        "dogwood",
        "douglas fir",
        "echinacea",
        "forsythia",
        "foxglove",
        "gardenia",
        "gladiolus",
        "heather",
        "hemlock",
        "heuchera",
        "hibiscus",
        "holly",
        "hosta",
        "hydrangea",
        "hyssop",
        "iris",
        "ivy",
        "juniper",
        "larch",
        "lady fern",
        "lavender",
        "lilac",
        "lilyturf",
        "lupine",
        "magnolia",
        "maple",
        "nandina",
        "oak",
        "oregano",
        "pachysandra",
        "painted fern",
        "pampas grass",
        "pear",
        "phlox",
        "pieris",
        "pine",
        "redbud",
        "rhododendron",
        "rose",
        "rudbeckia",
        "salvia",
        "scabious",
        "shasta daisy",
        "speedwell",
        "spring heath",
        "spruce",
        "stachys",
        "statice",
        "stonecrop",
        "sycamore",
        "thyme",
        "verbena",
        "veronica",
        "viburnum",
        "wisteria",
        "yew",
        "yucca",
    ];

    // Read under another name: what it says and the kind that stands for it.
    private static readonly Dictionary<string, string> s_readAs = new(StringComparer.Ordinal)
    {
        ["spring heath"] = "ericaceous-shrubs",
        ["heather"] = "ericaceous-shrubs",
    };

    [Fact]
    public void A_plant_that_a_note_names_as_hurt_is_a_kind_that_something_reads()
    {
        KnowledgeBase knowledge = ShippedFolder.Load();
        HashSet<string> read =
        [
            .. knowledge.Treatments.Values.SelectMany(treatment => treatment.CropsHurt),
            .. Named(ShippedFolder.Judgements()),
        ];
        string[] told =
        [
            .. knowledge.Crops.Values.SelectMany(crop => crop.Notes),
            .. knowledge.Treatments.Values.SelectMany(treatment => treatment.Cautions),
            .. knowledge.Practices.Values.SelectMany(practice => practice.Cautions.Concat(practice.NotWhere)),
            .. knowledge.Judgements.Select(rule => rule.Then).OfType<Consequence.Caution>().Select(then => then.Text),
        ];
        string[] unread =
        [
            .. told.SelectMany(text => SentenceEnd().Split(text))
                .Where(sentence => Harm().IsMatch(sentence) && !NoHarm().IsMatch(sentence))
                .SelectMany(sentence =>
                    s_plants
                        .Where(plant => Word(plant).IsMatch(sentence) && !IsRead(plant, knowledge, read))
                        .Select(plant => $"{plant}: {sentence}")
                )
                .Distinct(),
        ];
        Assert.Empty(unread);
    }

    [Fact]
    public void The_words_of_harm_find_the_sentences_that_they_are_meant_for()
    {
        Assert.Matches(Harm(), "Named as sensitive to oryzalin: hemlock.");
        Assert.Matches(Harm(), "Not on sycamore or rhododendron.");
        Assert.Matches(Harm(), "It killed most pampas grass in two tests.");
        Assert.DoesNotMatch(Harm(), "Sweet william and columbine stood napropamide.");
    }

    private static bool IsRead(string plant, KnowledgeBase knowledge, HashSet<string> read) =>
        knowledge.Crops.Values.Any(crop =>
            read.Contains(crop.Id) && (Word(plant).IsMatch(crop.Name) || s_readAs.GetValueOrDefault(plant) == crop.Id)
        );

    private static IEnumerable<string> Named(string judgements) =>
        CropTest().Matches(judgements).SelectMany(match => Id().Matches(match.Value).Select(id => id.Value));

    // In the singular or the plural: ferns, azaleas, hollies.
    private static Regex Word(string plant) =>
        new($@"\b{Regex.Escape(plant.EndsWith('y') ? plant[..^1] : plant)}(y|ies|s|es)?\b", RegexOptions.IgnoreCase);

    [GeneratedRegex(@"(?<=[.;])\s")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(
        @"injur|\bhurt|sensitiv|kill|stunt|damag|burnt|lodge|yellow|\b[Nn]ot on\b"
            + @"|\b[Nn]o (dichlobenil|bentazon|isoxaben)|[Kk]eep simazine"
    )]
    private static partial Regex Harm();

    // A sentence that tells of no harm, or of a rate that was borne.
    [GeneratedRegex(@"without injury|no harm|no or passing|none or passing|eyes|purple nutsedge")]
    private static partial Regex NoHarm();

    [GeneratedRegex(@"crop:[^\n]*is-a:[^\n]*(\n\s+[a-z, \-\]]+)?|^\s+is-a: [^\n]*\n[^\n]*", RegexOptions.Multiline)]
    private static partial Regex CropTest();

    [GeneratedRegex("[a-z]+(-[a-z]+)*")]
    private static partial Regex Id();
}
