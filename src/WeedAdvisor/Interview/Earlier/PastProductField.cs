using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>
/// The product: a treatment of the list, or one that is not in it by its actives, its groups or no more than its kind.
/// </summary>
/// <param name="TakesTreatments">Whether a treatment of the list can be told here; elsewhere it is picked by
/// itself.</param>
public sealed record PastProductField(bool TakesTreatments)
    : PastField(
        "product",
        TakesTreatments ? "Product" : "Not in the list",
        (TakesTreatments ? "a treatment of the list, or " : "")
            + "active NAME + NAME, group 3 + 14, other weed killer, other pesticide",
        "A product that is not in the list counts by its actives or its sites of action; they stand on its label. Any "
            + "pesticide closes a place."
    )
{
    private const string WeedKiller = "weed-killer",
        OtherPesticide = "other-pesticide";

    /// <inheritdoc/>
    public override bool IsTold(PastApplication past) =>
        IsOutside(past) || (TakesTreatments && past.Treatment is not null);

    /// <summary>Whether an application tells of a product that is not in the list.</summary>
    public static bool IsOutside(PastApplication past) =>
        past.Actives.Count > 0 || past.Groups.Count > 0 || past.Kind is not null;

    /// <inheritdoc/>
    public override PastApplication Without(PastApplication past) =>
        TakesTreatments ? Blank(past) : Blank(past) with { Treatment = past.Treatment };

    /// <inheritdoc/>
    public override string Text(Telling telling, PastApplication past) =>
        past switch
        {
            { Actives.Count: > 0, Groups.Count: > 0 } => $"active {Joined(past.Actives)} group {Joined(past.Groups)}",
            { Actives.Count: > 0 } => $"active {Joined(past.Actives)}",
            { Groups.Count: > 0 } => $"group {Joined(past.Groups)}",
            { Kind: WeedKiller } => "other weed killer",
            { Kind: OtherPesticide } => "other pesticide",
            { Treatment: { } id } when TakesTreatments => PastProduct.NameOf(id, telling.Knowledge),
            _ => "",
        };

    /// <inheritdoc/>
    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string rest = string.Join(' ', words.Skip(1));
        switch (words[0].ToLowerInvariant())
        {
            case "active" or "actives":
                int groups = rest.IndexOf(" group", StringComparison.OrdinalIgnoreCase);
                Typed<PastApplication> actives = Actives(telling.Knowledge, past, groups < 0 ? rest : rest[..groups]);
                return groups < 0 || actives.Value is null
                    ? actives
                    : Groups(telling.Knowledge, actives.Value, AfterWord(rest[(groups + 1)..]));
            case "group" or "groups":
                return Groups(telling.Knowledge, Blank(past), rest);
        }

        return NearWords.Fold(text) switch
        {
            "other-weed-killer" or "another-weed-killer" or WeedKiller => Typed<PastApplication>.As(
                Blank(past) with
                {
                    Kind = WeedKiller,
                }
            ),
            OtherPesticide or "another-pesticide" => Typed<PastApplication>.As(
                Blank(past) with
                {
                    Kind = OtherPesticide,
                }
            ),
            _ => TakesTreatments ? Treatment(telling.Knowledge, past, text) : null,
        };
    }

    private static Typed<PastApplication> Treatment(KnowledgeBase knowledge, PastApplication past, string text)
    {
        Typed<NameHit> hit = TypedWeed.OneOf(NameSearch.UsedBefore(knowledge, text), text, "treatment");
        return hit.Value is { } treatment
            ? Typed<PastApplication>.As(Blank(past) with { Treatment = treatment.Id })
            : Typed<PastApplication>.Wrong(hit.Error!);
    }

    private static Typed<PastApplication> Actives(KnowledgeBase knowledge, PastApplication past, string text)
    {
        (WordSet? named, string? error) = Named(
            string.Join('+', text.Split('+').Select(Iso)),
            [.. knowledge.Actives()],
            "active"
        );
        return named is null
            ? Typed<PastApplication>.Wrong(error!)
            : Typed<PastApplication>.As(Blank(past) with { Actives = named });

        // Bags and older tables print other common names.
        string Iso(string part) =>
            knowledge
                .Ingredients.Values.FirstOrDefault(active =>
                    active.AlsoCalled.Any(name => NearWords.Fold(name) == NearWords.Fold(part))
                )
                ?.Name
            ?? part;
    }

    private static Typed<PastApplication> Groups(KnowledgeBase knowledge, PastApplication past, string text)
    {
        (WordSet? named, string? error) = Named(text, [.. knowledge.Groups()], "group");
        return named is null
            ? Typed<PastApplication>.Wrong(error!)
            : Typed<PastApplication>.As(past with { Groups = named });
    }

    private static (WordSet? Words, string? Error) Named(string text, string[] known, string what)
    {
        string[] parts = text.Split('+', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length == 0)
            return (null, $"Name its {what}s, with + between");
        var words = new List<string>();
        foreach (string part in parts)
        {
            string folded = NearWords.Fold(part);
            if (Array.Find(known, word => NearWords.Fold(word) == folded) is not { } word)
            {
                string hint = NearWords.Nearest(part, known) is { } near
                    ? $"Did you mean {near}?"
                    : "Tell it as other weed killer instead, or by its group";
                return (null, $"No record knows the {what} \"{part}\". {hint}");
            }

            words.Add(word);
        }

        return (WordSet.Of(words), null);
    }

    private static PastApplication Blank(PastApplication past) =>
        past with
        {
            Treatment = null,
            Actives = WordSet.Empty,
            Groups = WordSet.Empty,
            Kind = null,
        };

    private static string Joined(WordSet words) => string.Join(" + ", words);

    private static string AfterWord(string text) =>
        text.IndexOf(' ', StringComparison.Ordinal) is var blank and >= 0 ? text[blank..] : "";
}
