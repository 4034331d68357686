namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>What a judgement concludes. A closed family: the nested types are all there are.</summary>
public abstract record Consequence
{
    private Consequence() { }

    /// <summary>Makes a finding: something is the case in the area.</summary>
    /// <param name="Id">The finding's id.</param>
    /// <param name="Certainty">How sure the rule is when its conditions hold, in (0, 1].</param>
    public sealed record MakesFinding(string Id, double Certainty) : Consequence;

    /// <summary>An argument for, or against, the action that the rule matched.</summary>
    /// <param name="Certainty">The strength of the argument, in (0, 1].</param>
    /// <param name="IsDoubt">True for an argument against.</param>
    /// <param name="AfterCleaning">True for a doubt that also puts the action behind the best cleaning: it is the
    /// second step.</param>
    public sealed record Argument(double Certainty, bool IsDoubt, bool AfterCleaning = false) : Consequence
    {
        /// <summary>The job that a doubt makes it share, word of list <c>one-of</c>; null for none.</summary>
        public string? OneOf { get; init; }
    }

    /// <summary>The action that the rule matched must not be used here.</summary>
    /// <param name="Severity">How hard the bar is.</param>
    /// <param name="Lift">What ends it.</param>
    public sealed record Bar(Severity Severity, Lift Lift) : Consequence
    {
        /// <summary>A bar that nothing ends here.</summary>
        public Bar(Severity severity)
            : this(severity, new Lift.Never()) { }
    }

    /// <summary>Something that must be said with the action matched, or with the whole area when none is.</summary>
    /// <param name="Text">What must be said; may hold slots.</param>
    /// <param name="Order">Its place among those that are told first, from 1; null for the others, which come
    /// after.</param>
    public sealed record Caution(string Text, int? Order = null) : Consequence
    {
        /// <summary>It keeps somebody from being hurt: no page leaves it out.</summary>
        public bool ProtectsPeople { get; init; }

        /// <summary>It keeps a whole season's plants from being lost: no page leaves it out.</summary>
        public bool ProtectsCrop { get; init; }

        /// <summary>It keeps fish and water plants from harm: said wherever the action is named.</summary>
        public bool ProtectsWater { get; init; }

        /// <summary>Without it the action is done for nothing: said wherever the action is named.</summary>
        public bool SavesTheResult { get; init; }

        /// <summary>Whether it stands before all work, whatever the room.</summary>
        public bool StandsFirst => ProtectsPeople || ProtectsCrop;
    }
}

/// <summary>How hard a bar is.</summary>
public enum Severity
{
    /// <summary>It would not work, or not be worth it, here.</summary>
    Unsuitable = 1,

    /// <summary>Law, label or certain injury stand against it.</summary>
    Prohibited = 2,
}
