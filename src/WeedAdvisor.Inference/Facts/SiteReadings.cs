using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Turns the answers of an area into readings, question by question, and adds what follows from them.
/// </summary>
internal static class SiteReadings
{
    /// <summary>
    /// The readings of the site; questions about weeds, past and crops are read here only for whether they apply.
    /// </summary>
    public static Dictionary<string, Reading> Of(KnowledgeBase knowledge, AreaCase looked)
    {
        DateOnly date = looked.Date;
        VisitArea area = looked.Area;
        var readings = new Dictionary<string, Reading>(StringComparer.Ordinal);
        foreach (Question question in knowledge.Questions)
            readings[question.Id] = ReadingOf(question, knowledge, looked, readings);

        Region? region = RegionOf(knowledge, readings);
        ClimateReadings.AddTo(readings, region, date);
        readings["days-since-potting"] = Days(readings, QuestionIds.PottedOn, -1);
        readings["days-to-covering"] = Days(readings, QuestionIds.CoveringDate, +1);
        readings["days-to-next"] = Days(readings, QuestionIds.ComesNextOn, +1);
        ShippingFromWhatComesNext.AddTo(readings);
        TractorBoom.AddTo(readings);
        readings["enclosed"] = Enclosed(knowledge, readings);
        readings["country"] = region is null ? CountryUntold(readings) : Reading.Of(region.Country);
        readings["untold-use"] = UntoldUse.Of(knowledge, looked, readings);
        readings["weeds-seen"] = area.Weeds is { } seen
            ? Reading.Of(seen.DistinctBy(weed => weed.Weed, StringComparer.Ordinal).Count())
            : Reading.NotKnown(Need.Question(QuestionIds.Weeds));
        readings["total-cover-percent"] = TotalCover(area);
        return readings;
    }

    /// <summary>
    /// The answers of the questions as they were given, without a look at whether they contradict each other: whoever
    /// asks them must be able to ask about these again.
    /// </summary>
    public static Dictionary<string, Reading> AsTold(KnowledgeBase knowledge, VisitArea area)
    {
        var readings = new Dictionary<string, Reading>(StringComparer.Ordinal);
        foreach (Question question in knowledge.Questions)
        {
            (Truth applies, IReadOnlyList<Need> gate) = AppliesBy(question, readings);
            readings[question.Id] =
                applies == Truth.No ? Reading.Absent : ReadingOf(question, area, default, applies, gate);
        }

        return readings;
    }

    /// <summary>Whether a question applies, by the readings of the others.</summary>
    public static Truth Applies(Question question, IReadOnlyDictionary<string, Reading> readings) =>
        AppliesBy(question, readings).Applies;

    private static Reading ReadingOf(
        Question question,
        KnowledgeBase knowledge,
        AreaCase looked,
        Dictionary<string, Reading> earlier
    )
    {
        VisitArea area = looked.Area;
        (Truth applies, IReadOnlyList<Need> gate) = AppliesBy(question, earlier);
        if (applies == Truth.No)
            return Reading.Absent;
        // A use that is told says by itself that something was put on.
        bool isLately = question.Id == PutOnLately.Question;
        if (isLately && PutOnLately.SaysYes(area, looked.Date))
            return Reading.Of(PutOnLately.Yes);
        if (StockAndCrops.Contradicts(question.Id, area) || (isLately && DeniedUse.InHouse(looked, knowledge)))
            return Reading.NotKnown(Need.Question(question.Id), DomainOf(question));
        return ReadingOf(question, area, looked.Date, applies, gate);
    }

    private static Reading ReadingOf(
        Question question,
        VisitArea area,
        DateOnly date,
        Truth applies,
        IReadOnlyList<Need> gate
    ) =>
        area.Answers.GetValueOrDefault(question.Id) switch
        {
            Answer.Words words => Reading.Of(words.Value),
            Answer.Number number => Reading.Of(number.Value),
            // Dates are kept as days from the visit, which is all that rules compare.
            Answer.Date day => Reading.Of(day.Value.DayNumber - date.DayNumber),
            _ when applies == Truth.NotKnown => new Reading.Open([.. gate], null),
            _ => Reading.NotKnown(Need.Question(question.Id), DomainOf(question)),
        };

    // Whether a question applies is itself three-valued: its conditions are tests on earlier answers.
    private static (Truth Applies, IReadOnlyList<Need> Gate) AppliesBy(
        Question question,
        IReadOnlyDictionary<string, Reading> earlier
    )
    {
        var truth = Truth.Yes;
        // Most questions always apply: nothing is made for them.
        SortedSet<Need>? gate = null;
        foreach (var condition in question.AskedWhen)
        {
            Reading reading = earlier.GetValueOrDefault(condition.Attribute, Reading.Absent);
            Truth holds = TestTruth.Of(condition.Test, reading, Bindings.None);
            if (holds == Truth.NotKnown)
                (gate ??= []).UnionWith(reading.Needs);
            truth = Truths.And(truth, holds);
        }

        return (truth, gate is null ? [] : [.. gate]);
    }

    private static WordSet? DomainOf(Question question) =>
        question.Kind == QuestionKind.OneOf ? question.ChoiceWords : null;

    private static Reading Days(Dictionary<string, Reading> readings, string question, int sign) =>
        readings.GetValueOrDefault(question, Reading.Absent) is Reading.Number days
            ? Reading.Of(sign * days.Value)
            : readings.GetValueOrDefault(question, Reading.Absent);

    private static Reading Enclosed(KnowledgeBase knowledge, Dictionary<string, Reading> readings)
    {
        if (!knowledge.Vocabulary.TryGetValue("enclosed-cover", out WordList? list))
            return Reading.Absent;
        Reading cover = readings.GetValueOrDefault(QuestionIds.Cover, Reading.Absent);
        return cover.IsAnyOf(WordSet.Of(list.Words.Select(word => word.Key))) switch
        {
            Truth.Yes => Reading.Of("yes"),
            Truth.No => Reading.Of("no"),
            _ => new Reading.Open(cover.Needs, WordSet.Of(["yes", "no"])),
        };
    }

    private static Region? RegionOf(KnowledgeBase knowledge, Dictionary<string, Reading> readings) =>
        readings.GetValueOrDefault(QuestionIds.Region) is Reading.Words words
            ? knowledge.Regions.GetValueOrDefault(words.Value.First())
            : null;

    // Without the place it may be any country, also one of which the records do not speak: so no domain.
    private static Reading CountryUntold(Dictionary<string, Reading> readings) =>
        readings.GetValueOrDefault(QuestionIds.Region, Reading.Absent) is Reading.Open open
            ? new Reading.Open(open.Needs, null)
            : Reading.NotKnown(Need.Question(QuestionIds.Region));

    // What is to come covers nothing yet.
    private static Reading TotalCover(VisitArea area) =>
        area.Weeds is { } seen && seen.All(weed => weed.IsUp == false || weed.CoverOfAreaPercent is not null)
            ? Reading.Of(seen.Sum(weed => weed.IsUp == false ? 0 : weed.CoverOfAreaPercent!.Value))
            : Reading.NotKnown(Need.Question(QuestionIds.Weeds));
}
