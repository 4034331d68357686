using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>How somebody comes by a chemical that is answered by name.</summary>
internal enum HeldFrom
{
    /// <summary>It lies in the store, or was asked about.</summary>
    InHand,

    /// <summary>It was used here.</summary>
    Used,

    /// <summary>Its label stands in the label book.</summary>
    Label,
}

/// <summary>What is said of a chemical in hand, the kindest first.</summary>
internal enum HeldVerdict
{
    /// <summary>It may be used here.</summary>
    Yes,

    /// <summary>It may, but for a doubt that could still outweigh it.</summary>
    YesUnless,

    /// <summary>It waits for an answer.</summary>
    Waits,

    /// <summary>Not before a day or a state.</summary>
    NotYet,

    /// <summary>In another way only.</summary>
    NotThisWay,

    /// <summary>Nothing calls for it, or more speaks against it.</summary>
    NotAdvised,

    /// <summary>It may not be used here.</summary>
    No,

    /// <summary>It may not be used anywhere near: it was withdrawn.</summary>
    Withdrawn,

    /// <summary>Nothing is held of it.</summary>
    NotHeld,
}

/// <summary>The answer on one chemical that somebody has or asks about.</summary>
/// <param name="From">How he comes by it.</param>
/// <param name="Word">Its name as the visit keeps it; null where the visit does not name it so.</param>
/// <param name="Name">Its name as it is said.</param>
/// <param name="Action">The use that the answer is of; null where none is held.</param>
/// <param name="Others">Other uses of the same, by id.</param>
/// <param name="Verdict">The answer.</param>
/// <param name="Head">The answer in a few words, without a full stop.</param>
/// <param name="Why">The reason that counts most, or what it does here; empty where there is none.</param>
/// <param name="Judgement">The rule that bars it; null where none does.</param>
/// <param name="Mind">The caution that decides, where it may be used; else empty.</param>
internal sealed record HeldAnswer(
    HeldFrom From,
    string? Word,
    string Name,
    string? Action,
    ImmutableArray<string> Others,
    HeldVerdict Verdict,
    string Head,
    string Why,
    string? Judgement,
    string Mind
)
{
    /// <summary>The answer in words, without the name: whether, then why.</summary>
    public string Says => Why.Length == 0 ? $"{Head}." : $"{Head}. {Why}";

    /// <summary>Whether it may be used here, as far as is known.</summary>
    public bool IsUsable => Verdict is HeldVerdict.Yes or HeldVerdict.YesUnless;

    /// <summary>The answer as JSON writes it.</summary>
    public string VerdictWord =>
        Verdict switch
        {
            HeldVerdict.Yes => "clear",
            HeldVerdict.YesUnless => "clear-unless",
            HeldVerdict.Waits => "waits",
            HeldVerdict.NotYet => "not-yet",
            HeldVerdict.NotThisWay => "not-this-way",
            HeldVerdict.NotAdvised => "not-advised",
            HeldVerdict.No => "never",
            HeldVerdict.Withdrawn => "withdrawn",
            _ => "not-held",
        };
}
