using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>A use of a chemical that is barred here.</summary>
/// <param name="Barred">What the advice says of it.</param>
/// <param name="Name">The names of its actives.</param>
/// <param name="Reason">The one that counts most.</param>
/// <param name="Tier">What that speaks of.</param>
internal sealed record BarredChemical(BarredAction Barred, string Name, Reason Reason, BarTier Tier)
{
    /// <summary>Its id.</summary>
    public string Action => Barred.Action;

    /// <summary>Whether it holds several actives.</summary>
    public required bool IsMixture { get; init; }

    /// <summary>How many rules bar it.</summary>
    public int Bars => Barred.Because.Length;

    /// <summary>Whether its label does not name the place, besides whatever else.</summary>
    public bool IsOfAnotherPlace => Barred.Because.Any(reason => BarTiers.Of(reason) == BarTier.Site);

    /// <summary>What is told of it.</summary>
    public static BarredChemical Of(Names names, BarredAction barred)
    {
        Reason reason = BarTiers.First(barred);
        return new BarredChemical(barred, ActivesOf(names, barred.Action), reason, BarTiers.Of(reason))
        {
            IsMixture = names.Treatment(barred.Action)!.Actives.Length > 1,
        };
    }

    /// <summary>The names of the actives of a treatment.</summary>
    public static string ActivesOf(Names names, string treatment) =>
        string.Join(" + ", names.Treatment(treatment)!.Actives.Select(active => active.Name));
}
