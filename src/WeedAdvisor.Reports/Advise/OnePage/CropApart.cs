using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// A crop that alone keeps chemicals from the other crops of its block: set apart, the others may have them.
/// </summary>
/// <param name="Crop">The crop's name.</param>
/// <param name="Chemicals">What no other bar keeps off, by id; at least three.</param>
internal sealed record CropApart(string Crop, ImmutableArray<string> Chemicals)
{
    private const string CropPattern = "crop";

    // For fewer nobody carries pots.
    private const int Least = 3;

    /// <summary>
    /// The crop that alone bars most; null where none bars more than is left for all: then the choice is wide enough.
    /// </summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice on the area.</param>
    public static CropApart? Of(Names names, AreaAdvice area) =>
        area.Reading.Crops.Count < 2
            ? null
            : area
                .Barred.Where(one => names.IsTreatment(one.Action))
                .Select(one => (one.Action, Crop: OnlyCropBehind(one)))
                .Where(one => one.Crop is not null)
                .GroupBy(one => one.Crop!, one => one.Action, StringComparer.Ordinal)
                .Where(group => group.Count() >= Math.Max(Least, Left(names, area) + 1))
                .OrderByDescending(group => group.Count())
                .ThenBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new CropApart(group.Key, [.. group]))
                .FirstOrDefault();

    private static int Left(Names names, AreaAdvice area) =>
        area.Clear.Count(one => names.IsTreatment(one.Action))
        + area.Waiting.Count(one => names.IsTreatment(one.Action));

    // Null where any bar speaks of another crop or of none.
    private static string? OnlyCropBehind(BarredAction barred)
    {
        string? only = null;
        foreach (Reason reason in barred.Because)
        {
            string? crop = reason.Subjects.FirstOrDefault(subject => subject.Pattern == CropPattern).Fact;
            if (crop is null || (only is not null && crop != only))
                return null;
            only = crop;
        }

        return only;
    }
}
