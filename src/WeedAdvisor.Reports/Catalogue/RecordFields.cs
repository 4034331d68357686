using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>The fields of the records that are not actions.</summary>
internal static class RecordFields
{
    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, Weed weed)
    {
        var names = new Names(knowledge);
        Fields fields = new Fields()
            .Add("scientific name", weed.IsUnnamed ? null : weed.Scientific)
            .Add("also called", weed.AlsoCalled)
            .Add("kind", names.Word("weed-kind", weed.Kind))
            .Add("life cycle", weed.IsUnnamed ? null : names.Word("life-cycle", weed.LifeCycle))
            .Add("how to know it", weed.Identify)
            .AddEach("taken for", weed.LookAlikes.Select(other => $"{names.Weed(other.Weed)}: {other.Tell}"))
            .AddEach("comes up in", weed.Emergence.Select(zone => $"{zone.Key}: months {Months(zone.Value)}"))
            .Add("germinates above", weed.BaseTemperatureC is { } warmth ? $"{Figures.Range(warmth)} C" : null)
            .Add("frost", weed.IsUnnamed ? null : FrostText(weed))
            .Add("grows above", weed.GrowthFloorC is { } floor ? $"{Figures.Plain(floor)} C" : null)
            .Add("first seed after", Weeks(weed.WeeksToFirstSeed))
            .Add("seeds a plant", Text(weed.SeedsPerPlant))
            .Add("seed lives", weed.SeedLifeYears is { } years ? $"{Figures.Range(years)} years" : null)
            .Add("spreads by", weed.SpreadsBy.Select(word => names.Word("spread", word)))
            .Add("spreads as far as", weed.SpreadDistanceM is { } metres ? $"{Figures.Plain(metres)} m" : null)
            .Add("thrives on", weed.FavouredBy.Select(word => names.Word("favour", word)))
            .Add("found in", weed.Places)
            .Add("in nearly every nursery of", weed.CommonestIn)
            .Add("common in nurseries of", weed.CommonIn)
            .Add("needs light to germinate", weed.IsUnnamed ? null : weed.NeedsLight)
            .Add(
                "comes back from below",
                weed.IsUnnamed ? null
                    : weed.Underground ? "yes"
                    : "no"
            )
            .Add("lives by", WaysOfLife.Of(weed, knowledge.Usual))
            .Add("marks", weed.Features.Select(word => names.Word("weed-feature", word)))
            .Add("rated as", weed.RatedAs)
            .AddEach("for control", weed.Control);
        return Ending(fields, weed, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, Crop crop)
    {
        var names = new Names(knowledge);
        Fields fields = new Fields()
            .Add("belongs to", crop.Parents)
            .Add("traits", crop.Traits.Select(word => names.Word("crop-trait", word)))
            .AddEach("note", crop.Notes);
        return Ending(fields, crop, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, Question question)
    {
        Fields fields = new Fields()
            .Add("why", question.Why)
            .Add("group", new Names(knowledge).Word("question-group", question.Group))
            .Add("answer", AnswerKind(question))
            .AddEach("choice", question.Choices.Select(choice => $"{choice.Id}: {choice.Text}"))
            .AddEach("asked when", question.AskedWhen.Select(JudgementFields.Test));
        return Ending(fields, question, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, FindingText finding)
    {
        IEnumerable<string> rules = knowledge
            .Judgements.Where(rule => rule.Then is Consequence.MakesFinding made && made.Id == finding.Id)
            .Select(rule => rule.Id);
        return Ending(new Fields().AddEach("concluded by", rules), finding, knowledge);
    }

    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, Region region)
    {
        Fields fields = new Fields()
            .Add("country", new Names(knowledge).Word("country", region.Country))
            .Add("seasons", region.Hemisphere == Hemisphere.South ? "of the south, half a year later" : null)
            .Add(region.BorrowsMonths ? "months of the nearest climate" : "emergence zone", region.EmergenceZone)
            .Add("mean temperature, January to December (C)", region.MeanTemperatureC.Select(Figures.Plain))
            .Add("units", region.Units is { } units ? UnitsWords.Of(units) : null)
            .Add("last frost of spring", region.LastFrost)
            .Add("first frost of autumn", region.FirstFrost);
        return Ending(fields, region, knowledge);
    }

    public static ImmutableArray<Field> Of(Source source) =>
        new Fields().Add("citation", source.Citation).Add("note", source.Note).Done();

    /// <summary>What every record ends with: sources, values from memory, and where it stands.</summary>
    public static ImmutableArray<Field> Ending(Fields fields, Record record, KnowledgeBase knowledge) =>
        fields
            .AddEach("from", ValueSources.Of(record))
            .AddEach("source", Cited(RecordSources.Of(record), knowledge))
            .Add("from memory, not confirmed", record.Memory.Select(Names.Field))
            .Add("looked through for it", record.From.Searched)
            .Add("stands in", record.Where.ToString())
            .Done();

    /// <summary>Each source by its key and in words.</summary>
    public static IEnumerable<string> Cited(IEnumerable<string> keys, KnowledgeBase knowledge) =>
        keys.Select(key => $"[{key}] {SourceSection.Cited(knowledge, key)}");

    private static string FrostText(Weed weed) =>
        weed.Frost switch
        {
            FrostFate.Killed when weed.Underground => "kills what stands above the ground; it comes back from below",
            FrostFate.Killed => "kills it",
            FrostFate.Stands => "it stands hard frost",
            _ => "not known what it does",
        };

    private static string AnswerKind(Question question) =>
        question.Kind switch
        {
            QuestionKind.OneOf => "one of the choices",
            QuestionKind.AnyOf => "any of the choices",
            QuestionKind.Number when question.Between is { } between =>
                $"a number from {Figures.Range(between)}, {question.Unit}",
            QuestionKind.Number => $"a number, {question.Unit}",
            QuestionKind.Date when question.PastOnly => "a date not after the visit",
            QuestionKind.Date => "a date",
            QuestionKind.Crops => "crops of the catalogue",
            QuestionKind.Chemicals => "chemicals by name",
            QuestionKind.Region => "a region of the catalogue",
            QuestionKind.Weeds => "the weeds seen, with stage and cover",
            _ => "earlier applications",
        };

    private static string? Text(Span? span) => span is { } known ? Figures.Range(known) : null;

    private static string? Weeks(Span? weeks) => weeks is { } known ? $"{Figures.Range(known)} weeks" : null;

    private static string Months(ImmutableArray<int> months) =>
        string.Join(", ", months.Select(month => month.ToString(CultureInfo.InvariantCulture)));
}
