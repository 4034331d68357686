using System.Globalization;
using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>Rates as people write them, <c>100 to 200 lb/acre</c>, and as the label book holds them.</summary>
internal static partial class RateWords
{
    /// <summary>
    /// The rates as they would be typed. A rate that gives only the active has no such form and is left out.
    /// </summary>
    public static string Of(IEnumerable<Rate> rates) =>
        string.Join("; ", rates.Where(rate => rate.Product is not null).Select(Typed));

    /// <summary>The rates as the label book writes them; null when they are not written as rates are.</summary>
    public static string? Yaml(string typed)
    {
        var rates = new List<string>();
        foreach (
            string part in typed.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        )
        {
            if (Form().Match(part) is not { Success: true } form)
                return null;
            string active = form.Groups["low"].Success
                ? $", ai-lb-per-acre: {Range(form.Groups["low"].Value, form.Groups["high"].Value)}"
                : "";
            rates.Add(
                $"{{ product-per-area: {Range(form.Groups["from"].Value, form.Groups["to"].Value)}, unit: "
                    + $"{form.Groups["unit"].Value}{active} }}"
            );
        }

        return $"[{string.Join(", ", rates)}]";
    }

    private static string Typed(Rate rate)
    {
        string active = rate.AiLbPerAcre is { } span ? $" ({Ends(span)} lb active/acre)" : "";
        return $"{Ends(rate.Product!.Value)} {rate.Unit}{active}";
    }

    private static string Ends(Span span) =>
        span.Low == span.High ? Figure(span.Low) : $"{Figure(span.Low)} to {Figure(span.High)}";

    private static string Figure(decimal number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Range(string low, string high) => high.Length == 0 ? low : $"[{low}, {high}]";

    [GeneratedRegex(
        @"^(?<from>\d+(\.\d+)?)(\s*(to|-)\s*(?<to>\d+(\.\d+)?))?\s*(?<unit>[a-z][a-z0-9/-]*)(\s*\(\s*(?<low>\d+(\.\d+)?)(\s*(to|-)\s*(?<high>\d+(\.\d+)?))?\s*lb active/acre\s*\))?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Form();
}
