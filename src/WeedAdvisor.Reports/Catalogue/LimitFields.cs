using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>
/// The fields of what holds for an active over all products: its limits, and the resistance on record.
/// </summary>
internal static class LimitFields
{
    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, ActiveLimit limit, DateOnly today)
    {
        Fields fields = new Fields()
            .Add("most in a year", limit.KgAiHaPerYear is { } most ? $"{Figures.Plain(most)} kg a.i./ha" : null)
            .Add("uses a year", limit.UsesPerYear is { } uses ? Figures.Plain(uses) : null)
            .Add("again after", limit.IntervalDays is { } days ? $"{Figures.Plain(days)} days" : null)
            .Add("the year", limit.IsCalendarYear ? "from January" : "any twelve months")
            .Add("form", limit.Form)
            .Add("unlimited", limit.IsUnlimited ? "used as needed" : null)
            .Add("last checked", Checks.Told(limit.Checked, today));
        return RecordFields.Ending(fields, limit, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, KnownResistance resistance, DateOnly today)
    {
        Fields fields = new Fields()
            .Add("withstands groups", resistance.Groups)
            .Add("note", resistance.Note)
            .Add("last checked", Checks.Told(resistance.Checked, today));
        return RecordFields.Ending(fields, resistance, knowledge);
    }
}
