using System.Globalization;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Asking;

/// <summary>The command <c>area</c> of a line-by-line interview.</summary>
internal sealed class AskAreas(InterviewSession session, Lines lines)
{
    /// <summary>Does what stands after the word <c>area</c>.</summary>
    public void Do(string words)
    {
        string[] parts = words.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string rest = parts.Length > 1 ? parts[1] : "";
        switch (parts.Length == 0 ? "" : parts[0].ToLowerInvariant())
        {
            case "":
                List();
                break;
            case "new":
                session.AddArea(rest);
                break;
            case "name" when rest.Length > 0:
                session.RenameArea(session.AreaIndex, rest);
                lines.Say($"This area is now called {session.Area.Name}.", "  ");
                break;
            case "remove" when Number(rest) is { } gone:
                Remove(gone);
                break;
            case string number when Number(number) is { } to:
                session.GoToArea(to);
                break;
            default:
                lines.Say("Type area, area 2, area new NAME, area name NAME, or area remove 2.", "  ");
                break;
        }
    }

    private void Remove(int gone)
    {
        VisitArea area = session.Visit.Areas[gone];
        if (
            session.Visit.Areas.Length > 1
            && Losses.OfArea(session.Visit, area) is { } loss
            && !lines.Agrees($"{area.Name} holds {loss}. Remove it?")
        )
        {
            lines.Say($"{area.Name} stays.", "  ");
            return;
        }

        lines.Say(
            session.RemoveArea(gone) ? $"{area.Name} is removed; undo brings it back." : "The last area stays.",
            "  "
        );
    }

    private int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        && number >= 1
        && number <= session.Visit.Areas.Length
            ? number - 1
            : null;

    private void List()
    {
        for (int i = 0; i < session.Visit.Areas.Length; i++)
        {
            string here = i == session.AreaIndex ? " (here)" : "";
            string number = (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(4) + "  ";
            lines.Say($"{session.Visit.Areas[i].Name}{here}", number);
        }
    }
}
