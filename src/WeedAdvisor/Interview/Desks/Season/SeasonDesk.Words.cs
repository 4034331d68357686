using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Interview.Desks.Season;

/// <content>What the desk says.</content>
public sealed partial class SeasonDesk
{
    private const int LongestName = 28,
        MostWeekRows = 2,
        MostNamed = 2;

    private string _told = "";
    private bool _isRefusal;

    /// <summary>What the characters of the strip mean.</summary>
    public const string Key = "# held  + partly held  o comes up  . not up  - nothing may go on  x your wish";

    /// <summary>The area and its wishes, in one line.</summary>
    public string Title
    {
        get
        {
            string name = AreaName.Length > LongestName ? AreaName[..(LongestName - 3)] + "..." : AreaName;
            return Plan is { } plan ? $"The year: {name}   {SeasonLines.Short(plan)}" : $"The year: {name}";
        }
    }

    /// <summary>What the year costs; before that, that the rules are being asked.</summary>
    public AdviceLine Money =>
        !IsRead ? new AdviceLine("Asking the rules for every week of the year: one moment.", LineTone.Quiet)
        : Plan is { } plan ? SeasonLines.Money(plan)
        : new AdviceLine("This area cannot be planned yet.", LineTone.Warning);

    /// <summary>
    /// What was changed last and what all changes together cost; the wishes that clash when there is no plan.
    /// </summary>
    public AdviceLine LastChange
    {
        get
        {
            if (Plan is not { } plan)
                return new AdviceLine("");
            if (plan.Plan is null)
                return new AdviceLine(
                    $"These wishes cannot all be met: "
                        + $"{string.Join("; ", plan.ClashingWishes.Select(wish => wish.In(plan.Case.Problem, Name)))}. "
                        + $"U takes the last one back.",
                    LineTone.Warning
                );
            if (_isRefusal)
                return new AdviceLine(_told, LineTone.Warning);
            string told = _told.Length == 0 ? "" : _told + ". ";
            return IsFree(Wishes)
                ? new AdviceLine(
                    told
                        + "This is the first plan."
                        + (told.Length == 0 ? " Change a wish, and it is planned anew." : ""),
                    LineTone.Quiet
                )
                : new AdviceLine(told + SeasonLines.Against(DearerUsd) + ".");
        }
    }

    /// <summary>What can be said of the week under the cursor.</summary>
    public AdviceLine AboutWeek()
    {
        if (Plan is not { } plan)
            return new AdviceLine("");
        string week = $"Week of {Answering.Date(DayUnderCursor)}";
        string[] open = [.. Strip!.Rows.Where(row => row.Weeks[Week] is Cover.Open).Select(row => row.Name)];
        string free = open switch
        {
            [] => "what comes up is held",
            { Length: <= MostNamed } => $"gets through: {string.Join(", ", open)}",
            _ => FormattableString.Invariant($"{open.Length} of {Strip.Rows.Length} weeds get through"),
        };
        if (IsClosed(Week))
            return new AdviceLine($"{week}: closed by your wish; {free}.");
        if (Use is not null)
            return new AdviceLine($"{week}: {Strip.Marks[Week]} goes on; {free}.");
        return plan.Closed.FirstOrDefault(span => Week >= span.FromWeek && Week <= span.ToWeek) is { } closed
            ? new AdviceLine(
                $"{week}: {free}; nothing may go on, {closed.Because}{(closed.Because.EndsWith('.') ? "" : ".")}"
            )
            : new AdviceLine($"{week}: {free}.");
    }

    /// <summary>
    /// The lines below the strip: the week under the cursor, what goes on, the wishes. The refusals when there is no
    /// plan.
    /// </summary>
    /// <param name="width">Columns.</param>
    public ImmutableArray<AdviceLine> Lines(int width)
    {
        if (Plan is not { } plan)
            return Fitted(Refusals.Select(line => new AdviceLine(line)), width);

        // The reason for a closed week can be long; the page of work has all of it.
        ImmutableArray<AdviceLine> week = Fitted([AboutWeek() with { Tone = LineTone.Quiet }], width);
        if (week.Length > MostWeekRows)
            week =
            [
                .. week.Take(MostWeekRows - 1),
                week[MostWeekRows - 1] with
                {
                    Text = Cut(week[MostWeekRows - 1].Text, width - 4) + " ...",
                },
            ];
        return [.. week, .. PageLines.Of(SeasonLines.Of(plan, Week, _session.Knowledge), width)];
    }

    /// <summary>Which of the lines is the application under the cursor; -1 when none is.</summary>
    /// <param name="width">Columns.</param>
    public int LineOfApplication(int width) =>
        Use is null
            ? -1
            : Lines(width).ToList().FindIndex(line => line is { Action: not null, Tone: LineTone.Heading });

    /// <summary>All work by day, all that gets through, what was assumed, as a page.</summary>
    public IEnumerable<Block> Details() =>
        Plan is { } plan ? _session.InUnits(YearPage.Of(plan, _session.Knowledge)) : [];

    private static string Cut(string text, int width) => text.Length <= width ? text : text[..Math.Max(0, width)];

    private static ImmutableArray<AdviceLine> Fitted(IEnumerable<AdviceLine> lines, int width) =>
        [
            .. lines.SelectMany(line =>
                line.Text.Length <= width
                    ? [line]
                    : Wrapping.Lines(line.Text, width, "", "  ").Select(part => line with { Text = part })
            ),
        ];

    private void Tell(string told) => (_told, _isRefusal) = (told, false);

    private void Refuse(string told) => (_told, _isRefusal) = (told, true);

    // What could not be done is said until the cursor moves on.
    private void ForgetTrouble()
    {
        if (_isRefusal)
            Tell("");
    }

    private string Name(string id) =>
        _session.Knowledge.Treatments.TryGetValue(id, out Treatment? found) ? found.Name : id;
}
