using WeedAdvisor.Interview.Desks;

namespace WeedAdvisor.Asking;

/// <summary>Asks for the fields of a form line by line.</summary>
/// <param name="desk">The form.</param>
/// <param name="lines">The two ends of the line.</param>
internal sealed class FormDialogue(IFormDesk desk, Lines lines)
{
    private readonly string[] _before = [.. Enumerable.Range(0, desk.Fields.Length).Select(desk.TextOf)];

    /// <summary>Asks until every field was put or the grower has done.</summary>
    /// <returns>False when it was dropped, or the lines have ended.</returns>
    public bool Run()
    {
        lines.Say(desk.Title);
        lines.Say(desk.Purpose);
        lines.Say(
            "An empty line leaves a field as it is, - empties it, ? tells more of it, back goes one back, "
                + "done takes what there is, quit drops it."
        );
        int at = 0;
        while (at < desk.Fields.Length)
        {
            if (Ask(at) is not { } next)
                return false;
            at = next;
        }

        return true;
    }

    private int TypedAnew() =>
        Enumerable.Range(0, desk.Fields.Length).Count(field => desk.TextOf(field) != _before[field]);

    /// <summary>Asks for a field; the number of the field to ask next, or null when it is dropped.</summary>
    private int? Ask(int at)
    {
        lines.Say();
        lines.Say($"[{at + 1} of {desk.Fields.Length}] {desk.Fields[at]}");
        lines.Say($"({desk.Hint(at)})", "  ");
        if (desk.TextOf(at) is { Length: > 0 } said)
            lines.Say($"so far: {said}", "  ");
        while (lines.Hear("") is { } typed)
        {
            switch (typed.ToLowerInvariant())
            {
                case "quit":
                    if (
                        TypedAnew() > 1
                        && !lines.Agrees($"\"quit\" drops what was typed in {TypedAnew()} fields. Drop it?")
                    )
                        continue;
                    lines.Say("Dropped; nothing has changed.", "  ");
                    return null;
                case "?":
                    lines.Say(desk.About(at).Text, "  ");
                    continue;
                case "back":
                    return Math.Max(0, at - 1);
                case "done":
                    return desk.Fields.Length;
                case "":
                    return at + 1;
            }

            string before = desk.TextOf(at);
            desk.Type(at, typed == "-" ? "" : typed);
            if (desk.ProblemOf(at) is not { } problem)
                return at + 1;
            desk.Type(at, before);
            lines.Say(Sentence(problem), "  ");
        }

        return null;
    }

    private static string Sentence(string problem) => problem[^1] is '.' or '?' ? problem : problem + ".";
}
