using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Robust;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <content>What the desk says.</content>
public sealed partial class PlanDesk
{
    private const int LabelColumns = 29,
        LongestName = 40,
        DaysInWeek = 7;
    private const decimal Thousand = 1000;

    private string _told = "";
    private bool _isRefusal;

    /// <summary>The area.</summary>
    public string Title =>
        $"The plan: {(Area.Name.Length > LongestName ? Area.Name[..(LongestName - 3)] + "..." : Area.Name)}";

    /// <summary>What the way on the page costs in a year, for all pots.</summary>
    public AdviceLine Money =>
        Shown is not { } way
            ? new AdviceLine($"This area cannot be planned. {string.Join(' ', Refusals)}", LineTone.Warning)
            : new AdviceLine(
                $"{All(way.Usd)} a year for {Plain(Year!.Pots)} pots, "
                    + $"{Hours(way.Hours * Year.Pots / Thousand)} h. Put on and laid {All(way.MeasuresUsd)}, "
                    + $"weeding {All(way.WeedingUsd)}, plants lost {All(way.LostUsd)}, "
                    + $"left for next year {All(way.Of(CostKind.NextYear))}.",
                LineTone.Heading
            );

    /// <summary>Whether the page shows what was asked, or what the search found; what was changed last.</summary>
    public AdviceLine Status
    {
        get
        {
            if (Shown is not { } way)
                return new AdviceLine("");
            if (_isRefusal)
                return new AdviceLine(_told, LineTone.Warning);
            string told = _told.Length == 0 ? "" : $"{_told}. ";
            if (!Refusals.IsEmpty)
                return new AdviceLine(told + string.Join(' ', Refusals), LineTone.Warning);
            if (Plan is { Best: null })
                return new AdviceLine(
                    $"{told}No year keeps all these wishes: this is only what you asked for. U takes the last back.",
                    LineTone.Warning
                );
            return Plan is { } plan
                ? new AdviceLine($"{told}{Found(plan, way)}", LineTone.Quiet)
                : new AdviceLine(told + Waiting(way), LineTone.Quiet);
        }
    }

    /// <summary>A line for each row; a star stands before a wish.</summary>
    /// <param name="width">Columns.</param>
    public ImmutableArray<AdviceLine> Lines(int width) =>
        [
            .. Rows.Select(
                (row, at) =>
                {
                    string line =
                        $"{(IsWish(row) ? '*' : ' ')} {LabelOf(row).PadRight(LabelColumns)} {ValueOf(row, at)}";
                    return new AdviceLine(line.Length <= width ? line : line[..width]);
                }
            ),
        ];

    /// <summary>What can be done with the row under the cursor.</summary>
    public AdviceLine About =>
        new(
            Row?.Kind switch
            {
                PlanRowKind.Rounds => "Left and Right: more and less often. Delete leaves it to the search again.",
                PlanRowKind.Measure when Open is { Measures.IsEmpty: true } =>
                    "Nothing that could be laid or changed is clear here with a figure.",
                PlanRowKind.Measure => "Left and Right: another cover, or none. Delete leaves it to the search again.",
                PlanRowKind.Use =>
                    "Space closes this week, D drops the product, K keeps it, Left and Right put on another one.",
                PlanRowKind.Closed => "Nothing goes on in this week. Delete opens it again.",
                PlanRowKind.Dropped => "It does not go on. Delete lets it go on again.",
                PlanRowKind.Hours or PlanRowKind.Budget =>
                    "Left and Right, or type a number and Enter. Delete: no limit.",
                PlanRowKind.Pots => "Left and Right, or type a number and Enter. Delete: as the visit has it.",
                _ => "",
            },
            LineTone.Quiet
        );

    /// <summary>What must be said where products are named, and of prices.</summary>
    public AdviceLine Caution =>
        new(
            Rows.Any(row => row.Kind == PlanRowKind.Use)
                ? "The label is the law; run the advice again on the day. Prices are invented until you give yours."
                : "Prices are invented until you give yours.",
            LineTone.Quiet
        );

    /// <summary>The whole plan, as <c>plan</c> prints it; before it is found, what the page rests on.</summary>
    public IEnumerable<Block> Details() =>
        _session.InUnits(
            Plan is { } plan
                ? PlanDocument.Of(new PlanReport(_visit, _knowledge, [new AreaPlanned(Area, plan, [])])).Blocks
                : [new Paragraph(Status.Text)]
        );

    /// <summary>Whether the plan stands when its figures move, as <c>plan --robust</c> prints it.</summary>
    public IEnumerable<Block> RobustPage() =>
        _robust is { } robust && robust.Plan == Plan
            ? _session.InUnits(RobustDocument.Of(robust))
            :
            [
                new Paragraph(
                    Plan is { Best: not null }
                        ? "Every figure behind the plan is moved within its range a thousand times: some seconds."
                        : "There is no plan to move yet: the search is not done."
                ),
            ];

    private string Waiting(Way way) =>
        Job is null
            ? "Priced as it is; nothing is searched here."
            : $"{(IsKept(way) ? "" : "It takes more than you allow. ")}{Priced}The search is on its way; what it finds "
                + "takes this place.";

    private string Priced =>
        _before.Count == 0 ? "This is today's way. " : $"Priced as you ask for it{Against(First)}. ";

    private string Found(AreaPlan plan, Way way)
    {
        string what = plan.IsProven
            ? "Planned anew: proven within 2 %"
            : FormattableString.Invariant(
                $"Planned anew: the best found; none is more than {plan.GapPercent:0.#} % cheaper"
            );
        string first = Wishes.IsFree ? what.Replace(" anew", "", StringComparison.Ordinal) : what + Against(First);
        // Priced as asked it was put neither to the rules nor to the label's limits.
        if (
            _asked is { } asked
            && !Wishes.IsFree
            && All(asked.Usd) != All(way.Usd)
            && asked.Usd < way.Usd
            && IsKept(asked)
        )
            first += $"; what you asked for costs {All(way.Usd - asked.Usd)} less, but the rules may not allow it";
        decimal saved = plan.Today.Usd - way.Usd;
        return saved >= 0
            ? $"{first}. It saves {All(saved)} against today's way."
            : $"{first}. Today's way costs {All(-saved)} less.";
    }

    private string Against(AreaPlan? first)
    {
        if (first?.Best is not { } best || Shown is not { } way)
            return "";
        decimal dearer = way.Usd - best.Way.Usd;
        return dearer == 0 ? ", as much as the plan without wishes"
            : dearer > 0 ? $", {All(dearer)} dearer than the plan without wishes"
            : $", {All(-dearer)} cheaper than the plan without wishes";
    }

    private bool IsWish(PlanRow row) =>
        row.Kind switch
        {
            PlanRowKind.Rounds => Wishes.RoundsIn(row.Part) is not null,
            PlanRowKind.Measure => Wishes.Measure is not null,
            PlanRowKind.Use => Wishes.Kept.Contains(row.Product),
            PlanRowKind.Hours => Wishes.Hours is not null,
            PlanRowKind.Budget => Wishes.Budget is not null,
            PlanRowKind.Pots => Wishes.Pots is not null,
            _ => true,
        };

    private string LabelOf(PlanRow row) =>
        row.Kind switch
        {
            PlanRowKind.Rounds => row.Part switch
            {
                PartOfYear.Spring => "Weed in spring",
                PartOfYear.Summer => "Weed in summer",
                _ => "Weed in autumn and winter",
            },
            PlanRowKind.Measure => "Lay or change",
            PlanRowKind.Use => $"Put on, week of {DayOf(row.Week)}",
            PlanRowKind.Closed => $"Closed, week of {DayOf(row.Week)}",
            PlanRowKind.Dropped => "Not to be put on",
            PlanRowKind.Hours => s_hours.Label,
            PlanRowKind.Budget => s_dollars.Label,
            _ => "Pots",
        };

    private string ValueOf(PlanRow row, int at) =>
        _typed.Length > 0 && at == At
            ? $"{_typed}_"
            : row.Kind switch
            {
                PlanRowKind.Rounds => Every(Shown!.Plan.Rounds.In(row.Part)),
                PlanRowKind.Measure => Measures(),
                PlanRowKind.Use => $"{NameOf(row.Product)}, {All(UsdOfUse(row.Product))}"
                    + (Wishes.Kept.Contains(row.Product) ? ", must go on" : ""),
                PlanRowKind.Closed => "nothing goes on",
                PlanRowKind.Dropped => NameOf(row.Product),
                PlanRowKind.Hours => Limit(Wishes.Hours is { } hours ? Plain(hours) : null)
                    + $"; the busiest week takes {Hours(BusiestWeekHours)} now",
                PlanRowKind.Budget => Limit(Wishes.Budget is { } usd ? Dollars(usd) : null)
                    + $"; {Dollars(SpentUsd)} is spent now",
                _ => $"{Plain(Year!.Pots)}{(Year.Block.Pots.From == Origin.Assumed ? ", assumed" : "")}",
            };

    private string Measures()
    {
        CatalogueAction[] laid = [.. Shown!.Plan.Parts.Select(part => part.Action).Where(action => action is Practice)];
        return laid.Length == 0
            ? "nothing"
            : $"{string.Join(" and ", laid.Select(one => one.Name))}, {All(laid.Sum(one => Shown.UsdOf(one.Id)))}";
    }

    private decimal UsdOfUse(string product) =>
        Shown!.UsdOf(product) / Shown.Plan.Parts.First(part => part.Action.Id == product).Times;

    private decimal BusiestWeekHours => PlanLimits.BusiestWeekHours(Year!, Shown!);

    private decimal SpentUsd => PlanLimits.SpentUsd(Year!, Shown!);

    private bool IsKept(Way way) => PlanLimits.Keeps(Wishes.Request([]), Year!, way);

    private static string Limit(string? wish) => wish ?? "any";

    private static string Every(int? weeks) =>
        weeks switch
        {
            null => "not at all",
            1 => "every week",
            _ => FormattableString.Invariant($"every {weeks} weeks"),
        };

    private string DayOf(int week) => Answering.Date(Day.AddDays(DaysInWeek * week));

    private string NameOf(string id) => _knowledge.ActionOf(id)?.Name ?? id;

    private string All(decimal usd) => Dollars(usd * Year!.Pots / Thousand);

    private static string Hours(decimal hours) => Figures.Plain(Math.Round(hours, 1));

    private static string Dollars(decimal usd) => Figures.Dollars(usd);

    private static string Plain(decimal value) => Figures.Plain(value);

    private void Tell(string told) => (_told, _isRefusal) = (told, false);

    private void Refuse(string told) => (_told, _isRefusal) = (told, true);

    // What could not be done is said until the cursor moves on.
    private void ForgetTrouble()
    {
        if (_isRefusal)
            Tell("");
    }
}
