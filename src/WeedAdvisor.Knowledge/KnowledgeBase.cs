using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Local;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge;

/// <summary>
/// Everything the trade knows, read and checked: every id that a record or a rule names exists, every word is in its
/// list. Catalogues are in ordinal order of id. Immutable and safe to share between threads.
/// </summary>
public sealed record KnowledgeBase
{
    /// <summary>Version and content hash.</summary>
    public required KnowledgeStamp Stamp { get; init; }

    /// <summary>Lists of words, by id.</summary>
    public required ImmutableSortedDictionary<string, WordList> Vocabulary { get; init; }

    /// <summary>Questions, in the order of asking.</summary>
    public required ImmutableArray<Question> Questions { get; init; }

    /// <summary>Weeds, by id.</summary>
    public required ImmutableSortedDictionary<string, Weed> Weeds { get; init; }

    /// <summary>Crops, by id.</summary>
    public required ImmutableSortedDictionary<string, Crop> Crops { get; init; }

    /// <summary>Practices, by id.</summary>
    public required ImmutableSortedDictionary<string, Practice> Practices { get; init; }

    /// <summary>What is true of each active whatever the product, by id.</summary>
    public ImmutableSortedDictionary<string, ActiveIngredient> Ingredients { get; init; } =
        ImmutableSortedDictionary.Create<string, ActiveIngredient>(StringComparer.Ordinal);

    /// <summary>Actives that may not be used any more in some countries, by id.</summary>
    public ImmutableSortedDictionary<string, WithdrawnActive> Withdrawn { get; init; } =
        ImmutableSortedDictionary.Create<string, WithdrawnActive>(StringComparer.Ordinal);

    /// <summary>Treatments, by id. No practice has the id of a treatment.</summary>
    public required ImmutableSortedDictionary<string, Treatment> Treatments { get; init; }

    /// <summary>Regions, by id.</summary>
    public required ImmutableSortedDictionary<string, Region> Regions { get; init; }

    /// <summary>Findings, by id.</summary>
    public required ImmutableSortedDictionary<string, FindingText> Findings { get; init; }

    /// <summary>Steps of the rating scale, by id.</summary>
    public required ImmutableSortedDictionary<string, ScaleStep> Scale { get; init; }

    /// <summary>Default prices, by id.</summary>
    public required ImmutableSortedDictionary<string, Price> Prices { get; init; }

    /// <summary>Sources, by key; those of the list only where it was read (<see cref="KnowledgeScope"/>).</summary>
    public required ImmutableSortedDictionary<string, Source> Sources { get; init; }

    /// <summary>Judgements, in ordinal order of id. Findings depend on each other without a cycle.</summary>
    public required ImmutableArray<Judgement> Judgements { get; init; }

    /// <summary>Worked visits, in ordinal order of file; empty where they were not read.</summary>
    public required ImmutableArray<WorkedVisit> WorkedVisits { get; init; }

    /// <summary>Lessons, in ordinal order of id; empty where the worked visits were not read.</summary>
    public ImmutableArray<Lesson> Lessons { get; init; } = [];

    /// <summary>What the worked visits need not show, each with its reason; in the order of the file.</summary>
    public ImmutableArray<NotShown> NotShown { get; init; } = [];

    /// <summary>Tables of ratings, one a source; what they say stands with the treatments too.</summary>
    public ImmutableArray<RatingTable> RatingTables { get; init; } = [];

    /// <summary>Yearly limits of actives over all products that hold them, by id.</summary>
    public ImmutableSortedDictionary<string, ActiveLimit> ActiveLimits { get; init; } =
        ImmutableSortedDictionary.Create<string, ActiveLimit>(StringComparer.Ordinal);

    /// <summary>Resistance of weeds that is on record, by id.</summary>
    public ImmutableSortedDictionary<string, KnownResistance> Resistance { get; init; } =
        ImmutableSortedDictionary.Create<string, KnownResistance>(StringComparer.Ordinal);

    /// <summary>
    /// Parameters of the hand-weeding model, by id: all of <see cref="WeedingParameterLimits"/>, or none when the
    /// folder has no <c>weeding.yaml</c>.
    /// </summary>
    public ImmutableSortedDictionary<string, WeedingParameter> Weeding { get; init; } =
        ImmutableSortedDictionary.Create<string, WeedingParameter>(StringComparer.Ordinal);

    /// <summary>
    /// How long the work takes, by id: all of <see cref="WorkingTimeIds"/>, or none when the folder has no
    /// <c>working-times.yaml</c>.
    /// </summary>
    public ImmutableSortedDictionary<string, WorkingTime> WorkingTimes { get; init; } =
        ImmutableSortedDictionary.Create<string, WorkingTime>(StringComparer.Ordinal);

    /// <summary>What is taken for usual where neither the visit nor a record says it.</summary>
    public required UsualNumbers Usual { get; init; }

    /// <summary>The practice or treatment with this id, or null.</summary>
    public CatalogueAction? ActionOf(string id) =>
        Practices.TryGetValue(id, out Practice? practice) ? practice : Treatments.GetValueOrDefault(id);

    /// <summary>The record of an earlier application; null when its product is not in the catalogue.</summary>
    public Treatment? RecordOf(PastApplication past) =>
        past.Treatment is { } id ? Treatments.GetValueOrDefault(id) : null;

    /// <summary>The question with this id, or null.</summary>
    public Question? QuestionOf(string id) => Questions.FirstOrDefault(question => question.Id == id);
}

/// <summary>Which knowledge an advice came from.</summary>
/// <param name="Version">Version of the shipped knowledge, such as <c>0.1.0</c>.</param>
/// <param name="Hash">
/// SHA-256 (FIPS 180-4) over path and content of every YAML file of the folder in ordinal order of path, as lower-case
/// hexadecimal.
/// </param>
public sealed record KnowledgeStamp(string Version, string Hash)
{
    private const int Shown = 12;

    /// <summary>Content hash of the grower's label book; null without one.</summary>
    public string? Labels { get; init; }

    /// <summary>Content hash of the local folder laid over the shipped one; null without one.</summary>
    public string? Local { get; init; }

    /// <summary>Bars that the local folder lifts, in the order of its file.</summary>
    public ImmutableArray<LiftedBar> Lifted { get; init; } = [];

    /// <summary>
    /// Version and the first twelve digits of the hash; those of the local folder and of the label book after it.
    /// </summary>
    public string Brief => $"{Version}+{Short(Hash)}{Part("local", Local)}{Part("labels", Labels)}";

    private static string Part(string name, string? hash) => hash is null ? "" : $"+{name}-{Short(hash)}";

    private static string Short(string hash) => hash[..Math.Min(Shown, hash.Length)];
}
