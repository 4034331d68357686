using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Habits of the nursery, told once for all areas, while the areas pass.</summary>
internal sealed class HabitSection
{
    private const int MostHabits = 4;

    private readonly Dictionary<string, Habit> _habits = new(StringComparer.Ordinal);
    private int _areas;

    /// <summary>Takes the habits of an area.</summary>
    public void Gather(AreaAdvice area)
    {
        _areas++;
        foreach (ClearAction action in area.Clear.Where(action => action.Horizon == Horizon.Habit))
        {
            if (!_habits.TryGetValue(action.Action, out Habit? habit))
                _habits[action.Action] = habit = new Habit(action);
            habit.Add(area.Area.Name, action.Worth);
        }
    }

    /// <summary>The section; complete once all areas have passed. Nothing when there are none.</summary>
    public IEnumerable<Block> Blocks(Names names)
    {
        if (_habits.Count == 0)
            yield break;
        Habit[] all =
        [
            .. _habits
                .Values.OrderByDescending(habit => Math.Round(habit.Worth, 9))
                .ThenBy(habit => habit.First.Action, StringComparer.Ordinal),
        ];
        yield return new Heading(HeadingLevel.Area, Horizons.Title(Horizon.Habit));
        yield return new ItemList([
            .. all.Take(MostHabits)
                .Select(habit => new Item(
                    Item.Dash,
                    Line.Of($"{new Named(names.Action(habit.First.Action))}{Where(habit)}. {Why(habit.First)}") with
                    {
                        Action = habit.First.Action,
                    }
                )),
        ]).At(2);
        if (all.Length > MostHabits)
            yield return new Paragraph(
                $"More: {Listing.Some([.. all.Skip(MostHabits).Select(habit => names.Action(habit.First.Action))], 4)}"
            ).At(2);
    }

    private string Where(Habit habit) => habit.Areas.Count == _areas ? "" : $" ({Listing.Some([.. habit.Areas], 2)})";

    private static string Why(ClearAction action) =>
        ReasonsInOrder.Of(action.Because, []).FirstOrDefault() is { } reason ? Names.UnderItsName(reason.Said) : "";

    private sealed class Habit(ClearAction first)
    {
        public ClearAction First { get; } = first;

        public List<string> Areas { get; } = [];

        public double Worth { get; private set; }

        public void Add(string area, double worth)
        {
            Areas.Add(area);
            Worth += worth;
        }
    }
}
