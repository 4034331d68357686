using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Reports.Text;

/// <summary>One clear action: how good it is, what it costs, what speaks for it, what to mind.</summary>
internal static class ActionBlock
{
    private const int MostReasons = 2;
    private const int Left = 6;

    public static void Write(
        Page page, Names names, DateOnly day, ClearAction action, string basis, ActionDates? dates)
    {
        page.Gap();
        string rank = action.Rank.ToString(CultureInfo.InvariantCulture).PadLeft(3);
        string status = action.Status == ActionStatus.Clear ? "" : $", {StatusWords.Of(action, names.NeedInShort)}";
        page.Write(0, $" {rank}. ", $"{names.Action(action.Action)} ({action.Action}){status}");
        CatalogueAction? record = names.Record(action.Action);
        if (record is not null)
            page.Write(Left, record.What);
        page.Write(Left, Figures.Merit(action));
        if (StatusWords.Unless(action, names.NeedInShort) is { } unless)
            page.Write(Left, "clear unless: ", unless);
        page.Write(Left, EffectText(names, action.Effect));
        if (Costs.Text(action, basis) is { } cost)
            page.Write(Left, $"Cost: {cost}{(Costs.IsInvented(record) ? " (invented figures)" : "")}");
        DateLines.Write(page, Left, dates, day);
        DayLine.Write(page, Left, action);
        WriteReasons(page, names, action);
        WriteCautions(page, names, day, action, record);
    }

    private static string EffectText(Names names, Effect effect)
    {
        if (effect.Parts.IsEmpty)
            return "Effect: no weeds to count it on";
        string parts = string.Join("; ", effect.Parts.Select(part => Part(names, part)));
        return effect.Reduction is { } reduction
            ? $"Effect: about {Figures.Percent(reduction)} fewer of the weeds seen ({parts})"
            : $"Effect: no published figure for {string.Join(", ", effect.Parts.Select(part => names.Weed(part.Weed)))}";
    }

    private static string Part(Names names, EffectPart part) =>
        part is { LowPercent: { } low, HighPercent: { } high }
            ? $"{names.Weed(part.Weed)} {Figures.Range(low, high)} %{Figures.Keys(part.Sources)}"
            : $"{names.Weed(part.Weed)} no figure";

    private static void WriteReasons(Page page, Names names, ClearAction action)
    {
        ImmutableArray<Reason> against = [.. action.Because.Where(IsDoubt)];
        ImmutableArray<Reason> support = [.. action.Because.Where(reason => !IsDoubt(reason))];
        WriteStrongest(page, names, action, "for: ", support);
        WriteStrongest(page, names, action, "against: ", against);
        page.Write(Left, "why: ", string.Join(", ", action.Because.Select(reason => reason.Judgement).Distinct()));
    }

    private static void WriteStrongest(
        Page page, Names names, ClearAction action, string mark, ImmutableArray<Reason> reasons)
    {
        foreach (Reason reason in reasons.DistinctBy(reason => reason.Text).Take(MostReasons))
        {
            string text = names.UnderItsName(action.Action, reason.Text);
            page.Write(Left, mark, $"{text} ({Figures.Strength(reason)}){Figures.Keys(reason.Sources)}");
        }
    }

    private static void WriteCautions(Page page, Names names, DateOnly day, ClearAction action, CatalogueAction? record)
    {
        foreach (ActionCaution caution in action.Cautions)
        {
            string mark = caution.IsCertain ? "mind: " : "mind, if it applies: ";
            page.Write(Left, mark, names.UnderItsName(action.Action, caution.Text));
        }

        if (names.Treatment(action.Action) is { } treatment)
            page.Write(Left, "label first: ", string.Join("; ", Safety.LinesFor(treatment, day)));
        else if (record is not null && Safety.ToConfirm(record) is { IsEmpty: false } fields)
            page.Write(Left, "from memory: ", string.Join(", ", fields.Select(Names.Field)));
    }

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };
}
