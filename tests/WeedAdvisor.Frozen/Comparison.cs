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
    /// <param name="page">Where to print.</param>
    /// <returns>0 when all are equal, else 1.</returns>
    public static int Print(string before, string after, string list, TextWriter page)
    {
        string[] old = Names(before), now = Names(after);
        Pair[] pairs = Pairs(before, after);
        page.WriteLine($"{pairs.Length} outputs in both, {old.Length - pairs.Length} only before, {now.Length - pairs.Length} only after");
        foreach (var command in pairs.GroupBy(pair => Path.GetFileName(pair.Name)).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            Pair[] differ = [.. command.Where(pair => !pair.IsSame)];
            page.WriteLine($"{command.Key,-18} {command.Count() - differ.Length,5} equal {differ.Length,5} differ{Some(differ)}");
        }

        page.WriteLine("ended with another exit code:");
        Group(page, pairs.Where(pair => pair.Name.EndsWith(".txt", StringComparison.Ordinal) || pair.Name.EndsWith(".json", StringComparison.Ordinal))
            .Where(pair => pair.OldEnd != pair.NewEnd)
            .Select(pair => ($"{Path.GetFileName(pair.Name)}: {pair.OldEnd} before, {pair.NewEnd} now", Path.GetDirectoryName(pair.Name)!)));

        Cleared(page, pairs);
        page.WriteLine("rules that certainly barred an action before and don't stand against it now, renamed ones among them:");
        Group(page, Advice(pairs).SelectMany(pair => ActionsOf.LostBars(pair.Old, pair.New)
            .Select(one => (one.Rule, $"{Path.GetDirectoryName(pair.Name)} {one.Area} {one.Action}"))));

        string[] differing = [.. pairs.Where(pair => !pair.IsSame).Select(pair => pair.Name)];
        File.WriteAllLines(list, differing);
        page.WriteLine($"The {differing.Length} that differ are named in {list}");
        return differing.Length > 0 || old.Length != now.Length ? 1 : 0;
    }

    /// <summary>Prints which actions are clear now that were not before.</summary>
    /// <returns>0 when there is none, else 1.</returns>
    public static int PrintCleared(string before, string after, TextWriter page) =>
        Cleared(page, Pairs(before, after)) == 0 ? 0 : 1;

    private static int Cleared(TextWriter page, Pair[] pairs)
    {
        (string, string)[] found =
        [
            .. Advice(pairs).SelectMany(pair => ActionsOf.NewlyClear(pair.Old, pair.New)
                .Select(one => ($"{one.Action}: {one.Before} before, {one.Now} now", $"{Path.GetDirectoryName(pair.Name)} {one.Area}"))),
        ];
        page.WriteLine("clear now and not before:");
        Group(page, found);
        return found.Length;
    }

    private static IEnumerable<Pair> Advice(Pair[] pairs) =>
        pairs.Where(pair => !pair.IsSame && Path.GetFileName(pair.Name) == "advise.json");

    private static Pair[] Pairs(string before, string after) =>
        [.. Names(before).Intersect(Names(after)).Select(name => new Pair(name, Read(before, name), Read(after, name)))];

    private static void Group(TextWriter page, IEnumerable<(string What, string Where)> found)
    {
        var groups = found.GroupBy(one => one.What, one => one.Where).OrderBy(group => group.Key, StringComparer.Ordinal).ToList();
        if (groups.Count == 0)
            page.WriteLine("  none");
        foreach (var group in groups)
            page.WriteLine($"  {group.Count(),5} {group.Key} ({string.Join(", ", group.Take(MostNamed))}{(group.Count() > MostNamed ? ", ..." : "")})");
    }

    private static string Some(Pair[] differ) => differ.Length == 0
        ? ""
        : ": " + string.Join(", ", differ.Take(MostNamed).Select(pair => Path.GetDirectoryName(pair.Name)))
            + (differ.Length > MostNamed ? ", ..." : "");

    private static string[] Names(string folder) =>
    [
        .. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder, file))
            .Where(name => Path.GetDirectoryName(name) is { Length: > 0 })
            .Order(StringComparer.Ordinal),
    ];

    private static string Read(string folder, string name) => File.ReadAllText(Path.Combine(folder, name));

    private sealed record Pair(string Name, string Old, string New)
    {
        public bool IsSame => Old == New;

        public string OldEnd => Old.Split('\n', 2)[0];

        public string NewEnd => New.Split('\n', 2)[0];
    }
}
