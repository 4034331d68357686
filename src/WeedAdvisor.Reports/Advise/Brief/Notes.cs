using System.Collections.Immutable;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>What is said of several actions of an area: told once, below them, and called by a letter.</summary>
internal sealed class Notes
{
    private const int Letters = 'z' - 'a' + 1;

    private readonly ImmutableArray<(string Mark, string Text)> _all;

    /// <summary>Gathers what two actions or more share, in the order of reading.</summary>
    public Notes(IEnumerable<ImmutableArray<Point>> pointsOfEachAction) =>
        _all = [
            .. pointsOfEachAction
                .SelectMany(points => points.Select(KeyOf).Distinct())
                .GroupBy(key => key)
                .Where(group => group.Count() > 1)
                .Select(group => group.Key),
        ];

    /// <summary>Whether the point is told as a note.</summary>
    public bool Holds(Point point) => _all.Contains(KeyOf(point));

    /// <summary>
    /// The letters of the notes that tell the points, such as <c>a to d, g</c>; null when there are none.
    /// </summary>
    public string? LettersOf(IEnumerable<Point> points)
    {
        int[] told = [.. points.Where(Holds).Select(point => _all.IndexOf(KeyOf(point))).Distinct().Order()];
        // In a run of letters the distance to the place in the list stays the same.
        var runs = told.Select((index, place) => (index, place))
            .GroupBy(item => item.index - item.place, item => item.index);
        return told.Length == 0 ? null : string.Join(", ", runs.Select(run => Run([.. run])));
    }

    /// <summary>The notes; nothing when there are none.</summary>
    public IEnumerable<Block> Blocks() =>
        _all.IsEmpty
            ? []
            :
            [
                Heading.Section("Notes to these actions"),
                new ItemList([
                    .. _all.Select((note, at) => new Item($"{Letter(at)}. ".PadRight(3), note.Mark + note.Text)),
                ]).At(2),
            ];

    private static string Run(int[] run) =>
        run.Length > 2 ? $"{Letter(run[0])} to {Letter(run[^1])}" : string.Join(", ", run.Select(Letter));

    private static (string Mark, string Text) KeyOf(Point point) => (point.Mark, point.Shared);

    private static string Letter(int index)
    {
        string last = ((char)('a' + (index % Letters))).ToString();
        return index < Letters ? last : Letter((index / Letters) - 1) + last;
    }
}
