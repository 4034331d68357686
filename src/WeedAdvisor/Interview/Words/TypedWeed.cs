using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Words;

/// <summary>Reads a weed seen that was typed in one line: <c>liverwort, mature, 20</c>, or with the share of pots that
/// have it: <c>liverwort, mature, 80, in 20 % of pots</c>, or with where it stands: <c>beside the pots</c>.</summary>
public static class TypedWeed
{
    /// <summary>Reads the line. Stage, cover and share of pots may be left out, in which case they are not
    /// known.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="place">The kind of place, when known.</param>
    public static Typed<WeedSeen> Read(KnowledgeBase knowledge, string text, string? place)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts[0].Length == 0)
            return Typed<WeedSeen>.Wrong("Give the weed's name first.");
        ImmutableArray<NameHit> hits = NameSearch.Weeds(knowledge, parts[0], place);
        Typed<NameHit> weed = OneOf(hits, parts[0], "weed");
        if (weed.Value is null)
            return Typed<WeedSeen>.Wrong(hits.IsEmpty ? weed.Error! + OfBroadKinds(knowledge) : weed.Error!);
        var seen = new WeedSeen(weed.Value.Id, null, null);
        foreach (string part in parts.Skip(1))
        {
            (WeedSeen? next, string? error) = With(knowledge, seen, part);
            if (next is null)
                return Typed<WeedSeen>.Wrong(error!);
            seen = next;
        }

        return Typed<WeedSeen>.As(seen);
    }

    /// <summary>Reads a cover: percent of the surface, 0 to 100.</summary>
    public static Typed<decimal> ReadCover(string text) => ReadPercent(text, "a cover");

    /// <summary>Reads the share of pots or trays that have the weed: percent, 0 to 100.</summary>
    public static Typed<decimal> ReadPots(string text) => ReadPercent(text, "a share of the pots");

    private static Typed<decimal> ReadPercent(string text, string what)
    {
        string figure = text.Trim().TrimEnd('%').TrimEnd();
        return TypedAnswer.ReadFigure(figure) is { } value && value is >= 0 and <= 100
            ? Typed<decimal>.As(value)
            : Typed<decimal>.Wrong($"\"{text.Trim()}\" is not {what}. Give a percentage from 0 to 100.");
    }

    /// <summary>The one hit that a name means; an error when there is none, or when it may be one of several.</summary>
    internal static Typed<NameHit> OneOf(ImmutableArray<NameHit> hits, string typed, string what) =>
        hits switch
        {
            [] => Typed<NameHit>.Wrong($"No {what} is called \"{typed}\"."),
            _ when NameMeaning.Sole(hits, typed) is { } sole => Typed<NameHit>.As(sole),
            _ => Typed<NameHit>.Wrong(
                $"\"{typed}\" fits several: "
                    + string.Join(", ", hits.Take(5).Select(hit => hit.Name))
                    + (hits.Length > 5 ? " and more." : ".")
            ),
        };

    /// <summary>How to tell a weed that is not in the list; empty where the knowledge has no broad kinds.</summary>
    internal static string OfBroadKinds(KnowledgeBase knowledge)
    {
        string[] kinds = [.. knowledge.Weeds.Values.Where(weed => weed.IsUnnamed).Select(weed => weed.Name)];
        return kinds.Length == 0
            ? ""
            : $" If it is not in the list, or has no name yet, tell its kind: {string.Join(", ", kinds)}.";
    }

    /// <summary>Reads where it stands: <c>in the pots</c>, <c>beside the pots</c>; null for anything else.</summary>
    public static string? StandsIn(string part) =>
        FoldedWords.Of(part) switch
        {
            "in-the-pots" or "in-pots" or "in-the-trays" => WeedSeen.InPots,
            "beside-the-pots"
            or "between-the-pots"
            or "under-the-pots"
            or "not-in-the-pots"
            or "in-the-ground"
            or "ground" => WeedSeen.InGround,
            _ => null,
        };

    /// <summary>Reads a share of the pots or trays: <c>in 20 % of pots</c>, <c>20 % of the pots</c>.</summary>
    private static string? PotsIn(string part)
    {
        string text = part.StartsWith("in ", StringComparison.OrdinalIgnoreCase) ? part[3..].TrimStart() : part;
        string[] ends = ["of the pots", "of pots", "of the trays", "of trays", "pots", "trays"];
        return ends.FirstOrDefault(end => text.EndsWith(end, StringComparison.OrdinalIgnoreCase)) is { } ending
            ? text[..^ending.Length]
            : null;
    }

    private static (WeedSeen? Seen, string? Error) With(KnowledgeBase knowledge, WeedSeen seen, string part)
    {
        if (part.Length == 0 || TypedAnswer.IsNotKnown(part))
            return (seen, null);
        if (StandsIn(part) is { } place)
            return (seen with { Stands = place }, null);
        if (PotsIn(part) is { } share)
        {
            Typed<decimal> pots = ReadPots(share);
            return pots.Error is null ? (seen with { PotsPercent = pots.Value }, null) : (null, pots.Error);
        }

        if (char.IsAsciiDigit(part[0]) || part[0] == '-')
        {
            Typed<decimal> cover = ReadCover(part);
            return cover.Error is null ? (seen with { CoverPercent = cover.Value }, null) : (null, cover.Error);
        }

        Typed<AnswerChoice> stage = TypedAnswer.Pick(Answering.Stages(knowledge), part);
        return stage.Value is { } choice ? (seen with { Stage = choice.Id }, null) : (null, stage.Error);
    }
}
