namespace WeedAdvisor.Planning.Robust;

/// <summary>What a figure is about, and so how a grower finds it out.</summary>
public enum FigureKind
{
    /// <summary>The cost of an hour.</summary>
    Wage,

    /// <summary>A price that is paid.</summary>
    Price,

    /// <summary>What finished pots bring, and how many of them are lost.</summary>
    Loss,

    /// <summary>How many plants a product hurts.</summary>
    Harm,

    /// <summary>How long work takes.</summary>
    Work,

    /// <summary>How many weeds come up.</summary>
    Emergence,

    /// <summary>When weeds come up.</summary>
    Season,

    /// <summary>How weeds grow, seed and die.</summary>
    Growth,

    /// <summary>What a product or a cover stops.</summary>
    Strength,

    /// <summary>How long a product holds.</summary>
    Duration,
}
