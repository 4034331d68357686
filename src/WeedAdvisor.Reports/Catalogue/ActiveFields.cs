using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>The fields of an active, and which treatments hold it.</summary>
internal static class ActiveFields
{
    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, ActiveIngredient active, DateOnly today)
    {
        var names = new Names(knowledge);
        Fields fields = new Fields()
            .Add("also called", active.AlsoCalled)
            .Add("group", active.Group ?? "none")
            .Add("on older lists", Older(active.Was, active.WasNumber))
            .Add("site of action", active.SiteOfAction is { } site ? names.Word("site-of-action", site) : null)
            .Add("volatile", active.Volatile is { } word ? names.Word("volatility", word) : null)
            .Add("stops roots", YesOrNo(active.RootInhibitor))
            .Add("endangers water life", YesOrNo(active.WaterHazard))
            .AddEach("half of it is gone", active.HalfLives.Select(HalfLife))
            .AddEach("withdrawn", Withdrawn(knowledge, active))
            .Add(
                "limits",
                knowledge.ActiveLimits.Values.Where(limit => limit.Active == active.Name).Select(limit => limit.Id)
            )
            .Add(
                "treatments",
                knowledge
                    .Treatments.Values.Where(one => one.Actives.Any(held => held.Name == active.Name))
                    .Select(one => one.Id)
            )
            .Add("last checked", Checks.Told(active.Checked, today));
        return RecordFields.Ending(fields, active, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, WithdrawnActive row, DateOnly today)
    {
        var names = new Names(knowledge);
        Fields fields = new Fields()
            .Add("not allowed any more in", row.Countries.Select(word => names.Word("country", word)))
            .Add("since", row.Since is { } since ? Figures.Day(since) : null)
            .Add("a bag of it", row.Bag)
            .Add("was the treatment", row.Formerly)
            .Add("last checked", Checks.Told(row.Checked, today));
        return RecordFields.Ending(fields, row, knowledge);
    }

    /// <summary>The active that goes by this name; null when none does.</summary>
    public static ActiveIngredient? Called(KnowledgeBase knowledge, string name) =>
        knowledge.Ingredients.Values.FirstOrDefault(active =>
            active.AlsoCalled.Prepend(active.Name).Contains(name, StringComparer.OrdinalIgnoreCase)
        );

    /// <summary>What older bags and tables print instead of the group; null where nothing.</summary>
    public static string? Older(string? letter, string? number)
    {
        string older = string.Join(", ", new[] { letter, number }.OfType<string>());
        return older.Length == 0 ? null : older;
    }

    private static string[] Withdrawn(KnowledgeBase knowledge, ActiveIngredient active) =>
        knowledge.Withdrawn.Values.Any(row => row.Active == active.Id) ? [knowledge.WithdrawnText(active)] : [];

    private static string? YesOrNo(bool? known) =>
        known switch
        {
            true => "yes",
            false => "no",
            null => null,
        };

    private static string HalfLife(HalfLife life) =>
        $"after {Figures.Range(life.Days)} days at {Figures.Plain(life.AtC)} C{Figures.Keys(life.Sources)}";
}
