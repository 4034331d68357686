using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>What would settle a limit that may hold.</summary>
internal static class LimitNeeds
{
    private const string YearField = "uses-per-year";

    /// <summary>More of the past, the yearly limit of the treatment's label, or either.</summary>
    /// <param name="past">Whether more of the past would settle it.</param>
    /// <param name="treatment">The treatment whose label would settle it; null when no label would.</param>
    /// <param name="field">The field that the label would tell.</param>
    public static ImmutableArray<Need> Of(bool past, Treatment? treatment, string field = YearField) =>
        [
            .. past ? [Need.Question(QuestionIds.Past)] : (Need[])[],
            .. treatment is null ? (Need[])[] : [Need.Record(treatment.Id, field)],
        ];
}
