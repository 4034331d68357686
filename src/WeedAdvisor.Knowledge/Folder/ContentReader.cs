using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Local;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.RuleReaders;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>What was read from one file: its records, of the type that its role says, and its problems.</summary>
internal sealed record FileContent(ImmutableArray<object> Records, IReadOnlyList<Problem> Problems);

/// <summary>Turns parsed files into records. Safe to share between threads.</summary>
internal sealed class ContentReader(Lexicon lexicon)
{
    /// <summary>The questions of the folder, without which neither rules nor visits can be read.</summary>
    public ImmutableArray<Question> Questions { get; private set; } = [];

    private Dictionary<string, ActiveIngredient> Ingredients { get; } = new(StringComparer.Ordinal);

    private TestableSet Site { get; set; } = TestableSet.OfSite([], withDerived: true);

    private ImmutableDictionary<string, Question> ById { get; set; } = ImmutableDictionary<string, Question>.Empty;

    /// <summary>Reads the questions and keeps them for the other files.</summary>
    public FileContent ReadQuestions(ParsedFile file)
    {
        var questions = new QuestionReader();
        FileContent content = Records(file, "a question", questions.Read);
        Questions = [.. content.Records.Cast<Question>()];
        ById = Questions
            .DistinctBy(question => question.Id)
            .ToImmutableDictionary(question => question.Id, StringComparer.Ordinal);
        Site = TestableSet.OfSite(Questions, withDerived: true);
        return content;
    }

    /// <summary>Reads actives and keeps them for treatments. Not while other files are read.</summary>
    public FileContent ReadActives(ParsedFile file)
    {
        FileContent content = Records(file, "an active", ActiveReader.Read);
        foreach (ActiveIngredient active in content.Records.Cast<ActiveIngredient>())
            Ingredients.TryAdd(active.Id, active);
        return content;
    }

    /// <summary>Reads any other file.</summary>
    public FileContent Read(FileRole role, ParsedFile file) =>
        role switch
        {
            FileRole.Version => Whole(file, Version),
            FileRole.Vocabulary => Whole(file, VocabularyReader.Read),
            FileRole.Sources => Whole(file, SourceReader.Read),
            FileRole.Findings => Records(file, "a finding", SmallReaders.Finding),
            FileRole.Regions => Records(file, "a region", SmallReaders.Region),
            FileRole.Scales => Records(file, "a step of the scale", SmallReaders.ScaleStep),
            FileRole.Prices => Records(file, "a price", SmallReaders.Price),
            FileRole.Usual => Records(file, "a usual value", UsualNumberReader.Read),
            FileRole.Limits => Records(file, "a limit", SmallReaders.ActiveLimit),
            FileRole.Resistance => Records(file, "a resistance on record", SmallReaders.KnownResistance),
            FileRole.Coverage => Records(file, "an exception", SmallReaders.NotShown),
            FileRole.Weeding => Records(file, "a parameter", WeedingParameterReader.Read),
            FileRole.WorkingTimes => Records(file, "a working time", WorkingTimeReader.Read),
            FileRole.Crops => Records(file, "a crop", CropReader.Read),
            FileRole.Weeds => Records(file, "a weed", WeedReader.Read),
            FileRole.Practices => Records(file, "a practice", PracticeReader.Read),
            FileRole.Withdrawn => Records(file, "a withdrawn active", ActiveReader.Withdrawn),
            FileRole.Treatments => Records(file, "a treatment", new TreatmentReader(Ingredients).Read),
            FileRole.Ratings => Whole(file, RatingTableReader.Read),
            FileRole.Judgements => Records(file, "a judgement", new JudgementReader(Topic(file.File), Site).Read),
            FileRole.Law => Whole(file, new LawReader(LawReader.CountryOf(file.File), Site).Read),
            FileRole.Visits => Whole(file, Visit),
            FileRole.Lessons => Records(file, "a lesson", LessonReader.Read),
            FileRole.Lifts => Records(file, "a bar that is lifted", LiftedBarReader.Read),
            _ => throw new ArgumentOutOfRangeException(nameof(role), role, "questions and actives are read first"),
        };

    private FileContent Records<T>(ParsedFile file, string what, Func<MappingReader, T?> read)
        where T : class => Whole(file, (root, context) => MappingReader.Each(root, context, what, read).OfType<T>());

    private FileContent Whole(ParsedFile file, Func<Node, ReadContext, IEnumerable<object>> read)
    {
        if (file.Root is null)
            return new FileContent([], []);
        var context = new ReadContext(file.File, lexicon);
        ImmutableArray<object> records = [.. read(file.Root, context)];
        return new FileContent(records, context.Problems);
    }

    private static IEnumerable<object> Version(Node root, ReadContext context)
    {
        if (MappingReader.Of(root, context, "the version") is not { } map)
            yield break;
        string version = map.Text("version");
        if (map.Has("version") && version.Length > 0 && !System.Version.TryParse(version, out _))
            context.Report(map.Optional("version")!, $"'{version}'", "a version such as 0.1.0");
        map.Finish();
        yield return version;
    }

    private IEnumerable<object> Visit(Node root, ReadContext context)
    {
        if (MappingReader.Of(root, context, "a visit") is not { } map)
            yield break;
        Visit visit = new VisitReader(ById).Read(map);
        var worked = new WorkedVisit(context.File, visit, ExpectationReader.ReadAll(map, visit));
        map.Finish();
        yield return worked;
    }

    private static string Topic(string file) => System.IO.Path.GetFileNameWithoutExtension(file);
}
