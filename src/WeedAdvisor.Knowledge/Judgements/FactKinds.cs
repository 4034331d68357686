namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>
/// Tells what belongs to the case, which differs from area to area, from what the catalogue says everywhere.
/// </summary>
public static class FactKinds
{
    /// <summary>Whether facts of this kind are the practices and treatments of the catalogue.</summary>
    public static bool IsOfCatalogue(this FactKind kind) =>
        kind is FactKind.Practice or FactKind.Treatment or FactKind.Action;

    /// <summary>Whether a pattern matches one practice or treatment, which the rule then speaks of.</summary>
    public static bool IsOnAction(this Pattern pattern) => pattern is Pattern.Fact fact && fact.Kind.IsOfCatalogue();
}
