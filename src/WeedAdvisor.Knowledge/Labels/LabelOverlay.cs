using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Labels;

/// <summary>
/// Puts what the grower's labels say in the place of what the records say, or do not say. It never touches what a label
/// may not lift: cover and closed houses, vapour, stock stages, organic, edible, what is no longer allowed, what hurts
/// a crop; an entry interval only ever gets longer. Wherever it is milder than the record both figures are said.
/// </summary>
public static class LabelOverlay
{
    /// <summary>The knowledge with the labels over it; its stamp tells that they are there.</summary>
    public static KnowledgeBase Of(KnowledgeBase knowledge, LabelBook book)
    {
        ImmutableSortedDictionary<string, Treatment> treatments = knowledge.Treatments;
        foreach (ProductLabel label in book.Labels)
            treatments = treatments.SetItem(label.Treatment, Over(treatments[label.Treatment], label));
        return knowledge with { Treatments = treatments, Stamp = knowledge.Stamp with { Labels = book.Hash } };
    }

    private static Treatment Over(Treatment record, ProductLabel label)
    {
        var says = ImmutableArray.CreateBuilder<string>();
        Treatment read = record with
        {
            Places = Named(record.Places, label.Sites, "sites", says),
            CropsTolerant = Named(record.CropsTolerant, label.Crops, "crops", says),
            WaitAfterPottingDays = Number(
                record.WaitAfterPottingDays,
                label.WaitAfterPottingDays,
                "days after potting",
                says
            ),
            WaitBareRootDays = Number(
                record.WaitBareRootDays,
                label.WaitBareRootDays,
                "days after potting bare roots",
                says
            ),
            DaysBeforeCovering = Number(
                record.DaysBeforeCovering,
                label.DaysBeforeCovering,
                "days open before film",
                says
            ),
            RepeatAfterDays = Number(record.RepeatAfterDays, label.RepeatAfterDays, "days between two uses", says),
            UsesPerYear = Number(record.UsesPerYear, label.UsesPerYear, "uses a year", says),
            YearlyLimitKgAiHa = Number(
                record.YearlyLimitKgAiHa,
                label.YearlyLimitKgAiHa,
                "kg of active a hectare and year",
                says
            ),
            WaterInWithinDays = Number(
                record.WaterInWithinDays,
                label.WaterInWithinDays,
                "days within which to water in",
                says
            ),
            ReiHours = Entry(record.ReiHours, label.EntryHours, says),
            SignalWord = label.SignalWord ?? record.SignalWord,
            Rates = label.Rates.IsEmpty ? record.Rates : label.Rates,
            From = record.From.With(FieldsRead(record, label), SourceReader.LabelBook),
        };
        if (!label.Rates.IsEmpty)
            says.Add("the rates");
        foreach (string crop in label.Crops.Where(record.CropsHurt.Contains))
            says.Add($"{crop}, but the record says that it is hurt, and that counts");
        return read with
        {
            Label = new LabelRead(label.Name, label.RegistrationNumber, label.Read, says.ToImmutable()),
        };
    }

    // Where both say something and the record's counts, the value is still the record's.
    private static ImmutableHashSet<string> FieldsRead(Treatment record, ProductLabel label)
    {
        (string Field, bool IsRead)[] fields =
        [
            ("wait-after-potting-days", label.WaitAfterPottingDays is not null),
            ("wait-bare-root-days", label.WaitBareRootDays is not null),
            ("days-before-covering", label.DaysBeforeCovering is not null),
            ("repeat-after-days", label.RepeatAfterDays is not null),
            ("uses-per-year", label.UsesPerYear is not null),
            ("yearly-limit-kg-ai-ha", label.YearlyLimitKgAiHa is not null),
            ("water-in-within-days", label.WaterInWithinDays is not null),
            ("signal-word", label.SignalWord is not null),
            ("rei-hours", label.EntryHours is { } read && read >= (record.ReiHours?.High ?? 0)),
        ];
        return [.. fields.Where(field => field.IsRead).Select(field => field.Field)];
    }

    private static WordSet Named(WordSet record, WordSet label, string what, ImmutableArray<string>.Builder says)
    {
        string[] more = [.. label.Where(word => !record.Contains(word))];
        if (more.Length > 0)
            says.Add($"{what} that the record does not name: {string.Join(", ", more)}");
        return WordSet.Of([.. record, .. more]);
    }

    private static decimal? Number(decimal? record, decimal? label, string what, ImmutableArray<string>.Builder says)
    {
        if (label is not { } read || read == record)
            return record;
        string than = record is { } known ? $"; the record says {Text(known)}" : ", which the record does not say";
        says.Add($"{Text(read)} {what}{than}");
        return read;
    }

    // People come first: of two intervals the longer one counts.
    private static Span? Entry(Span? record, decimal? label, ImmutableArray<string>.Builder says)
    {
        if (label is not { } read)
            return record;
        if (record is not { } known)
        {
            says.Add($"{Text(read)} hours before anybody goes in, which the record does not say");
            return new Span(read, read);
        }

        if (read == known.High)
            return record;
        says.Add(
            $"{Text(read)} hours before anybody goes in; the record says {Text(known.High)}, and the longer counts"
        );
        return new Span(Math.Max(read, known.High), Math.Max(read, known.High));
    }

    private static string Text(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
