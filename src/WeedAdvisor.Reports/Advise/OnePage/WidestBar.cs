using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>A reason that bars nearly all chemicals of an area.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Count">How many it bars.</param>
internal sealed record WidestBar(string Text, int Count)
{
    private const double MostOfAll = 0.7;
    private const double EnoughOfAll = 0.6;

    /// <summary>
    /// The reason that holds for nearly all. It says more than the first that ends some of them for good: which country
    /// it is before which crop. Who must keep out is told above.
    /// </summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice on the area.</param>
    /// <param name="bars">Why chemicals are barred: the reasons that bar most first.</param>
    /// <returns>Null where there is none, or where the first of the reasons is told of most.</returns>
    public static WidestBar? Of(Names names, AreaAdvice area, ImmutableArray<BarGroup> bars)
    {
        BarredAction[] barred = [.. area.Barred.Where(one => names.IsTreatment(one.Action))];
        if (bars is [var largest, ..] && largest.Actions.Length >= EnoughOfAll * barred.Length)
            return null;
        HashSet<string> told = [.. bars.Take(1).Select(group => group.Judgement), .. area.KeepOut?.Because ?? []];
        var widest = barred
            .SelectMany(action =>
                action
                    .Because.Where(reason => reason.IsCertain && !told.Contains(reason.Judgement))
                    .Select(reason => (reason.Judgement, Text: names.OfAny(action.Action, reason.Said)))
                    .Where(reason => !told.Contains(reason.Text))
                    .DistinctBy(reason => reason.Judgement)
            )
            .GroupBy(reason => reason)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key.Judgement, StringComparer.Ordinal)
            .FirstOrDefault();
        return widest is null || widest.Count() < MostOfAll * barred.Length
            ? null
            : new WidestBar(widest.Key.Text, widest.Count());
    }
}
