using System.Collections.Frozen;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>
/// Gathers the words of a lexicon. Whether they come from files or from knowledge that has been read: how they are
/// asked for and what they are called stands here, once.
/// </summary>
internal sealed class LexiconBuilder
{
    /// <summary>What stands before the id of a list in a notation.</summary>
    public const string Lists = "list:";

    /// <summary>What stands before the id of a question in the notation of its answers.</summary>
    public const string AnswersTo = "answers:";

    private const string Target = "a weed, a weed kind, or an id under which weeds are rated";

    private static readonly FrozenDictionary<string, string> s_names = new Dictionary<string, string>
    {
        ["weeds"] = "the id of a weed",
        ["crops"] = "the id of a crop",
        ["practices"] = "the id of a practice",
        ["treatments"] = "the id of a treatment",
        ["past-treatments"] = "the id of a treatment",
        ["actions"] = "the id of a practice or treatment",
        ["regions"] = "the id of a region",
        ["findings"] = "the id of a finding",
        ["grades"] = "a grade",
        ["questions"] = "the id of a question",
        ["judgements"] = "the id of a judgement",
        ["prices"] = "the id of a price",
        ["sources"] = "a key of sources.yaml",
        ["active-ids"] = "the id of an active",
        ["actives"] = "the name of an active",
        ["groups"] = "a site-of-action group of an active",
        ["rate-units"] = "a unit in which records give a rate",
        ["targets"] = Target,
        ["rated"] = Target,
        ["targets-or-all"] = "a weed, a weed kind, or 'all'",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    // The catalogues that 'knowledge list' prints, by the notation whose words they hold.
    private static readonly FrozenDictionary<string, string> s_catalogues = new Dictionary<string, string>
    {
        ["weeds"] = "weeds",
        ["crops"] = "crops",
        ["practices"] = "practices",
        ["treatments"] = "treatments",
        ["past-treatments"] = "treatments",
        ["regions"] = "regions",
        ["findings"] = "findings",
        ["questions"] = "questions",
        ["judgements"] = "judgements",
        ["sources"] = "sources",
        ["active-ids"] = "actives",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly Dictionary<string, ValidWords> _words = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);

    /// <summary>The words of a notation; of several with the same one the first stand.</summary>
    /// <param name="notation">How they are asked for.</param>
    /// <param name="words">The words; null when what declares them is broken or was not read.</param>
    /// <param name="called">Other names of the words.</param>
    public LexiconBuilder Declare(
        string notation,
        IEnumerable<string>? words,
        IReadOnlyDictionary<string, IEnumerable<string>>? called = null
    )
    {
        if (words is null)
            _open.Add(notation);
        else
            _words.TryAdd(notation, Valid(notation, words, called));
        return this;
    }

    /// <summary>
    /// What ratings and effects can be on: published tables rate some weeds, and groups of weeds, that have no record
    /// of their own. To be declared after the weeds and the lists.
    /// </summary>
    /// <param name="ratedAs">The names under which weeds are rated; null when not all are known.</param>
    public LexiconBuilder DeclareTargets(IEnumerable<string>? ratedAs)
    {
        string[]? targets =
            ratedAs is null || _open.Contains("weeds") || _open.Contains(Lists)
                ? null
                : [.. Known("weeds"), .. ratedAs, .. Known($"{Lists}weed-kind"), .. Known($"{Lists}rated-only")];
        return Declare("targets", targets).Declare("rated", targets).Declare("targets-or-all", targets?.Append("all"));
    }

    /// <summary>The lexicon of what was declared.</summary>
    /// <param name="isOfFiles">Whether whoever reads the files tells what is undeclared, once.</param>
    public Lexicon Build(bool isOfFiles = false) => new(_words, _open, isOfFiles);

    /// <summary>What stands for words that nothing declares: whatever is held against it is refused.</summary>
    public static ValidWords NoWords(string notation) => new($"{NameOf(notation)}, which nothing declares", []);

    private static ValidWords Valid(
        string notation,
        IEnumerable<string> words,
        IReadOnlyDictionary<string, IEnumerable<string>>? called
    )
    {
        string? catalogue = s_catalogues.GetValueOrDefault(notation);
        return called is null
            ? new ValidWords(NameOf(notation), words) { Catalogue = catalogue }
            : new ValidWords(NameOf(notation), words) { Catalogue = catalogue, Names = called };
    }

    // A notation that no list, question or catalogue could declare is a slip of the program, not of whoever wrote a
    // file.
    private static string NameOf(string notation) =>
        notation.StartsWith(Lists, StringComparison.Ordinal) ? $"a word of list '{notation[Lists.Length..]}'"
        : notation.StartsWith(AnswersTo, StringComparison.Ordinal) ? $"an answer to '{notation[AnswersTo.Length..]}'"
        : s_names[notation];

    private IEnumerable<string> Known(string notation) => _words.GetValueOrDefault(notation)?.All ?? [];
}
