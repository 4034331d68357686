using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge;

/// <summary>What is said of an active that may not be used any more, under whatever name somebody has it.</summary>
public static class WithdrawnActives
{
    /// <summary>The actives of the list that no treatment holds: nothing but the list answers for them.</summary>
    public static ImmutableArray<ActiveIngredient> Gone(this KnowledgeBase knowledge)
    {
        HashSet<string> held =
        [
            .. knowledge.Treatments.Values.SelectMany(treatment => treatment.Actives).Select(active => active.Name),
        ];
        return
        [
            .. knowledge
                .Withdrawn.Values.Select(row => row.Active)
                .Distinct(StringComparer.Ordinal)
                .Select(id => knowledge.Ingredients[id])
                .Where(active => !held.Contains(active.Name)),
        ];
    }

    /// <summary>
    /// Such an active by its id, one of its names or the id of a treatment that it was; null when none is called so.
    /// </summary>
    public static ActiveIngredient? GoneAs(this KnowledgeBase knowledge, string named)
    {
        string folded = FoldedWords.Of(named);
        return knowledge
            .Gone()
            .FirstOrDefault(active =>
                active
                    .AlsoCalled.Prepend(active.Name)
                    .Prepend(active.Id)
                    .Concat(RowsOf(knowledge, active).SelectMany(row => row.Formerly))
                    .Any(name => FoldedWords.Of(name) == folded)
            );
    }

    /// <summary>Every id under which a visit may tell the use of such an active.</summary>
    public static IEnumerable<string> GoneIds(this KnowledgeBase knowledge) =>
        knowledge
            .Gone()
            .SelectMany(active => RowsOf(knowledge, active).SelectMany(row => row.Formerly).Prepend(active.Id));

    /// <summary>Since when it may not be used where, and what becomes of the bag, in a few sentences.</summary>
    public static string WithdrawnText(this KnowledgeBase knowledge, ActiveIngredient active)
    {
        string also = active.AlsoCalled.IsEmpty ? "" : $" ({string.Join(", ", active.AlsoCalled)})";
        return $"{active.Name}{also} may not be used any more. {BagText(knowledge, active, country: null)}";
    }

    /// <summary>
    /// Since when it may not be used and what becomes of the bag: where one country is meant and the list speaks of it,
    /// there alone.
    /// </summary>
    public static string BagText(this KnowledgeBase knowledge, ActiveIngredient active, string? country)
    {
        WithdrawnActive[] all = [.. RowsOf(knowledge, active)];
        WithdrawnActive[] there = [.. all.Where(row => country is not null && row.Countries.Contains(country))];
        return string.Join(
            " ",
            (there.Length > 0 ? there : all)
                .OrderBy(row => row.Since is null)
                .Select(row => $"In {Where(knowledge, row)}: {row.Bag}")
        );
    }

    /// <summary>In which countries none of these actives could be used on a day; a day not known may be any.</summary>
    public static WordSet WithdrawnWhere(this KnowledgeBase knowledge, IEnumerable<string> actives, DateOnly? day)
    {
        HashSet<string> names = [.. actives];
        return WordSet.Of(
            knowledge
                .Withdrawn.Values.Where(row =>
                    names.Contains(knowledge.Ingredients[row.Active].Name)
                    && (row.Since is null || day is null || day >= row.Since)
                )
                .SelectMany(row => row.Countries)
                .Distinct(StringComparer.Ordinal)
        );
    }

    private static IEnumerable<WithdrawnActive> RowsOf(KnowledgeBase knowledge, ActiveIngredient active) =>
        knowledge.Withdrawn.Values.Where(row => row.Active == active.Id);

    private static string Where(KnowledgeBase knowledge, WithdrawnActive row)
    {
        WordList? countries = knowledge.Vocabulary.GetValueOrDefault("country");
        string names = string.Join(" and ", row.Countries.Select(word => countries?.TextOf(word) ?? word));
        return row.Since is { } since ? $"{names} since {ScalarGrammar.Write(since)}" : names;
    }
}
