using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Commands;

/// <summary>
/// Which action somebody means: by its id, its name, a part of the name, an active or the name of a product in the
/// label book. The first of these that any action answers to counts; several are asked back.
/// </summary>
internal static class ActionAsked
{
    private const int MostNamed = 8;

    /// <summary>The argument.</summary>
    public static Argument<string> Argument() =>
        new("ACTION")
        {
            Description = "A practice or treatment: id, name or part of it, an active, or a name of your label book.",
        };

    /// <summary>The action.</summary>
    /// <exception cref="RefusalException">None is called so, several are, or it may not be used any more.</exception>
    public static CatalogueAction Find(string asked, KnowledgeBase knowledge)
    {
        if (knowledge.ActionOf(asked) is { } byId)
            return byId;
        if (knowledge.GoneAs(asked) is { } gone)
            throw new RefusalException(ExitCode.Usage, knowledge.WithdrawnText(gone));
        CatalogueAction[] all = [.. knowledge.Practices.Values, .. knowledge.Treatments.Values];
        string folded = FoldedWords.Of(asked);
        if (folded.Length == 0)
            throw new RefusalException(ExitCode.Usage, "no action is named. Give its id, its name or an active.");
        foreach (Func<CatalogueAction, bool> fits in Ways(folded, knowledge))
        {
            CatalogueAction[] found = [.. all.Where(fits)];
            if (found.Length > 1)
                throw Several(asked, found);
            if (found.Length == 1)
                return found[0];
        }

        throw new RefusalException(
            ExitCode.Usage,
            $"no action '{asked}'{UsageError.DidYouMean(asked, all.Select(one => one.Id))}. "
                + $"See '{CommandLine.Name} knowledge list practices' or '... list treatments'."
        );
    }

    // From the surest to the loosest.
    private static IEnumerable<Func<CatalogueAction, bool>> Ways(string folded, KnowledgeBase knowledge)
    {
        return
        [
            one => Is(one.Id) || Is(one.Name),
            one => one is Treatment { Label: { } label } && Is(label.Name),
            one => one is Treatment treatment && Actives(treatment).Any(Is),
            one => one is Treatment { Label: { } label } && Holds(label.Name),
            one => Holds(one.Name) || Holds(one.Id),
            one => one is Treatment treatment && Actives(treatment).Any(Holds),
        ];

        bool Is(string name) => FoldedWords.Of(name) == folded;

        // From the beginning of a word: "pray" is no part of "spray".
        bool Holds(string name) => $"-{FoldedWords.Of(name)}".Contains($"-{folded}", StringComparison.Ordinal);

        IEnumerable<string> Actives(Treatment treatment) =>
            treatment
                .Actives.Select(active => active.Name)
                .Concat(
                    knowledge
                        .Ingredients.Values.Where(ingredient =>
                            treatment.Actives.Any(active => active.Name == ingredient.Name)
                        )
                        .SelectMany(ingredient => ingredient.AlsoCalled)
                );
    }

    private static RefusalException Several(string asked, CatalogueAction[] found)
    {
        string[] named = [.. found.Take(MostNamed).Select(one => $"{one.Name} ({one.Id})")];
        string more = found.Length > MostNamed ? $" and {found.Length - MostNamed} more" : "";
        return new RefusalException(
            ExitCode.Usage,
            $"'{asked}' may be one of {found.Length} actions: {string.Join("; ", named)}{more}. Say which by its id."
        );
    }
}
