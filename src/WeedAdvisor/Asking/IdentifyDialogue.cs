using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Asking;

/// <summary>Finds out line by line which weed it is.</summary>
/// <param name="narrowing">What was said so far, and what follows.</param>
/// <param name="lines">The two ends of the line.</param>
/// <param name="picks">Whether the grower is to pick a weed in the end; else the result is only told.</param>
public sealed class IdentifyDialogue(Narrowing narrowing, Lines lines, bool picks)
{
    private const int MostNamed = 6,
        MostListed = 15,
        Width = 78;

    private static readonly string[] s_words = ["yes", "no", "don't know", "back", "list", "features", "help", "quit"];

    private string? _shown;
    private bool _told;

    /// <summary>Asks until it is settled, or until the grower has had enough.</summary>
    /// <returns>The id of the weed picked; null when none was.</returns>
    public string? Run()
    {
        lines.Say("Which weed is it? Answer yes, no or don't know; help lists the rest.");
        while (!lines.Ended)
        {
            if (narrowing.Found.Next is { } next)
                Put(next);
            else if (!_told)
                Tell();
            if (!picks && narrowing.Found.Next is null)
                return null;
            if (lines.Hear("") is not { } typed || typed.Equals("quit", StringComparison.OrdinalIgnoreCase))
                break;
            if (typed.Length > 0 && Take(typed) is { } weed)
                return weed;
        }

        if (!picks && narrowing.HasBegun)
            Tell();
        return null;
    }

    private ImmutableArray<WeedFit> Candidates => narrowing.Found.Candidates;

    /// <summary>The weeds in question; when they are few, the nearest others too.</summary>
    private ImmutableArray<WeedFit> Listed =>
        [
            .. Candidates.Take(MostListed),
            .. narrowing
                .Found.Fits.Where(fit => fit.Matches.Count > 0 && !Candidates.Contains(fit))
                .Take(Math.Max(0, MostNamed - Candidates.Length)),
        ];

    private void Put(NextFeature next)
    {
        if (_shown == next.Feature)
            return;
        _shown = next.Feature;
        lines.Say();
        string names =
            Candidates.Length <= MostNamed ? ": " + string.Join(", ", Candidates.Select(fit => fit.Weed.Name)) : "";
        lines.Say($"[{Candidates.Length} weeds in question{names}]");
        lines.Say($"Do you see this: {narrowing.Features.TextOf(next.Feature)}?");
    }

    private string? Take(string typed)
    {
        switch (typed.ToLowerInvariant())
        {
            case "back":
                if (!narrowing.Back())
                    lines.Say("Nothing was answered yet.", "  ");
                Renew();
                return null;
            case "list":
                List();
                return null;
            case "?" when narrowing.Found.Next is { } next:
                lines.Say($"Of the weeds in question {next.With} have it on record, {next.Without} do not.", "  ");
                return null;
            case "features":
                foreach (KeyValuePair<string, string> feature in narrowing.Features.All)
                    lines.Say($"{feature.Value} ({feature.Key})", "    ");
                return null;
            case "help":
                Help();
                return null;
        }

        if (typed.All(char.IsAsciiDigit))
            return Pick(typed);
        if (!Answer(typed))
            Name(typed);
        return null;
    }

    /// <summary>Hears an answer to the question; false when the line is none.</summary>
    private bool Answer(string typed)
    {
        Action<string>? answer = typed.ToLowerInvariant() switch
        {
            "yes" or "y" => narrowing.See,
            "no" or "n" => narrowing.Miss,
            _ when TypedAnswer.IsNotKnown(typed) => narrowing.Pass,
            _ => null,
        };
        if (answer is null)
            return false;
        if (narrowing.Found.Next is { } next)
        {
            answer(next.Feature);
            Renew();
        }
        else
        {
            lines.Say("No question is open. Type the number of a weed, back or quit.", "  ");
        }

        return true;
    }

    /// <summary>
    /// A feature may be named out of turn; <c>not</c> or <c>no</c> before it says that it is not there.
    /// </summary>
    private void Name(string typed)
    {
        // The whole line first: a feature may itself begin with no, such as no hairs.
        Typed<string> feature = FeatureNames.Find(narrowing.Features, typed);
        string[] parts = typed.Split(' ', 2, StringSplitOptions.TrimEntries);
        bool isAbsent = feature.Value is null && parts is [var first, _] && first.ToLowerInvariant() is "not" or "no";
        if (isAbsent)
            feature = FeatureNames.Find(narrowing.Features, parts[1]);
        if (feature.Value is null)
        {
            Complain(typed, feature.Error!);
            return;
        }

        if (isAbsent)
            narrowing.Miss(feature.Value);
        else
            narrowing.See(feature.Value);
        lines.Say($"{(isAbsent ? "not there" : "seen")}: {narrowing.Features.TextOf(feature.Value)}", "  ");
        Renew();
    }

    private void Complain(string typed, string error)
    {
        string hint =
            error.Contains("did you mean", StringComparison.Ordinal) ? ""
            : NearWords.Nearest(typed, s_words) is { } near ? $" Did you mean {near}?"
            : " Type help for the list.";
        lines.Say($"{char.ToUpperInvariant(error[0])}{error[1..]}.{hint}", "  ");
    }

    private string? Pick(string typed)
    {
        if (
            !int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int at)
            || at < 1
            || at > Listed.Length
        )
        {
            lines.Say($"There is no weed {typed} on the list; type list to see it.", "  ");
            return null;
        }

        WeedFit fit = Listed[at - 1];
        lines.Say($"{fit.Weed.Name} ({fit.Weed.Scientific}): {fit.Weed.Identify}", "  ");
        return picks ? fit.Weed.Id : null;
    }

    private void List()
    {
        ImmutableArray<WeedFit> listed = Listed;
        for (int i = 0; i < listed.Length; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(4) + "  ";
            string less = Candidates.Contains(listed[i]) ? "" : ": fits less well";
            lines.Say($"{listed[i].Weed.Name} ({listed[i].Weed.Scientific}){less}", number);
        }

        if (Candidates.Length > MostListed)
            lines.Say($"and {Candidates.Length - MostListed} more", "      ");
        lines.Say(picks ? "A number picks the weed." : "A number tells how to know the weed.", "  ");
    }

    private void Tell()
    {
        _told = true;
        lines.Say();
        string[] text = IdentifyText.Of(narrowing.Found, narrowing.Features, Width).TrimEnd('\n').Split('\n');
        foreach (string line in text)
            lines.SayAsIs(line);
        if (!picks)
            return;
        lines.Say();
        List();
        lines.Say("back takes the last answer back; quit picks none.", "  ");
    }

    private void Renew() => (_shown, _told) = (null, false);

    private void Help()
    {
        string[] help =
        [
            "yes, no    the feature is there, or is not",
            "?          how many of the weeds in question it parts from the others",
            "-          you can't tell (also: don't know)",
            "WORD       name a feature out of turn; not WORD says that it is not there",
            "features   every feature that can be named",
            "list       the weeds in question, with numbers",
            picks ? "N          picks a weed from that list" : "N          tells how to know a weed from that list",
            "back       takes the last answer back",
            picks ? "quit       goes back without a weed" : "quit       ends, and tells what is known so far",
        ];
        foreach (string line in help)
            lines.Say(line[11..], "  " + line[..11]);
    }
}
