namespace WeedAdvisor.Reports.Documents;

/// <summary>How a line is meant. Every medium shows it in its own way; no medium needs it to be understood.</summary>
public enum Tone
{
    /// <summary>Like the others.</summary>
    Normal,

    /// <summary>What must not be overlooked.</summary>
    Warning,

    /// <summary>Detail for those who look closer.</summary>
    Muted,

    /// <summary>What stands out.</summary>
    Strong,
}
