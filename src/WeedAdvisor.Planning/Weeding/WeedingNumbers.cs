using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Blocks;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// The parameters of the model as plain numbers. Shares are 0 to 1, though the file has percent. Taken from
/// <c>rules/weeding.yaml</c>, or drawn from the ranges there.
/// </summary>
public sealed record WeedingNumbers
{
    private const double Percent = 100;
    private const string SeedlingsOfAYear = "seedlings-per-1000-pots-per-year-";

    private readonly ImmutableSortedDictionary<string, double> _values;

    private WeedingNumbers(ImmutableSortedDictionary<string, double> values)
    {
        _values = values;
        PullSeconds =
        [
            values["pull-seconds-under-2-5-cm"],
            values["pull-seconds-from-2-5-to-5-cm"],
            values["pull-seconds-from-5-to-10-cm"],
            values["pull-seconds-from-10-to-20-cm"],
            values["pull-seconds-over-20-cm"],
        ];
        (PotSurfaceCm2, MostWeedsPerPot) = (values["pot-surface-cm2"], values["most-weeds-per-pot"]);
    }

    /// <summary>Seconds to pull one weed, by class of <see cref="PlantSizes"/>.</summary>
    public ImmutableArray<double> PullSeconds { get; private init; }

    /// <summary>Minutes to walk along 1000 pots and look into each, one round.</summary>
    public double WalkingMinutes => _values["walking-minutes-per-1000-pots-per-round"];

    /// <summary>Materials of one round for 1000 pots, US dollars.</summary>
    public double MaterialsUsd => _values["materials-usd-per-1000-pots-per-round"];

    /// <summary>Share of the weeds large enough to pull that a round passes over, 0 to 1.</summary>
    public double Missed => _values["missed-percent"] / Percent;

    /// <summary>Diameter from which a weed is pulled, centimetres.</summary>
    public double SmallestPulledCm => _values["smallest-pulled-cm"];

    /// <summary>Surface of one pot, square centimetres.</summary>
    public double PotSurfaceCm2 { get; }

    /// <summary>Weeds that find room in one pot.</summary>
    public double MostWeedsPerPot { get; }

    /// <summary>The value of a parameter as the file has it.</summary>
    /// <param name="id">An id of <see cref="WeedingParameterLimits"/>.</param>
    public double this[string id] => _values[id];

    /// <summary>The numbers with one of them changed.</summary>
    /// <param name="id">An id of <see cref="WeedingParameterLimits"/>.</param>
    /// <param name="value">The value, in the unit that the id names.</param>
    public WeedingNumbers With(string id, double value) => new(_values.SetItem(id, value));

    /// <summary>
    /// The numbers for pots of another size. The file's are for pots of the usual width, spaced as usual. Seedlings and
    /// room go with the surface of the mix; so do the minutes of a round, by one share with the ground that is walked.
    /// </summary>
    /// <param name="block">The pots.</param>
    /// <param name="usual">The usual width and distance, which the file's numbers are for.</param>
    public WeedingNumbers For(PotBlock block, UsualNumbers usual)
    {
        double width = (double)(block.WidthCm.Value / usual[UsualIds.PotWidth]),
            apart = (double)(block.ApartCm.Value / usual[UsualIds.SpacedPots]);
        double surface = width * width,
            byGround = this["walking-percent-by-ground"] / Percent;
        var values = _values.ToBuilder();
        foreach (string id in _values.Keys.Where(id => id.StartsWith(SeedlingsOfAYear, StringComparison.Ordinal)))
            values[id] *= surface;
        values["pot-surface-cm2"] *= surface;
        values["most-weeds-per-pot"] *= surface;
        values["next-year-seedlings-per-pot-at-most"] *= surface;
        values["walking-minutes-per-1000-pots-per-round"] *= 1 - byGround + (byGround * apart * apart);
        return new WeedingNumbers(values.ToImmutable());
    }

    /// <summary>The values of the knowledge; refused when it holds none.</summary>
    public static Outcome<WeedingNumbers, string> Of(KnowledgeBase knowledge) =>
        knowledge.Weeding.IsEmpty
            ? Outcome<WeedingNumbers, string>.Bad(
                "The knowledge has no weeding.yaml, so there is no hand-weeding model. Use a knowledge folder that has "
                    + "one."
            )
            : Outcome<WeedingNumbers, string>.Good(
                new(
                    knowledge.Weeding.Values.ToImmutableSortedDictionary(
                        parameter => parameter.Id,
                        parameter => (double)parameter.Value,
                        StringComparer.Ordinal
                    )
                )
            );

    /// <summary>
    /// Numbers drawn from the ranges of the knowledge: each by itself, as often below the value as above and nearest
    /// it most often. Drawn in ordinal order of id, so the same generator gives the same numbers.
    /// </summary>
    internal WeedingNumbers Drawn(KnowledgeBase knowledge, DrawnNumbers draws)
    {
        var values = _values.ToBuilder();
        foreach (WeedingParameter parameter in knowledge.Weeding.Values)
        {
            double drawn = draws.About(
                (double)parameter.Range.Low,
                (double)parameter.Value,
                (double)parameter.Range.High
            );
            // A number that the grower has set stays.
            if (_values[parameter.Id] == (double)parameter.Value)
                values[parameter.Id] = drawn;
        }

        return new WeedingNumbers(values.ToImmutable());
    }
}
