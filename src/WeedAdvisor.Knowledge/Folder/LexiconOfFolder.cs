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
    private readonly LexiconBuilder _words = new();

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
        scan._words.DeclareTargets(
            scan.IsWhole(FileRole.Weeds)
                ? scan.Parts(FileRole.Weeds, "rated-as").OfType<ScalarNode>().Select(id => id.Text)
                : null
        );
        return scan._words.Build(isOfFiles: true);
    }

    private void Lists()
    {
        if (!IsWhole(FileRole.Vocabulary))
            _words.Declare(LexiconBuilder.Lists, null);
        foreach (Entry list in Entries(FileRole.Vocabulary))
            _words.Declare(
                LexiconBuilder.Lists + list.Key.Text,
                (list.Value as MappingNode)?.Entries.Select(word => word.Key.Text)
            );
    }

    // A question without answers, or whose answers are no list, is told where it is read.
    private void Answers()
    {
        if (!IsWhole(FileRole.Questions))
            _words.Declare(LexiconBuilder.AnswersTo, null);
        foreach (MappingNode question in Records(FileRole.Questions))
        {
            if (question.Find("id") is ScalarNode id)
                _words.Declare(
                    LexiconBuilder.AnswersTo + id.Text,
                    question.Find("answers") is SequenceNode answers ? Texts(answers.Items, "id") : null
                );
        }
    }

    private void Catalogues()
    {
        Ids("weeds", FileRole.Weeds);
        Ids("crops", FileRole.Crops);
        Ids("practices", FileRole.Practices);
        Ids("treatments", FileRole.Treatments);
        _words.Declare(
            "past-treatments",
            IsWhole(FileRole.Treatments)
                ?
                [
                    .. Texts(Records(FileRole.Treatments), "id"),
                    .. Texts(Records(FileRole.Withdrawn), "active"),
                    .. Records(FileRole.Withdrawn).SelectMany(row => Items(row, "formerly")),
                ]
                : null
        );
        Ids("actions", FileRole.Practices, FileRole.Treatments);
        Ids("regions", FileRole.Regions);
        Ids("findings", FileRole.Findings);
        Ids("grades", FileRole.Scales);
        Ids("questions", FileRole.Questions);
        Ids("prices", FileRole.Prices);
        _words.Declare("judgements", Judgements());
        _words.Declare(
            "sources",
            IsWhole(FileRole.Sources)
                ?
                [
                    .. Entries(FileRole.Sources).Select(entry => entry.Key.Text),
                    .. SourceReader.Always.Select(source => source.Key),
                ]
                : null
        );
    }

    // What a country's file says not to hold is a rule too, whose id is made of country and topic.
    private IEnumerable<string>? Judgements()
    {
        if (!IsWhole(FileRole.Judgements) || !IsWhole(FileRole.Law))
            return null;
        IEnumerable<string> notHeld =
            from file in Files(FileRole.Law)
            from rule in Records(file)
            where rule.Find(LawReader.NotHeld) is not null
            from topic in Texts([rule], LawReader.Topic)
            select LawReader.IdOfNotHeld(LawReader.CountryOf(file.Parsed.File), topic);
        return Texts(Files(FileRole.Judgements).Concat(Files(FileRole.Law)).SelectMany(Records), "id").Concat(notHeld);
    }

    private void Actives()
    {
        bool isWhole = IsWhole(FileRole.Actives);
        Named("active-ids", "id", isWhole);
        Named("actives", "name", isWhole);
        _words.Declare("groups", isWhole ? Texts(Records(FileRole.Actives), "group") : null);
    }

    // Whoever writes another of its names is told the one that is meant.
    private void Named(string notation, string key, bool isWhole) =>
        _words.Declare(
            notation,
            isWhole ? Texts(Records(FileRole.Actives), key) : null,
            Records(FileRole.Actives)
                .Where(active => active.Find(key) is ScalarNode)
                .DistinctBy(active => ((ScalarNode)active.Find(key)!).Text)
                .ToDictionary(
                    active => ((ScalarNode)active.Find(key)!).Text,
                    IEnumerable<string> (active) =>
                        [.. Texts([active], "id"), .. Texts([active], "name"), .. Items(active, "also-called")]
                )
        );

    private void RateUnits() =>
        _words.Declare(
            "rate-units",
            IsWhole(FileRole.Treatments) ? Texts(Parts(FileRole.Treatments, "rates"), "unit") : null
        );

    private IEnumerable<Node> Parts(FileRole role, string key) =>
        Records(role).SelectMany(record => (record.Find(key) as SequenceNode)?.Items ?? []);

    private void Ids(string notation, params FileRole[] roles) =>
        _words.Declare(notation, Array.TrueForAll(roles, IsWhole) ? Texts(roles.SelectMany(Records), "id") : null);

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
