using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Advice;

/// <summary>A caution said with an action.</summary>
/// <param name="Said">What is said.</param>
/// <param name="Judgement">The judgement it comes from; null when it stands in the action's record.</param>
/// <param name="IsCertain">Whether it holds for sure.</param>
public sealed record ActionCaution(Said Said, string? Judgement, bool IsCertain)
{
    /// <summary>What is said, in plain words.</summary>
    public string Text => Said.Text;

    /// <summary>It keeps somebody from being hurt: no page leaves it out.</summary>
    public bool ProtectsPeople { get; init; }

    /// <summary>
    /// It keeps the crop or the water from being lost, or the work from being done for nothing: it is said wherever the
    /// action is named.
    /// </summary>
    public bool GoesWithItsName { get; init; }

    /// <summary>Of those only what the work would be done for nothing without.</summary>
    public bool SavesTheResult { get; init; }

    /// <summary>
    /// Whether it is never left out where its action is named: it holds for sure and keeps from harm or waste.
    /// </summary>
    public bool Decides => IsCertain && (ProtectsPeople || GoesWithItsName);

    /// <summary>
    /// How much of what was found here it rests on: 4 a weed, a crop or an earlier use, 3 the place or a finding, 2 the
    /// action's own record, 1 a rule that holds wherever such an action is used.
    /// </summary>
    public int Nearness { get; init; } = 2;

    /// <summary>The caution that a reason is.</summary>
    public static ActionCaution Of(Reason reason) =>
        Of(
            reason.Judgement,
            reason.Then,
            reason.Matched.Select(match => match.Asked).OfType<Pattern>(),
            reason.Caution!,
            reason.IsCertain
        );

    /// <summary>The caution that a rule attaches.</summary>
    /// <param name="judgement">The rule.</param>
    /// <param name="said">What it says here.</param>
    /// <param name="isCertain">Whether it holds for sure.</param>
    internal static ActionCaution Of(Judgement judgement, Said said, bool isCertain) =>
        Of(judgement.Id, judgement.Then, judgement.When, said, isCertain);

    private static ActionCaution Of(
        string judgement,
        Consequence then,
        IEnumerable<Pattern> when,
        Said said,
        bool isCertain
    ) =>
        new(said, judgement, isCertain)
        {
            ProtectsPeople = then is Consequence.Caution { ProtectsPeople: true },
            SavesTheResult = then is Consequence.Caution { SavesTheResult: true },
            GoesWithItsName =
                then
                    is Consequence.Caution { ProtectsCrop: true }
                        or Consequence.Caution { ProtectsWater: true }
                        or Consequence.Caution { SavesTheResult: true },
            Nearness = when.Select(NearnessOf).Append(1).Max(),
        };

    private static int NearnessOf(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact { Kind: FactKind.Site } or Pattern.HasFinding => 3,
            Pattern.Fact fact => fact.IsOnAction() ? 1 : 4,
            Pattern.Any any => NearnessOf(any.Inner),
            Pattern.None => 3,
            _ => 1,
        };
}
