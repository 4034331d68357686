using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// The facts of earlier applications. What a use does not say is not known: it may be any of its words.
/// </summary>
internal static class PastFacts
{
    private const decimal DaysInWeek = 7;
    private static readonly WordSet s_results = WordSet.Of(["clean", "escapes", "injury"]);
    private static readonly WordSet s_methods = WordSet.Of([
        "granules",
        "low-coarse-spray",
        "other-spray",
        "mist-or-fog",
    ]);
    private static readonly WordSet s_amounts = WordSet.Of(["few", "many"]);
    private static readonly WordSet s_flags = WordSet.Of(["true", "false"]);

    /// <summary>One fact for each application, oldest first.</summary>
    public static IEnumerable<PastFact> Of(ImmutableArray<PastApplication> past, DateOnly date, KnowledgeBase knowledge)
    {
        DateOnly? latest = past.All(entry => entry.Date is not null) ? past.Select(entry => entry.Date).Max() : null;
        (PastApplication Entry, PastProduct Product)[] uses =
        [
            .. past.Select(entry => (Entry: entry, Product: PastProduct.Of(entry, knowledge)))
                .OrderBy(one => one.Entry.Date)
                .ThenBy(one => one.Entry.Treatment ?? one.Product.Name, StringComparer.Ordinal),
        ];
        return uses.Select(
            (one, index) => Of(one.Entry, one.Product, knowledge, index, date, latest, UsesOfSite(one.Product, uses))
        );
    }

    // How often the sites of action of a use went on here, this use included; open while a product may have any.
    private static Reading UsesOfSite(PastProduct product, (PastApplication Entry, PastProduct Product)[] uses) =>
        product.Groups is { } sites && uses.All(use => use.Product.Groups is not null)
            ? Reading.Of(uses.Count(use => use.Product.Groups!.Overlaps(sites)))
            : NotTold();

    // A rate that is not told counts as the highest that is published; only one that is told can lie above it.
    private static bool IsAbovePublished(PastApplication entry, PastProduct product) =>
        entry.Rate is { } rate
        && product
            .Record?.Rates.Where(published => published.Unit == entry.RateUnit && published.Product is not null)
            .ToArray()
            is { Length: > 0 } same
        && same.All(published => rate > published.Product!.Value.High);

    // What is published as the shortest time holds for sure; a product without a record may stop seed or not.
    private static Reading ControlLeft(PastApplication entry, PastProduct product, DateOnly date)
    {
        if (product.Record is { ResidualWeeks: null } || product.Actives is { Count: 0 })
            return Reading.Absent;
        return product.Record?.ResidualWeeks is { } weeks && entry.Date is { } day
            ? Reading.Of(decimal.Floor(weeks.Low * DaysInWeek) - (date.DayNumber - day.DayNumber))
            : NotTold();
    }

    private static PastFact Of(
        PastApplication entry,
        PastProduct product,
        KnowledgeBase knowledge,
        int index,
        DateOnly date,
        DateOnly? latest,
        Reading usesOfSite
    ) =>
        new(
            $"{index}-{entry.Treatment ?? "other"}",
            product.Name,
            new Dictionary<string, Reading>
            {
                ["treatment"] = TreatmentOf(product),
                ["groups"] = product.Groups is { } groups ? Reading.Of(groups) : NotTold(),
                ["actives"] = product.Actives is { } actives ? Reading.Of(actives) : NotTold(),
                ["withdrawn-in"] = product.Actives is { } held
                    ? Reading.Of(knowledge.WithdrawnWhere(held, entry.Date))
                    : NotTold(),
                ["days-ago"] = entry.Date is { } day ? Reading.Of(date.DayNumber - day.DayNumber) : NotTold(),
                ["latest"] = latest is { } last ? Reading.Of(entry.Date == last) : NotTold(s_flags),
                ["result"] = Word(entry.Result, s_results),
                ["escaped"] = Escaped(entry),
                ["control-days-left"] = ControlLeft(entry, product, date),
                ["uses-of-its-site"] = usesOfSite,
                ["above-published-rate"] = Reading.Of(IsAbovePublished(entry, product)),
                // Whoever does not tell of drift has seen none; what follows from it are cautions only.
                ["drifted"] = Reading.Of(entry.Drifted == true),
                ["method"] = Word(entry.Method, s_methods),
                ["part-only"] = Flag(entry.PartOnly),
                ["watered-in"] = Flag(entry.WateredIn),
                ["came-through"] = Word(entry.CameThrough, s_amounts),
                ["seasons-running"] = entry.SeasonsRunning is { } seasons ? Reading.Of(seasons) : NotTold(),
            }
        );

    // A product outside the catalogue may still be one of its records under another name, unless it holds none of their
    // actives.
    private static Reading TreatmentOf(PastProduct product) =>
        product.Record is { } record ? Reading.Of(record.Id)
        : product.Actives is { Count: 0 } ? Reading.Absent
        : NotTold();

    // A list without names says that nothing came through only where the result says so.
    private static Reading Escaped(PastApplication entry) =>
        entry.Escaped.Count > 0 ? Reading.Of(entry.Escaped)
        : entry.Result == "clean" ? Reading.Absent
        : NotTold();

    private static Reading Word(string? word, WordSet all) => word is null ? NotTold(all) : Reading.Of(word);

    private static Reading Flag(bool? flag) => flag is { } known ? Reading.Of(known) : NotTold(s_flags);

    private static Reading NotTold(WordSet? domain = null) => Reading.NotKnown(Need.Question(QuestionIds.Past), domain);
}
