using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Local;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.RuleReaders;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>
/// Puts the records of all files together and checks what only shows in the whole: ids, circles, missing lists.
/// </summary>
internal sealed class WholeFolder
{
    private readonly ImmutableArray<object> _records;
    private readonly List<Problem> _problems = [];

    /// <summary>All records, in ordinal order of file.</summary>
    public WholeFolder(IEnumerable<object> records) => _records = [.. records];

    /// <summary>The problems found; complete once <see cref="Build"/> has run.</summary>
    public IReadOnlyList<Problem> Problems => _problems;

    /// <summary>The knowledge; worthless when there are problems.</summary>
    public KnowledgeBase Build(string hash, string? local = null)
    {
        WordList[] lists = [.. All<PlacedList>().Select(placed => placed.List)];
        ReportRepeats(All<PlacedList>().Select(placed => new Declaration(placed.List.Id, placed.Where)));
        _problems.AddRange(RequiredLists.MissingFrom(lists));
        ReportRepeats(All<Question>());
        _problems.AddRange(QuestionKinds.Wrong(All<Question>()));
        _problems.AddRange(ActiveNames.Shared(All<ActiveIngredient>()));
        CatalogueAction[] actions = [.. All<CatalogueAction>()];
        ReportRepeats(actions);
        RatingTable[] ratings = [.. All<RatingTable>()];
        _problems.AddRange(RatingsOfTreatments.Repeated(ratings));
        _problems.AddRange(UsualNumberReader.MissingFrom(FileRoles.Usual, All<UsualNumber>()));
        _problems.AddRange(WeedingParameterReader.MissingFrom(All<WeedingParameter>()));
        _problems.AddRange(WorkingTimeReader.MissingFrom(All<WorkingTime>()));
        _problems.AddRange(ProductPrices.Wrong(All<Price>(), [.. All<ActiveIngredient>()]));
        Judgement[] judgements =
        [
            .. All<Judgement>()
                .Concat(LawTopics.NotHeld(All<LawNotHeld>(), lists))
                .OrderBy(judgement => judgement.Id, StringComparer.Ordinal),
        ];
        _problems.AddRange(LawTopics.Unanswered(All<LawFileRead>(), judgements, lists));
        ReportRepeats(judgements.Select(judgement => new Declaration(judgement.Id, judgement.Where)));
        _problems.AddRange(FindingCycles.Of(judgements));
        ReportRepeats(All<Lesson>().Select(lesson => new Declaration(lesson.Id, lesson.Where)));
        _problems.AddRange(LessonReader.WithoutVisit(All<Lesson>(), All<WorkedVisit>()));
        PlacedLift[] lifts = [.. All<PlacedLift>()];
        _problems.AddRange(LiftedBarReader.Wrong(lifts, [.. judgements]));
        ImmutableArray<LiftedBar> lifted = [.. lifts.Select(lift => lift.Bar)];
        var knowledge = new KnowledgeBase
        {
            Stamp = new KnowledgeStamp(All<string>().FirstOrDefault("0.0.0"), hash) { Local = local, Lifted = lifted },
            Vocabulary = ById(lists, list => list.Id),
            Questions = All<Question>(),
            Weeds = Catalogue<Weed>(),
            Crops = CropAncestry.Of(Catalogue<Crop>(), _problems),
            Practices = ById(actions.OfType<Practice>(), action => action.Id),
            Ingredients = Catalogue<ActiveIngredient>(),
            Withdrawn = Catalogue<WithdrawnActive>(),
            Treatments = RatingsOfTreatments.Put(
                ById(actions.OfType<Treatment>(), action => action.Id),
                ratings,
                lists
            ),
            RatingTables = [.. ratings],
            Regions = Catalogue<Region>(),
            Findings = Catalogue<FindingText>(),
            Scale = Catalogue<ScaleStep>(),
            Prices = Catalogue<Price>(),
            Sources = SourceFile.ByKey(All<Source>()),
            Judgements = [.. judgements.Where(rule => lifted.All(bar => bar.Judgement != rule.Id))],
            WorkedVisits = All<WorkedVisit>(),
            Lessons = [.. All<Lesson>().OrderBy(lesson => lesson.Id, StringComparer.Ordinal)],
            NotShown = All<NotShown>(),
            ActiveLimits = Catalogue<ActiveLimit>(),
            Resistance = Catalogue<KnownResistance>(),
            Usual = new UsualNumbers(Catalogue<UsualNumber>()),
            Weeding = Catalogue<WeedingParameter>(),
            WorkingTimes = Catalogue<WorkingTime>(),
        };
        return WithWithdrawn(knowledge);
    }

    // An unknown active has been reported by the reader of the list.
    private static KnowledgeBase WithWithdrawn(KnowledgeBase knowledge)
    {
        if (!knowledge.Withdrawn.Values.All(row => knowledge.Ingredients.ContainsKey(row.Active)))
            return knowledge;
        return knowledge with
        {
            Treatments = knowledge.Treatments.SetItems(
                knowledge.Treatments.Values.Select(treatment =>
                    KeyValuePair.Create(
                        treatment.Id,
                        treatment with
                        {
                            WithdrawnIn = knowledge.WithdrawnWhere(
                                treatment.Actives.Select(active => active.Name),
                                day: null
                            ),
                        }
                    )
                )
            ),
        };
    }

    private ImmutableSortedDictionary<string, T> Catalogue<T>()
        where T : Record
    {
        ImmutableArray<T> records = All<T>();
        ReportRepeats(records);
        return ById(records, record => record.Id);
    }

    private void ReportRepeats(IEnumerable<Record> records) =>
        ReportRepeats(records.Select(record => new Declaration(record.Id, record.Where)));

    // The id that comes first in the order of files stands; the others are reported.
    private void ReportRepeats(IEnumerable<Declaration> declarations)
    {
        var first = new Dictionary<string, Declaration>(StringComparer.Ordinal);
        foreach (Declaration declaration in declarations)
        {
            // A missing id has been reported as such.
            string id = declaration.Id;
            if (id.Length > 0 && !first.TryAdd(id, declaration))
                _problems.Add(
                    new Problem(
                        declaration.Where,
                        $"the id '{id}' a second time",
                        $"another id: {first[id].Where} has this one"
                    )
                );
        }
    }

    private ImmutableArray<T> All<T>() => [.. _records.OfType<T>()];

    private static ImmutableSortedDictionary<string, T> ById<T>(IEnumerable<T> records, Func<T, string> id)
        where T : class
    {
        var byId = ImmutableSortedDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        foreach (T record in records)
            byId.TryAdd(id(record), record);
        return byId.ToImmutable();
    }

    private sealed record Declaration(string Id, Place Where);
}
