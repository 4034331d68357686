using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What an hour of weeding costs, and who says so.</summary>
/// <param name="UsdPerHour">US dollars an hour.</param>
/// <param name="From">Where it comes from, for the grower.</param>
internal sealed record Wage(double UsdPerHour, string From)
{
    private const string Id = "labour-rate";

    /// <summary>The wage set, else the visit's answer, else the price list; refused when it is negative or missing.</summary>
    public static WeedingOutcome<Wage> Of(VisitArea area, KnowledgeBase knowledge, double? set)
    {
        Wage? wage = set is { } given ? new Wage(given, "as you set it")
            : area.Answers.GetValueOrDefault(Id) is Answer.Number answer ? new Wage((double)answer.Value, "your answer")
            : knowledge.Prices.TryGetValue(Id, out Price? price) ? new Wage((double)price.Value, FromList(price))
            : null;
        return wage switch
        {
            null => WeedingOutcome<Wage>.Bad(
                "What an hour of weeding costs is not known. Answer the question 'labour-rate', or set it with --wage."),
            { UsdPerHour: >= 0 and <= 10_000 } => WeedingOutcome<Wage>.Good(wage),
            _ => WeedingOutcome<Wage>.Bad("An hour of weeding costs 0 to 10000 US dollars."),
        };
    }

    private static string FromList(Price price) =>
        price.Sources.Contains("invented") ? "the price list, invented" : "the price list";
}
