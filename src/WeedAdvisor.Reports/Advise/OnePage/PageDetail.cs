using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>How much a page tells. It begins with the least and grows while there is room.</summary>
internal sealed record PageDetail
{
    /// <summary>How many lines of work stand before "more".</summary>
    public int Lines { get; init; } = 1;

    /// <summary>How many of them are told with what to do and why.</summary>
    public int Told { get; init; }

    /// <summary>How many of them are told at least with why.</summary>
    public int Reasoned { get; init; }

    /// <summary>
    /// Whether the step of the weed that covers most is told with what to do and why, wherever it stands.
    /// </summary>
    public bool TellsOwnStep { get; init; }

    /// <summary>How many cautions an action told has at most.</summary>
    public int Cautions { get; init; }

    /// <summary>How many cautions for the whole area.</summary>
    public int Mind { get; init; }

    /// <summary>How many lines on what waits.</summary>
    public int Waiting { get; init; }

    /// <summary>How many reasons of what must not be used.</summary>
    public int Barred { get; init; }

    /// <summary>How many chemicals that may go on are named for each purpose.</summary>
    public int Chemicals { get; init; } = 1;

    /// <summary>How many lines on what becomes possible, and when.</summary>
    public int Later { get; init; }

    /// <summary>How many notes on weeds are told.</summary>
    public int Notes { get; init; }

    /// <summary>Whether what let weeds through is told.</summary>
    public bool LetThrough { get; init; }

    /// <summary>Whether the next question says what its answer may bring.</summary>
    public bool AskWhatFor { get; init; }

    /// <summary>What it tells of the lines of work alone.</summary>
    public PageDetail OfWork =>
        new()
        {
            Lines = Lines,
            Told = Told,
            Reasoned = Reasoned,
            TellsOwnStep = TellsOwnStep,
        };
}

/// <summary>
/// What a page tells more of, one at a time; null where there is no more of it. What is wanted first stands first in
/// <see cref="Wanted"/>: the work of the day, why nothing is sprayed, more work, the days to come, and at the end what
/// is good to know. What has no room is passed over.
/// </summary>
internal static class PageGrowth
{
    /// <summary>Lines of work before "more".</summary>
    public const int MostLines = 10;

    private const int MostCautions = 3;
    private const int MostMind = 4;
    private const int MostNotes = 4;
    private const int MostOfTheRest = 3;

    private static readonly Func<PageDetail, PageDetail?> s_line = static page =>
        page.Lines < MostLines ? page with { Lines = page.Lines + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_reason = static page =>
        page.Reasoned < page.Lines ? page with { Reasoned = page.Reasoned + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_told = static page =>
        page.Told < page.Reasoned ? page with { Told = page.Told + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_ownStep = static page =>
        page.TellsOwnStep ? null : page with { TellsOwnStep = true };

    private static readonly Func<PageDetail, PageDetail?> s_caution = static page =>
        page.Cautions < MostCautions ? page with { Cautions = page.Cautions + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_mind = static page =>
        page.Mind < MostMind ? page with { Mind = page.Mind + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_note = static page =>
        page.Notes < MostNotes ? page with { Notes = page.Notes + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_waiting = static page =>
        page.Waiting < MostOfTheRest ? page with { Waiting = page.Waiting + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_barred = static page =>
        page.Barred < MostOfTheRest ? page with { Barred = page.Barred + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_chemical = static page =>
        page.Chemicals < MostOfTheRest ? page with { Chemicals = page.Chemicals + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_later = static page =>
        page.Later < MostOfTheRest ? page with { Later = page.Later + 1 } : null;

    private static readonly Func<PageDetail, PageDetail?> s_letThrough = static page =>
        page.LetThrough ? null : page with { LetThrough = true };

    private static readonly Func<PageDetail, PageDetail?> s_askWhatFor = static page =>
        page.AskWhatFor ? null : page with { AskWhatFor = true };

    /// <summary>In the order in which room is given.</summary>
    public static ImmutableArray<Func<PageDetail, PageDetail?>> Wanted { get; } =
    [
        .. (Func<PageDetail, PageDetail?>[])
            [s_letThrough, s_reason, s_line, s_line, s_ownStep, s_barred, s_told, s_mind, s_barred, s_mind, s_later],
        .. (Func<PageDetail, PageDetail?>[])[s_reason, s_reason, s_told],
        .. (Func<PageDetail, PageDetail?>[])[s_line, s_reason, s_told, s_chemical, s_line, s_reason, s_caution],
        .. (Func<PageDetail, PageDetail?>[])
            [s_askWhatFor, s_line, s_reason, s_chemical, s_mind, s_waiting, s_later, s_told],
        .. (Func<PageDetail, PageDetail?>[])[s_line, s_reason, s_barred, s_note, s_mind, s_told, s_line, s_reason],
        .. (Func<PageDetail, PageDetail?>[])[s_caution, s_note, s_waiting, s_line, s_reason, s_line, s_reason],
        .. (Func<PageDetail, PageDetail?>[])[s_told, s_mind, s_note, s_told, s_later, s_mind, s_note, s_told, s_told],
        .. (Func<PageDetail, PageDetail?>[])[s_caution, s_told, s_told, s_barred, s_waiting],
    ];
}
