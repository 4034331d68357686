using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.RuleReaders;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>
/// Collects, from the parsed files of a folder, every word that is declared anywhere in it. With that each file can be
/// read, and each of its words checked, by itself and at the very place where it stands.
/// </summary>
internal sealed class LexiconOfFolder
{
    private readonly IReadOnlyCollection<PlacedFile> _files;
    private readonly Dictionary<string, ValidWords> _words = new(StringComparer.Ordinal);

    private LexiconOfFolder(IReadOnlyCollection<PlacedFile> files) => _files = files;

    /// <summary>
    /// The lexicon of the files. What is declared in a file that could not be parsed is not known, so nothing is held
    /// against it.
    /// </summary>
    public static Lexicon Of(IReadOnlyCollection<PlacedFile> files)
    {
        var scan = new LexiconOfFolder(files);
        scan.Lists();
        scan.Answers();
        scan.Catalogues();
        scan.Actives();
        scan.RateUnits();
        scan.Targets();
        return new Lexicon(scan._words);
    }

    private void Lists()
    {
        foreach (Entry list in Entries(FileRole.Vocabulary))
        {
            if (list.Value is MappingNode words)
                _words.TryAdd(
                    $"list:{list.Key.Text}",
                    new ValidWords($"a word of list '{list.Key.Text}'", words.Entries.Select(word => word.Key.Text))
                );
        }
    }

    private void Answers()
    {
        foreach (MappingNode question in Records(FileRole.Questions))
        {
            if (question.Find("id") is ScalarNode id && question.Find("answers") is SequenceNode answers)
                _words.TryAdd(
                    $"answers:{id.Text}",
                    new ValidWords($"an answer to '{id.Text}'", Texts(answers.Items, "id"))
                );
        }
    }

    private void Catalogues()
    {
        Ids("weeds", "the id of a weed", FileRole.Weeds);
        Ids("crops", "the id of a crop", FileRole.Crops);
        Ids("practices", "the id of a practice", FileRole.Practices);
        Ids("treatments", "the id of a treatment", FileRole.Treatments);
        if (IsWhole(FileRole.Treatments))
            Declare(
                "past-treatments",
                "the id of a treatment",
                [
                    .. Texts(Records(FileRole.Treatments), "id"),
                    .. Texts(Records(FileRole.Withdrawn), "active"),
                    .. Records(FileRole.Withdrawn).SelectMany(row => Items(row, "formerly")),
                ]
            );
        Ids("actions", "the id of a practice or treatment", FileRole.Practices, FileRole.Treatments);
        Ids("regions", "the id of a region", FileRole.Regions);
        Ids("findings", "the id of a finding", FileRole.Findings);
        Ids("grades", "a grade", FileRole.Scales);
        Ids("questions", "the id of a question", FileRole.Questions);
        Judgements();
        Ids("prices", "the id of a price", FileRole.Prices);
        if (IsWhole(FileRole.Sources))
            Declare(
                "sources",
                "a key of sources.yaml",
                [
                    .. Entries(FileRole.Sources).Select(entry => entry.Key.Text),
                    .. SourceReader.Always.Select(source => source.Key),
                ]
            );
    }

    // What a country's file says not to hold is a rule too, whose id is made of country and topic.
    private void Judgements()
    {
        if (!IsWhole(FileRole.Judgements) || !IsWhole(FileRole.Law))
            return;
        IEnumerable<string> notHeld =
            from file in Files(FileRole.Law)
            from rule in Records(file)
            where rule.Find(LawReader.NotHeld) is not null
            from topic in Texts([rule], LawReader.Topic)
            select LawReader.IdOfNotHeld(LawReader.CountryOf(file.Parsed.File), topic);
        IEnumerable<string> written = Texts(
            Files(FileRole.Judgements).Concat(Files(FileRole.Law)).SelectMany(Records),
            "id"
        );
        Declare("judgements", "the id of a judgement", [.. written, .. notHeld]);
    }

    private void Actives()
    {
        if (!IsWhole(FileRole.Actives))
            return;
        Named("active-ids", "the id of an active", "id");
        Named("actives", "the name of an active", "name");
        Declare("groups", "a site-of-action group of an active", Texts(Records(FileRole.Actives), "group"));
    }

    // Whoever writes another of its names is told the one that is meant.
    private void Named(string notation, string name, string key) =>
        _words[notation] = new ValidWords(name, Texts(Records(FileRole.Actives), key))
        {
            Names = Records(FileRole.Actives)
                .Where(active => active.Find(key) is ScalarNode)
                .DistinctBy(active => ((ScalarNode)active.Find(key)!).Text)
                .ToDictionary(
                    active => ((ScalarNode)active.Find(key)!).Text,
                    IEnumerable<string> (active) =>
                        [.. Texts([active], "id"), .. Texts([active], "name"), .. Items(active, "also-called")]
                ),
        };

    private void RateUnits()
    {
        if (!IsWhole(FileRole.Treatments))
            return;
        IEnumerable<MappingNode> rates = Records(FileRole.Treatments)
            .SelectMany(treatment => (treatment.Find("rates") as SequenceNode)?.Items ?? [])
            .OfType<MappingNode>();
        Declare("rate-units", "a unit in which records give a rate", Texts(rates, "unit"));
    }

    // Published tables rate some weeds, and groups of weeds, that have no record of their own.
    private void Targets()
    {
        if (!IsWhole(FileRole.Weeds) || !IsWhole(FileRole.Vocabulary))
            return;
        string[] targets =
        [
            .. _words["weeds"].All,
            .. Records(FileRole.Weeds).SelectMany(weed => Items(weed, "rated-as")),
            .. _words.GetValueOrDefault("list:weed-kind")?.All ?? [],
            .. _words.GetValueOrDefault("list:rated-only")?.All ?? [],
        ];
        const string name = "a weed, a weed kind, or an id under which weeds are rated";
        Declare("targets", name, targets);
        Declare("rated", name, targets);
        Declare("targets-or-all", "a weed, a weed kind, or 'all'", [.. targets, "all"]);
    }

    private void Ids(string notation, string name, params FileRole[] roles)
    {
        if (Array.TrueForAll(roles, IsWhole))
            Declare(notation, name, Texts(_files.Where(file => roles.Contains(file.Role)).SelectMany(Records), "id"));
    }

    private void Declare(string notation, string name, IEnumerable<string> words) =>
        _words[notation] = new ValidWords(name, words);

    private bool IsWhole(FileRole role) =>
        (FileRoles.IsFolder(role) || Files(role).Any()) && Files(role).All(file => file.Parsed.Root is not null);

    private IEnumerable<PlacedFile> Files(FileRole role) => _files.Where(file => file.Role == role);

    private IEnumerable<MappingNode> Records(FileRole role) => Files(role).SelectMany(Records);

    private static IEnumerable<MappingNode> Records(PlacedFile file) =>
        (file.Parsed.Root as SequenceNode)?.Items.OfType<MappingNode>() ?? [];

    private IEnumerable<Entry> Entries(FileRole role) =>
        Files(role).SelectMany(file => (file.Parsed.Root as MappingNode)?.Entries ?? []);

    private static IEnumerable<string> Items(MappingNode record, string key) =>
        ((record.Find(key) as SequenceNode)?.Items ?? []).OfType<ScalarNode>().Select(item => item.Text);

    private static IEnumerable<string> Texts(IEnumerable<Node> records, string key) =>
        records
            .OfType<MappingNode>()
            .Select(record => record.Find(key))
            .OfType<ScalarNode>()
            .Select(value => value.Text);
}
