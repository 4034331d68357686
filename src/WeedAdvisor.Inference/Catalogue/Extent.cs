namespace WeedAdvisor.Inference.Catalogue;

/// <summary>Which actions pass a condition: for sure, and perhaps (those that do for sure among them).</summary>
/// <param name="Sure">The actions of which it holds whatever is still open.</param>
/// <param name="Perhaps">The actions of which it may hold.</param>
internal readonly record struct Extent(ActionSet Sure, ActionSet Perhaps)
{
    /// <summary>The actions that pass both conditions.</summary>
    public Extent And(Extent other) => new(Sure.And(other.Sure), Perhaps.And(other.Perhaps));

    /// <summary>
    /// The actions that pass where this condition doesn't: what perhaps passes doesn't fail for sure.
    /// </summary>
    /// <param name="all">Every action of the catalogue.</param>
    public Extent Turned(ActionSet all) => new(all.Without(Perhaps), all.Without(Sure));
}
