using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Escapes;

/// <summary>
/// A weed that came through a site of action here although the product that was used is rated good on it. What a record
/// rates poor, fair or not at all explains itself and is none.
/// </summary>
/// <param name="Weed">The weed's id; null where it is not told which weeds came through.</param>
/// <param name="Site">HRAC/WSSA code of the site of action; null where the product may have any.</param>
/// <param name="Times">How often for sure: uses and seasons running, and once more where such a resistance is on
/// record.</param>
/// <param name="MayBeMore">Whether it may have been more often: a use does not tell its result, its weeds or its
/// seasons.</param>
/// <param name="FailedSites">Every site of action that the weed came through here.</param>
/// <param name="IsOnRecord">Whether a population of the weed that withstands the site is on record anywhere.</param>
/// <param name="Product">Name of the product that was used last.</param>
public sealed record Escape(
    string? Weed,
    string? Site,
    int Times,
    bool MayBeMore,
    WordSet FailedSites,
    bool IsOnRecord,
    string Product
)
{
    /// <summary>From how many times on the credit of the site on the weed lapses here.</summary>
    public const int TimesToLapse = 2;

    /// <summary>Whether the credit has lapsed for sure.</summary>
    public bool HasLapsed => Weed is not null && Times >= TimesToLapse;
}
