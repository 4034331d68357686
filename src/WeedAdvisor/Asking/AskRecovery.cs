using WeedAdvisor.Interview.Files;

namespace WeedAdvisor.Asking;

/// <summary>Offers the interviews that were broken off.</summary>
internal static class AskRecovery
{
    /// <summary>
    /// Offers one after another until one is taken. A line that is neither yes nor no leaves them all for the next
    /// start, so that a script that knows nothing of them loses nothing.
    /// </summary>
    /// <returns>A line that was neither yes nor no and so belongs to the interview; else null.</returns>
    public static string? Offer(IReadOnlyList<RecoveryOffer> offers, IReadOnlyList<string> troubles, Lines lines)
    {
        foreach (string trouble in troubles)
            lines.Say(trouble);
        foreach (RecoveryOffer offer in offers)
        {
            lines.Say(offer.Told);
            string? said = lines.Hear("Go on with it? yes or no");
            switch (said?.ToLowerInvariant())
            {
                case "yes" or "y":
                    if (offer.GoOn() is { } note)
                        lines.Say(note);
                    return null;
                case "no" or "n":
                    lines.Say(offer.Decline());
                    break;
                default:
                    lines.Say("It is kept, and offered again at the next start.");
                    return string.IsNullOrEmpty(said) ? null : said;
            }
        }

        return null;
    }
}
