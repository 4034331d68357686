using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Reports.Text;

/// <summary>What the ids of an advice are called. An id that the knowledge does not hold stands for itself.</summary>
/// <param name="knowledge">Where the names come from.</param>
public sealed class Names(KnowledgeBase knowledge)
{
    private readonly PriceBook _prices = PriceBook.Of(knowledge);

    /// <summary>An action's name.</summary>
    public string Action(string id) => knowledge.ActionOf(id)?.Name ?? id;

    /// <summary>
    /// What an action is called within a sentence, once its full name was said: the actives of a chemical, with its
    /// form where there is another form, its full name where there is another use of the same; of a practice its short
    /// name where it has one.
    /// </summary>
    public string InBrief(string id) =>
        knowledge.ActionOf(id) switch
        {
            Treatment treatment => InBrief(treatment),
            Practice { Brief: { } brief } => brief,
            _ => Action(id),
        };

    // What is said of one use is never said of another: a spray may be registered where the granules are not.
    private string InBrief(Treatment treatment)
    {
        string actives = ActivesOf(treatment);
        Treatment[] same =
        [
            .. knowledge.Treatments.Values.Where(other => other.Id != treatment.Id && ActivesOf(other) == actives),
        ];
        return same.Length == 0 ? actives
            : same.All(other => other.Form != treatment.Form) ? $"{actives} as a {treatment.Form}"
            : treatment.Name;
    }

    private static string ActivesOf(Treatment treatment) =>
        string.Join(" with ", treatment.Actives.Select(active => active.Name));

    /// <summary>A text of a rule about an action as it is said once the action's full name was said.</summary>
    /// <param name="action">The action.</param>
    /// <param name="said">What is said of it.</param>
    public string Spoken(string action, Said said) => Figures.Sentence(said.Of(InBrief(action)));

    /// <summary>Whether the action is a chemical use.</summary>
    public bool IsTreatment(string id) => knowledge.Treatments.ContainsKey(id);

    /// <summary>The treatment with this id, or null.</summary>
    public Treatment? Treatment(string id) => knowledge.Treatments.GetValueOrDefault(id);

    /// <summary>The action with this id, or null.</summary>
    public CatalogueAction? Record(string action) => knowledge.ActionOf(action);

    /// <summary>The effect, 0 to 1, from which on a chemical is named as a choice.</summary>
    public double LeastGain => (double)knowledge.Usual[UsualIds.LeastGain] / 100;

    /// <summary>What a name in the store stands for.</summary>
    internal ChemicalMeant Chemical(string word) => knowledge.ChemicalOf(word);

    /// <summary>Since when a withdrawn active may not be used there, and what becomes of the bag.</summary>
    internal string BagText(ActiveIngredient active, string? country) => knowledge.BagText(active, country);

    /// <summary>
    /// The grade of a treatment on a weed by its published ratings, after what came through it here; null when nothing
    /// is published of what still counts.
    /// </summary>
    internal string? Grade(Treatment treatment, string weed, VisitArea area) =>
        knowledge.Weeds.TryGetValue(weed, out Weed? record)
            ? TreatmentControl.GradeOf(treatment, record, knowledge, EscapesOfArea.Of(area.Past ?? [], knowledge))
            : null;

    /// <summary>Where a practice does not help, as its record says it; nothing of a treatment.</summary>
    public ImmutableArray<string> NotWhere(string action) =>
        Record(action) is Practice practice ? practice.NotWhere : [];

    /// <summary>What is known of a weed's control, as its record says it.</summary>
    public ImmutableArray<string> NotesOfWeed(string id) => knowledge.Weeds.GetValueOrDefault(id)?.Control ?? [];

    /// <summary>The crop with this id, or null.</summary>
    public Crop? Crop(string id) => knowledge.Crops.GetValueOrDefault(id);

    /// <summary><c>practice</c> or <c>treatment</c>.</summary>
    public string Kind(string action) => IsTreatment(action) ? "treatment" : "practice";

    /// <summary>How well a chemical is rated on a weed; null where no rating is published.</summary>
    public string? GradeOn(Treatment treatment, string weed) =>
        knowledge.Weeds.GetValueOrDefault(weed) is { } record
            ? TreatmentControl.GradeOf(treatment, record, knowledge)
            : null;

    /// <summary>What one use of an action costs in an area; null when that cannot be told.</summary>
    public AdvisedCost? Cost(string action, AreaReading area) => AdvisedCost.Of(Record(action), area, _prices);

    /// <summary>What costs in an area are reckoned for.</summary>
    public CostSite CostSite(AreaReading area) => Planning.Costs.CostSite.Of(area, knowledge.Usual);

    /// <summary>
    /// How long nobody goes in after a chemical; where its record does not say it, what counts until its label is read.
    /// </summary>
    public string RestrictedEntry(Treatment treatment) =>
        treatment.ReiHours is { } hours
            ? $"{Figures.Range(hours)} h"
            : $"see the label; until then {Figures.Plain(knowledge.Usual[UsualIds.EntryHours])} h count";

    /// <summary>The same in a few words.</summary>
    public string EntryInBrief(Treatment treatment) =>
        treatment.ReiHours is { } hours
            ? $"{Figures.Range(hours)} h"
            : $"{Figures.Plain(knowledge.Usual[UsualIds.EntryHours])} h (or as its label says)";

    /// <summary>A weed's name.</summary>
    public string Weed(string id) => knowledge.Weeds.GetValueOrDefault(id)?.Name ?? id;

    /// <summary>The kind of a weed, word of list <c>weed-kind</c>; null where the knowledge does not hold it.</summary>
    internal string? KindOfWeed(string id) => knowledge.Weeds.GetValueOrDefault(id)?.Kind;

    /// <summary>How far a weed is, in a word or two that fit how it lives.</summary>
    public string StageInBrief(string weed, string stage)
    {
        bool isOfSeed = knowledge.Weeds.GetValueOrDefault(weed)?.Kind is not ("bryophyte" or "fern" or "alga");
        string list = isOfSeed ? "stage-of-seed-plants" : "stage-of-films-and-mats";
        return Word(knowledge.Vocabulary.ContainsKey(list) ? list : "stage", stage);
    }

    /// <summary>A word's plain text.</summary>
    public string Word(string list, string word) => knowledge.Vocabulary.GetValueOrDefault(list)?.TextOf(word) ?? word;

    /// <summary>The text of an answer to choose; its id where the knowledge has no such answer.</summary>
    public string Answer(string question, string answer) =>
        knowledge.QuestionOf(question)?.Choices.FirstOrDefault(choice => choice.Id == answer)?.Text ?? answer;

    /// <summary>What has to be known, in words.</summary>
    public string Need(Need need)
    {
        if (need.Kind == NeedKind.Question)
            return $"{knowledge.QuestionOf(need.Id)?.Ask ?? need.Id} ({need.Id})";
        (string record, string field) = RecordField(need);
        return $"Only the label can tell: {field} of {Action(record)}";
    }

    /// <summary>
    /// What has to be known, as it is asked of the grower: of the earlier uses and a short question about the same the
    /// short one.
    /// </summary>
    internal IEnumerable<string> QuestionsOf(ImmutableArray<Need> needs)
    {
        Question?[] asked =
        [
            .. needs.Select(need => need.Kind == NeedKind.Question ? knowledge.QuestionOf(need.Id) : null),
        ];
        return needs
            .Where(
                (_, at) =>
                    asked[at] is not { Kind: QuestionKind.Past } past
                    || !asked.Any(other => other is { Kind: not QuestionKind.Past } && other.Group == past.Group)
            )
            .Select(QuestionOf);
    }

    /// <summary>What has to be known, as it is asked of the grower.</summary>
    internal string QuestionOf(Need need) =>
        need.Kind == NeedKind.Question ? knowledge.QuestionOf(need.Id)?.Ask ?? need.Id : Need(need);

    /// <summary>
    /// What has to be known in a word or two: the question's id, or the field that stands on the label.
    /// </summary>
    public string NeedInShort(Need need) => NeedOfAny(need).Short;

    /// <summary>What has to be known in a few words of the grower's; the id where the question has none.</summary>
    public string NeedInWords(Need need) =>
        need.Kind == NeedKind.Question
            ? knowledge.QuestionOf(need.Id)?.InBrief ?? need.Id
            : $"what the label says of {RecordField(need).Field}";

    /// <summary>What has to be known, in words that do not name the record.</summary>
    internal NeedWords NeedOfAny(Need need) =>
        need.Kind == NeedKind.Question
            ? new NeedWords(need.Id, $"{need.Id}: {knowledge.QuestionOf(need.Id)?.Ask ?? need.Id}")
            : new NeedWords(
                $"{RecordField(need).Field} on the label",
                $"{RecordField(need).Field}: only the label can tell"
            );

    /// <summary>A field's name in words.</summary>
    public static string Field(string name) => name.Replace('-', ' ');

    /// <summary>How many practices and chemicals there are among the actions.</summary>
    public string CountActions(IReadOnlyCollection<string> actions)
    {
        int chemicals = actions.Count(IsTreatment);
        int practices = actions.Count - chemicals;
        string[] parts =
        [
            .. chemicals > 0 ? [Figures.Count(chemicals, "chemical", "chemicals")] : (string[])[],
            .. practices > 0 ? [Figures.Count(practices, "practice", "practices")] : (string[])[],
        ];
        return string.Join(" and ", parts);
    }

    /// <summary>
    /// A text without the name of its action, so that one rule about many actions reads as one sentence.
    /// </summary>
    /// <param name="action">The action.</param>
    /// <param name="said">What is said of it.</param>
    public string OfAny(string action, Said said) =>
        Figures.Sentence(said.Of(IsTreatment(action) ? "this chemical" : "this practice"));

    /// <summary>A text as it stands below the name of its action.</summary>
    public static string UnderItsName(Said said) => Figures.Sentence(said.UnderItsName);

    /// <summary>
    /// When an action that is clear can and must be done in an area, by the weeds on account of which it is advised;
    /// null when the knowledge does not hold it.
    /// </summary>
    public ActionDates? Dates(ClearAction action, AreaReading area, DateOnly day) =>
        Dates(action.Action, Only(area, action.ForWeeds), day);

    /// <summary>The same by all weeds of the area.</summary>
    public ActionDates? Dates(string action, AreaReading area, DateOnly day) =>
        Record(action) is { } record ? ActionDates.Of(record, area, day, knowledge) : null;

    // What seeds beside the weeds that an action is for does not press it.
    private static AreaReading Only(AreaReading area, ImmutableArray<string> weeds) =>
        weeds.IsEmpty || area.Area.Weeds is not { } seen
            ? area
            : area with
            {
                Area = area.Area with { Weeds = [.. seen.Where(one => weeds.Contains(one.Weed))] },
            };

    /// <summary>The names of several actions, in ordinal order.</summary>
    public ImmutableArray<string> ActionsInOrder(IEnumerable<string> ids) =>
        [.. ids.Select(Action).Order(StringComparer.Ordinal)];

    private static (string Record, string Field) RecordField(Need need)
    {
        int dot = need.Id.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? (need.Id, "a field left open") : (need.Id[..dot], Field(need.Id[(dot + 1)..]));
    }
}

/// <summary>Something that has to be known.</summary>
/// <param name="Short">In a word or two, to refer to it.</param>
/// <param name="InFull">Written out.</param>
internal readonly record struct NeedWords(string Short, string InFull);
