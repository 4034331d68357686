using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Prices;

/// <summary>
/// Reads a grower's own prices: a list in the form of <c>prices.yaml</c>. A price takes the place of the shipped one
/// with its id, in the same unit. The id of an action stands for the materials of one use of it on 1000 pots.
/// </summary>
public static class PriceFile
{
    /// <summary>The unit of a price that bears the id of an action.</summary>
    public const string UnitOfAction = "usd-per-1000-pots";

    // Whoever writes his own prices cites his own books and bids, which stand in no list.
    private static readonly Lexicon s_ownSources = new LexiconBuilder().Declare("sources", null).Build();

    /// <summary>Reads the file.</summary>
    /// <param name="path">The file; at most 4 MB.</param>
    /// <param name="knowledge">The knowledge whose prices it replaces.</param>
    /// <returns>The prices in the order of the file; or problems: bad YAML, an unknown id, another unit, a negative
    /// price.</returns>
    public static Outcome<ImmutableList<Price>, Problem> Read(string path, KnowledgeBase knowledge)
    {
        string name = path.Replace('\\', '/');
        byte[]? bytes = FileBytes.Read(path, name, SourceText.VisitFileLimit, out Problem? problem);
        string? text = bytes is null ? null : SourceText.Decode(name, bytes, out problem);
        return text is null ? Outcome<ImmutableList<Price>, Problem>.Bad([problem!]) : Build(text, name, knowledge);
    }

    /// <summary>Reads prices from text, under the same rules.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="knowledge">The knowledge whose prices it replaces.</param>
    public static Outcome<ImmutableList<Price>, Problem> Parse(string text, string name, KnowledgeBase knowledge)
    {
        string? accepted = SourceText.Accept(name, text, SourceText.VisitFileLimit, out Problem? problem);
        return accepted is null
            ? Outcome<ImmutableList<Price>, Problem>.Bad([problem!])
            : Build(accepted, name, knowledge);
    }

    private static Outcome<ImmutableList<Price>, Problem> Build(string text, string name, KnowledgeBase knowledge)
    {
        ParsedFile parsed = TreeBuilder.Build(name, text);
        var context = new ReadContext(name, s_ownSources);
        ImmutableList<Price> prices = parsed.Root is null
            ? []
            : [.. MappingReader.Each(parsed.Root, context, "a price", SmallReaders.Price).OfType<Price>()];
        Problem[] problems =
        [
            .. parsed.Problems,
            .. context.Problems,
            .. prices.Where(price => price.Id.Length > 0).SelectMany(price => AgainstShipped(price, knowledge)),
            .. Twice(prices),
        ];
        return problems.Length == 0
            ? Outcome<ImmutableList<Price>, Problem>.Good(prices)
            : Outcome<ImmutableList<Price>, Problem>.Bad(Problem.InOrder(problems));
    }

    private static IEnumerable<Problem> AgainstShipped(Price price, KnowledgeBase knowledge)
    {
        string? unit = knowledge.Prices.GetValueOrDefault(price.Id)?.Unit
            ?? (knowledge.ActionOf(price.Id) is null ? null : UnitOfAction);
        if (unit is null)
        {
            string[] ids = [.. knowledge.Prices.Keys, .. knowledge.Practices.Keys, .. knowledge.Treatments.Keys];
            yield return new Problem(
                price.Where,
                $"the price '{price.Id}'",
                "the id of a shipped price or of an action",
                NearestWord.Of(price.Id, ids)
            );
        }
        else if (unit != price.Unit)
        {
            yield return new Problem(price.Where, $"the unit '{price.Unit}' of '{price.Id}'", $"'{unit}'");
        }
    }

    private static IEnumerable<Problem> Twice(IEnumerable<Price> prices) =>
        prices
            .GroupBy(price => price.Id, StringComparer.Ordinal)
            .SelectMany(group => group.Skip(1))
            .Select(price => new Problem(price.Where, $"the price '{price.Id}' a second time", "each price once"));
}
