using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge;

/// <summary>What a name in the store stands for, as far as the knowledge goes.</summary>
/// <param name="Word">The name as the visit keeps it.</param>
/// <param name="Name">The name as it is said.</param>
/// <param name="Uses">The uses that are held of just this; empty when none is.</param>
/// <param name="Gone">The active that may not be used any more and that no use holds; else null.</param>
/// <param name="Mixed">Where no use of it alone is held, those of mixtures that it is a part of.</param>
/// <param name="Nearest">Where the name is not known, the nearest that is; else null.</param>
public sealed record ChemicalMeant(
    string Word,
    string Name,
    ImmutableArray<Treatment> Uses,
    ActiveIngredient? Gone,
    ImmutableArray<Treatment> Mixed,
    string? Nearest
);

/// <summary>
/// Finds what a chemical in the store is, by a treatment, a name of the label book, or its actives. Words for the form
/// or the strength do not matter; any other word that is left over does: a mixture is never answered for by one half of
/// it.
/// </summary>
public static class ChemicalsByName
{
    private const string Granule = "granule";

    private static readonly ImmutableHashSet<string> s_granule = ["granule", "granules", "granular", "gr"];
    private static readonly ImmutableHashSet<string> s_spray = ["spray", "sprays", "liquid", "concentrate", "ec", "sl"];

    // What bags bear besides the active, and growers say with it.
    private static readonly ImmutableHashSet<string> s_besides =
    [
        .. s_granule,
        .. s_spray,
        .. (string[])["amine", "ester", "salt", "salts", "ammonium", "sodium", "potassium", "butotyl", "choline"],
        .. (string[])
            ["and", "plus", "with", "of", "the", "a", "percent", "old", "strong", "household", "horticultural"],
        .. (string[])
            ["wg", "wdg", "dg", "sc", "wp", "ready", "to", "use", "herbicide", "weed", "killer", "preemergence"],
    ];

    /// <summary>What a word of a visit stands for.</summary>
    public static ChemicalMeant ChemicalOf(this KnowledgeBase knowledge, string word)
    {
        Treatment[] all = [.. knowledge.Treatments.Values.OrderBy(one => one.Id, StringComparer.Ordinal)];
        if (all.FirstOrDefault(one => one.Id == word || FoldedWords.Of(one.Name) == word) is { } named)
            return Found(word, named.Name, [named]);
        if (all.FirstOrDefault(one => one.Label is { } label && FoldedWords.Of(label.Name) == word) is { } owned)
            return Found(word, owned.Label!.Name, [owned]);
        if (knowledge.GoneAs(word) is { } gone)
            return new ChemicalMeant(word, gone.Name, [], gone, [], null);
        Treatment[] uses = [.. all.Where(one => IsJust(one, word, knowledge))];
        if (uses.Length > 0)
            return Found(word, string.Join(" + ", uses[0].Actives.Select(active => active.Name)), [.. uses]);
        ActiveIngredient? active = knowledge.Ingredients.Values.FirstOrDefault(one =>
            NamesOf(one).Any(name => LeftOf(word, name) is { } left && AreBesides(left))
        );
        if (active is not null && knowledge.GoneAs(active.Name) is { } withdrawn)
            return new ChemicalMeant(word, withdrawn.Name, [], withdrawn, [], null);
        return new ChemicalMeant(
            word,
            active?.Name ?? word.Replace('-', ' '),
            [],
            null,
            [.. all.Where(one => active is not null && one.Actives.Any(part => part.Name == active.Name))],
            active is null ? Near(knowledge, all, word) : null
        );
    }

    private static ChemicalMeant Found(string word, string name, ImmutableArray<Treatment> uses) =>
        new(word, name, uses, null, [], null);

    private static string? Near(KnowledgeBase knowledge, Treatment[] all, string word) =>
        NearestWord.Of(
            word,
            [
                .. knowledge.Ingredients.Values.SelectMany(one => NamesOf(one)),
                .. all.Select(one => FoldedWords.Of(one.Name)),
            ]
        )
            is { } near
            ? knowledge.Ingredients.Values.FirstOrDefault(one => NamesOf(one).Contains(near))?.Name
                ?? all.First(one => FoldedWords.Of(one.Name) == near).Name
            : null;

    // Every one of its actives is named, and nothing else but what tells no chemical apart.
    private static bool IsJust(Treatment treatment, string word, KnowledgeBase knowledge)
    {
        string? left = word;
        foreach (Active active in treatment.Actives)
        {
            left =
                left is null ? null
                : knowledge.Ingredients.Values.FirstOrDefault(one => one.Name == active.Name) is { } ingredient
                    ? NamesOf(ingredient).Select(name => LeftOf(left, name)).FirstOrDefault(rest => rest is not null)
                : LeftOf(left, FoldedWords.Of(active.Name));
        }

        return left is not null && AreBesides(left) && FitsForm(treatment, left);
    }

    private static bool FitsForm(Treatment treatment, string left)
    {
        string[] words = left.Split('-');
        return treatment.Form == Granule ? !words.Any(s_spray.Contains) : !words.Any(s_granule.Contains);
    }

    private static bool AreBesides(string left) =>
        left.Split('-', StringSplitOptions.RemoveEmptyEntries)
            .All(one => s_besides.Contains(one) || one.All(char.IsAsciiDigit));

    // The words without those of a name, which stand together; null where they do not.
    private static string? LeftOf(string word, string name)
    {
        string all = $"-{word}-";
        int at = all.IndexOf($"-{name}-", StringComparison.Ordinal);
        return at < 0 ? null : $"{all[..at]}-{all[(at + name.Length + 2)..]}".Trim('-');
    }

    // The longest first: a longer name is not left with a rest.
    private static ImmutableArray<string> NamesOf(ActiveIngredient active) =>
        [
            .. active
                .AlsoCalled.Prepend(active.Name)
                .Prepend(active.Id)
                .Select(FoldedWords.Of)
                .Distinct(StringComparer.Ordinal)
                .OrderByDescending(name => name.Length),
        ];
}
