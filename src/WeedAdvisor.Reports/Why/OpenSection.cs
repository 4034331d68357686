using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>What is not known, question by question, with what each may do to the action.</summary>
internal static class OpenSection
{
    private const int MostEffects = 3;

    /// <summary>The section; nothing where everything that matters is known.</summary>
    /// <param name="names">What things are called.</param>
    /// <param name="open">Reasons that are not sure yet, cautions left out.</param>
    /// <param name="asked">What its status waits for, also where no reason by itself does.</param>
    public static IEnumerable<Block> Of(Names names, ImmutableArray<Reason> open, ImmutableArray<Need> asked)
    {
        Need[] needs = [.. asked.Concat(open.SelectMany(reason => reason.Needs)).Distinct()];
        if (needs.Length == 0)
            return [];
        return
        [
            Heading.Section("What is not known yet"),
            new ItemList([
                .. needs
                    .OrderByDescending(need =>
                        open.Where(reason => reason.Needs.Contains(need)).Select(Rank).Append(0).Max()
                    )
                    .ThenBy(need => need)
                    .Select(need => ItemOf(names, need, [.. open.Where(reason => reason.Needs.Contains(need))])),
            ]).At(2),
        ];
    }

    private static Item ItemOf(Names names, Need need, ImmutableArray<Reason> reasons)
    {
        Reason[] rules =
        [
            .. reasons
                .DistinctBy(reason => reason.Judgement)
                .OrderByDescending(Rank)
                .ThenBy(reason => reason.Judgement),
        ];
        string more = rules.Length > MostEffects ? $" And {rules.Length - MostEffects} more; '--full' tells them." : "";
        return new Item(Item.Open, names.Need(need))
        {
            Below =
            [
                .. rules
                    .Take(MostEffects)
                    .Select(
                        (reason, at) =>
                            new Keyed(
                                Effect(reason),
                                ReasonLines.TextOf(names, reason) + (at == MostEffects - 1 ? more : "")
                            ).At(2)
                    ),
            ],
        };
    }

    private static string Effect(Reason reason) =>
        reason.Then switch
        {
            Consequence.Bar => "may bar it: ",
            Consequence.Argument { IsDoubt: true } => "may speak against it: ",
            _ => "may speak for it: ",
        };

    private static int Rank(Reason reason) =>
        reason.Then switch
        {
            Consequence.Bar => 3,
            Consequence.Argument { IsDoubt: true } => 2,
            _ => 1,
        };
}
