using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>The units in which the pages of a visit are printed: those it names, else those of its region.</summary>
public static class VisitUnits
{
    /// <summary>The units; null for those in which the sources have their quantities.</summary>
    public static UnitsWanted? Of(Visit visit, KnowledgeBase knowledge) => visit.Units ?? OfRegion(visit, knowledge);

    // Areas are read only where it can matter: a visit may have thousands.
    private static UnitsWanted? OfRegion(Visit visit, KnowledgeBase knowledge) =>
        knowledge.Regions.Values.All(region => region.Units is null)
            ? null
            : visit
                .Areas.Select(area => AreaReading.Of(area, visit.Date, knowledge).Region?.Units)
                .FirstOrDefault(units => units is not null);
}
