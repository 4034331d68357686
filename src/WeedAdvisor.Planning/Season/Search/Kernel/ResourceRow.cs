namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// A limit on a sum over the applications of a plan, such as the dose of one active or the money spent. A plan's room
/// in a row is what is left of the limit.
/// </summary>
/// <param name="Use">What each spot uses: candidate x weeks + week.</param>
/// <param name="Room">The room before the first application.</param>
/// <param name="IsNeed">
/// Whether the row asks for at least so many applications. Then the room is minus what is still needed, each
/// application that counts uses -1, and the room stays at 0 when the need is met.
/// </param>
/// <param name="IsImplied">Whether other rows say the same of whole plans; such a row is there only to sharpen the
/// bound.</param>
internal sealed record ResourceRow(long[] Use, long Room, bool IsNeed, bool IsImplied = false);
