namespace WeedAdvisor.Planning.Robust;

/// <summary>Units of figures in plain words.</summary>
internal static class Units
{
    // The unit stands in the id; the first that is found counts.
    private static readonly (string InId, string Words)[] s_inIds =
    [
        ("percent", "%"),
        ("-usd-", "USD"),
        ("seconds", "s"),
        ("minutes", "min"),
        ("acres-an-hour", "acres an hour"),
        ("litres-a-hectare", "l/ha"),
        ("litres", "l"),
        ("-cm", "cm"),
        ("weeks", "weeks"),
        ("seedlings", "seedlings"),
        ("most-weeds", "weeds"),
        ("multiple", "times"),
    ];

    /// <summary>The unit that the id of a number names; empty when it names none.</summary>
    public static string OfId(string id) =>
        s_inIds.FirstOrDefault(unit => id.Contains(unit.InId, StringComparison.Ordinal)).Words ?? "";

    /// <summary>The unit of a price.</summary>
    public static string OfPrice(string unit) =>
        unit switch
        {
            "usd-each" => "USD each",
            "usd-per-m3" => "USD a m³",
            "usd-per-m2" => "USD a m²",
            "usd-per-kg" or "usd-per-kg-active" => "USD a kg",
            "percent-per-year" => "% a year",
            "percent" => "%",
            _ => unit.Replace("usd-per-", "USD for ", StringComparison.Ordinal).Replace('-', ' '),
        };
}
