namespace WeedAdvisor.Knowledge.Readings;

/// <summary>
/// The three answers a condition can give. The order matters: <c>No</c> &lt; <c>NotKnown</c> &lt; <c>Yes</c>.
/// </summary>
public enum Truth
{
    /// <summary>The condition cannot hold, whatever the unanswered questions turn out to be.</summary>
    No = 0,

    /// <summary>The condition may hold; it waits for an answer.</summary>
    NotKnown = 1,

    /// <summary>The condition holds, whatever the unanswered questions turn out to be.</summary>
    Yes = 2,
}

/// <summary>
/// Kleene's strong three-valued connectives (S. C. Kleene, Introduction to Metamathematics, 1952, section 64).
/// </summary>
public static class Truths
{
    /// <summary>Both must hold: the lesser of the two.</summary>
    public static Truth And(Truth left, Truth right) => left < right ? left : right;

    /// <summary>One suffices: the greater of the two.</summary>
    public static Truth Or(Truth left, Truth right) => left > right ? left : right;

    /// <summary>Yes and no change places; what is not known stays so.</summary>
    public static Truth Not(Truth value) => (Truth)(2 - (int)value);

    /// <summary>A known truth.</summary>
    public static Truth Of(bool value) => value ? Truth.Yes : Truth.No;
}
