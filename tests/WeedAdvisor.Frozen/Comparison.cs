using System.Globalization;

namespace WeedAdvisor.Frozen;

/// <summary>Two states of the program side by side.</summary>
internal static class Comparison
{
    private const int MostNamed = 4;

    /// <summary>
    /// Prints how many outputs of each command are equal, which ended with another exit code, which actions are clear
    /// now that were not before, and which bars are gone.
    /// </summary>
    /// <param name="before">A folder of outputs.</param>
    /// <param name="after">The other.</param>
    /// <param name="list">The file that the names of all differing outputs go to.</param>
    /// <param name="isPart">Whether what was made now is a part of what was made before, and meant to be.</param>
    /// <param name="page">Where to print.</param>
    /// <returns>0 when all are equal, else 1.</returns>
    public static int Print(string before, string after, string list, bool isPart, TextWriter page)
    {
        string[] old = Names(before),
            now = Names(after);
        Pair[] pairs = Pairs(before, after);
        int both = pairs.Length;
        page.WriteLine($"{both} outputs in both, {old.Length - both} only before, {now.Length - both} only after");
        foreach (var command in pairs.GroupBy(pair => pair.Command).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            Pair[] differ = [.. command.Where(pair => !pair.IsSame)];
            int equal = command.Count() - differ.Length;
            page.WriteLine(
                $"{command.Key.PadRight(18)} {Padded(equal)} equal {Padded(differ.Length)} differ{Some(differ)}"
            );
        }

        page.WriteLine("ended with another exit code:");
        Group(
            page,
            pairs
                .Where(pair => pair.OldEnd != pair.NewEnd)
                .Select(pair => ($"{pair.Command}: {pair.OldEnd} before, {pair.NewEnd} now", pair.Visit))
        );

        Cleared(page, pairs);
        page.WriteLine("rules that barred an action before and don't now, renamed ones among them:");
        Group(
            page,
            Advice(pairs)
                .SelectMany(pair =>
                    ActionsOf
                        .LostBars(pair.Old, pair.New)
                        .Select(one => (one.Rule, $"{pair.Visit} {one.Area} {one.Action}"))
                )
        );

        string[] differing = [.. pairs.Where(pair => !pair.IsSame).Select(pair => pair.Name)];
        File.WriteAllLines(list, differing);
        page.WriteLine($"The {differing.Length} that differ are named in {list}");
        return differing.Length > 0 || now.Length > both || (old.Length > both && !isPart) ? 1 : 0;
    }

    /// <summary>Prints which actions are clear now that were not before.</summary>
    /// <returns>0 when there is none, else 1.</returns>
    public static int PrintCleared(string before, string after, TextWriter page) =>
        Cleared(page, Pairs(before, after)) == 0 ? 0 : 1;

    private static int Cleared(TextWriter page, Pair[] pairs)
    {
        (string, string)[] found =
        [
            .. Advice(pairs)
                .SelectMany(pair =>
                    ActionsOf
                        .NewlyClear(pair.Old, pair.New)
                        .Select(one =>
                            ($"{one.Action}: {one.Before} before, {one.Now} now", $"{pair.Visit} {one.Area}")
                        )
                ),
        ];
        page.WriteLine("clear now and not before:");
        Group(page, found);
        return found.Length;
    }

    private static IEnumerable<Pair> Advice(Pair[] pairs) =>
        pairs.Where(pair => !pair.IsSame && pair.Command == "advise.json");

    private static Pair[] Pairs(string before, string after) =>
        [
            .. Names(before)
                .Intersect(Names(after))
                .Select(name => new Pair(name, Read(before, name), Read(after, name))),
        ];

    private static void Group(TextWriter page, IEnumerable<(string What, string Where)> found)
    {
        var groups = found.ToLookup(one => one.What, one => one.Where);
        if (groups.Count == 0)
            page.WriteLine("  none");
        foreach (var group in groups.OrderBy(group => group.Key, StringComparer.Ordinal))
            page.WriteLine($"  {Padded(group.Count())} {group.Key}{Named([.. group])}");
    }

    private static string Some(Pair[] differ) => Named([.. differ.Select(pair => pair.Visit)]);

    private static string Named(string[] names) =>
        names.Length == 0
            ? ""
            : $": {string.Join(", ", names.Take(MostNamed))}{(names.Length > MostNamed ? ", ..." : "")}";

    private static string[] Names(string folder) =>
        [
            .. Directory
                .GetFiles(folder, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(folder, file))
                .Where(name => Path.GetDirectoryName(name) is { Length: > 0 })
                .Order(StringComparer.Ordinal),
        ];

    private static string Read(string folder, string name) => File.ReadAllText(Path.Combine(folder, name));

    private sealed record Pair(string Name, string Old, string New)
    {
        public bool IsSame => Old == New;

        public string Command => Path.GetFileName(Name);

        public string Visit => Path.GetDirectoryName(Name)!;

        public string OldEnd => End(Old);

        public string NewEnd => End(New);

        // A visit that was written back has no exit code.
        private static string End(string said) =>
            said.StartsWith("exit ", StringComparison.Ordinal) ? said.Split('\n', 2)[0] : "a visit";
    }

    private static string Padded(int count) => count.ToString(CultureInfo.InvariantCulture).PadLeft(5);
}
