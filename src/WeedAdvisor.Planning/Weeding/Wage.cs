using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What an hour of weeding costs, and who says so.</summary>
/// <param name="UsdPerHour">US dollars an hour.</param>
/// <param name="From">Where it comes from, for the grower.</param>
internal sealed record Wage(double UsdPerHour, string From)
{
    private const string OutOfRange = "An hour of weeding costs 0 to 10000 US dollars.";

    /// <summary>
    /// The wage set, else the visit's answer, else the price list; refused when it is negative or missing.
    /// </summary>
    public static Outcome<Wage, string> Of(AreaReading area, KnowledgeBase knowledge, double? set)
    {
        const double Most = 10_000;
        if (set is { } given && given is not (>= 0 and <= Most))
            return Outcome<Wage, string>.Bad(OutOfRange);
        return area.Wage((decimal?)set, id => knowledge.Prices.GetValueOrDefault(id)) switch
        {
            null => Outcome<Wage, string>.Bad(
                "What an hour of weeding costs is not known. Answer the question 'labour-rate', or set it with --wage."
            ),
            { Value: >= 0 and <= (decimal)Most } wage => Outcome<Wage, string>.Good(
                new Wage((double)wage.Value, Says(wage.From, knowledge))
            ),
            _ => Outcome<Wage, string>.Bad(OutOfRange),
        };
    }

    private static string Says(Origin from, KnowledgeBase knowledge) => from switch
    {
        Origin.Set => "as you set it",
        Origin.Answer => "your answer",
        _ => knowledge.Prices[QuestionIds.Wage].Sources.Contains("invented")
            ? "the price list, invented"
            : "the price list",
    };
}
