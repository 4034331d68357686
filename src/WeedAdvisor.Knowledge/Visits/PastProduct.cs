using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>What is known of the product of an earlier application: the one place where that is worked out.</summary>
/// <param name="Record">Its record; null when it is not in the catalogue.</param>
/// <param name="Name">Its name in a sentence.</param>
/// <param name="Actives">Its actives that records know; null when it may hold any.</param>
/// <param name="Groups">Its sites of action, HRAC/WSSA codes; null when it may have any.</param>
/// <param name="IsWeedKiller">Whether it is known to be a weed killer.</param>
public sealed record PastProduct(Treatment? Record, string Name, WordSet? Actives, WordSet? Groups, bool IsWeedKiller)
{
    private const string Unclassified = "0";

    /// <summary>The product of an application.</summary>
    public static PastProduct Of(PastApplication past, KnowledgeBase knowledge)
    {
        if (past.Treatment is { } id && knowledge.Treatments.TryGetValue(id, out Treatment? record))
            return new PastProduct(record, record.Name, ActivesOf(record), SitesOf(record), IsWeedKiller: true);
        if (past.Treatment is { } gone && knowledge.GoneAs(gone) is { } active)
        {
            return new PastProduct(
                null,
                $"a product with {active.Name}",
                WordSet.Of([active.Name]),
                Sites(new[] { active.Group }.OfType<string>()),
                IsWeedKiller: true
            );
        }

        if (past.Actives.Count > 0)
        {
            return new PastProduct(
                null,
                $"a product with {string.Join(" and ", past.Actives)}",
                past.Actives,
                past.Groups.Count > 0 ? Sites(past.Groups) : Sites(GroupsOf(past.Actives, knowledge)),
                IsWeedKiller: true
            );
        }

        if (past.Groups.Count > 0)
        {
            string groups = string.Join(" and ", past.Groups);
            return new PastProduct(null, $"a product of group {groups}", null, Sites(past.Groups), IsWeedKiller: true);
        }

        return past.Kind == "other-pesticide"
            ? new PastProduct(
                null,
                "a pesticide that is no weed killer",
                WordSet.Empty,
                WordSet.Empty,
                IsWeedKiller: false
            )
            : new PastProduct(
                null,
                "a weed killer that is not in the list",
                null,
                null,
                IsWeedKiller: past.Kind == "weed-killer"
            );
    }

    /// <summary>The name of a treatment that was used, also of one that no record describes any more.</summary>
    public static string NameOf(string treatment, KnowledgeBase knowledge) =>
        knowledge.Treatments.TryGetValue(treatment, out Treatment? record) ? record.Name
        : knowledge.GoneAs(treatment) is { } gone ? $"{gone.Name}, withdrawn"
        : treatment;

    /// <summary>ISO common names of a treatment's actives.</summary>
    public static WordSet ActivesOf(Treatment treatment) => WordSet.Of(treatment.Actives.Select(active => active.Name));

    /// <summary>
    /// HRAC/WSSA codes of a treatment's sites of action. Code 0 says that the site is not known or not classified: two
    /// such actives need not share anything, so it is no site.
    /// </summary>
    public static WordSet SitesOf(Treatment treatment) =>
        Sites(treatment.Actives.Select(active => active.Group).OfType<string>());

    private static WordSet Sites(IEnumerable<string> groups) =>
        WordSet.Of(groups.Where(group => group != Unclassified));

    private static IEnumerable<string> GroupsOf(WordSet actives, KnowledgeBase knowledge) =>
        knowledge
            .Treatments.Values.SelectMany(treatment => treatment.Actives)
            .Concat(knowledge.Ingredients.Values.Select(ingredient => ingredient.In(null)))
            .Where(active => actives.Contains(active.Name))
            .Select(active => active.Group)
            .OfType<string>();
}
