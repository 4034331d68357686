using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Stretches;

/// <summary>
/// The last day on which a treatment may go on before film does: the bars that count the days to the film are asked,
/// and no figure is reckoned beside them.
/// </summary>
public sealed class FilmCountdown
{
    private const string DaysToCovering = "days-to-covering";

    // Made once for a knowledge base, however often it is asked.
    private static readonly ConditionalWeakTable<KnowledgeBase, FilmCountdown> s_made = [];

    private readonly KnowledgeBase _knowledge;
    private readonly ImmutableArray<Judgement> _bars;
    private readonly Lazy<Catalogue> _catalogue;

    private FilmCountdown(KnowledgeBase knowledge)
    {
        _knowledge = knowledge;
        _bars = [.. knowledge.Judgements.Where(one => one.Then is Consequence.Bar && one.When.Any(Counts))];
        // Most areas plan no film, and then nobody looks into the catalogue.
        _catalogue = new Lazy<Catalogue>(() => Catalogue.Of(knowledge, _bars));
    }

    /// <summary>The countdown under the judgements of a knowledge base.</summary>
    public static FilmCountdown Of(KnowledgeBase knowledge) =>
        s_made.GetValue(knowledge, one => new FilmCountdown(one));

    /// <summary>
    /// The last day before any such bar falls; null when no film is planned or none of them ever falls.
    /// </summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="area">The area as it was seen.</param>
    /// <param name="visit">The day of the visit.</param>
    public DateOnly? LastDay(Treatment treatment, VisitArea area, DateOnly visit)
    {
        Dictionary<string, Reading> site = SiteReadings.Of(_knowledge, AreaCase.Alone(visit, area));
        if (
            new SiteValues(site, visit).Day(QuestionIds.CoveringDate) is not { } film
            || film <= visit
            || !_catalogue.Value.Treatments.TryGetValue(treatment.Id, out ActionFact? fact)
        )
            return null;
        DateOnly? last = null;
        foreach (int left in Days(film.DayNumber - visit.DayNumber))
        {
            if (IsBarred(left))
                return last;
            last = film.AddDays(-left);
        }

        return null;

        bool IsBarred(int left)
        {
            var then = new Dictionary<string, Reading>(site, StringComparer.Ordinal)
            {
                [QuestionIds.CoveringDate] = Reading.Of(left),
            };
            if (site.GetValueOrDefault(DaysToCovering) is Reading.Number)
                then[DaysToCovering] = Reading.Of(left);
            return TreeInference.Conclude(_bars, [new SiteFact(then), fact]).Any(bar => bar.IsCertain);
        }
    }

    // A bar can begin on a mark or the day after it; the day before is the last without it.
    private IEnumerable<int> Days(int now) =>
        _catalogue
            .Value.Marks.SelectMany(mark => Enumerable.Range((int)decimal.Floor(mark) - 1, 4))
            .Append(now)
            .Where(left => left > 0 && left <= now)
            .Distinct()
            .OrderDescending();

    private static bool Counts(Pattern pattern) =>
        pattern is Pattern.Fact { Kind: FactKind.Site } site
        && site.Tests.Any(test => test.Attribute == DaysToCovering);

    // Every treatment as a fact, and the numbers of days with which the bars compare those to the film.
    private sealed record Catalogue(
        ImmutableDictionary<string, ActionFact> Treatments,
        ImmutableSortedSet<decimal> Marks
    )
    {
        public static Catalogue Of(KnowledgeBase knowledge, ImmutableArray<Judgement> bars)
        {
            ImmutableArray<ActionFact> facts = CatalogueFacts.Of(knowledge);
            return new Catalogue(
                facts
                    .Where(fact => fact is TreatmentFact)
                    .ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal),
                ComparedNumbers.Of(bars, facts).MarksOf(new FactAttribute(FactKind.Site, DaysToCovering))
            );
        }
    }
}
