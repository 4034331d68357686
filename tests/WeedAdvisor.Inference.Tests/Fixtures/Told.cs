using WeedAdvisor.Inference.Conclusions;

namespace WeedAdvisor.Inference.Tests.Fixtures;

/// <summary>Everything that conclusions say, as text, so that a difference in any of it shows.</summary>
internal static class Told
{
    public static string By(IEnumerable<Conclusion> conclusions) => string.Join('\n', conclusions.Select(By));

    private static string By(Conclusion one) =>
        $"{one.Key} {(one.IsCertain ? "certain" : "possible")} {one.Certainty:R} to {one.MostCertainty:R} "
        + $"[{string.Join(' ', one.Needs.Select(need => need.Id))}] {string.Join(" | ", one.Match.Select(By))}"
        + $" {string.Join(' ', Bound(one))}";

    private static IEnumerable<string> Bound(Conclusion one) =>
        one
            .Bindings.Values.OrderBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => $"${pair.Key}={pair.Value}");

    private static string By(Matched matched) =>
        matched switch
        {
            Matched.One fact => fact.Fact.Key,
            Matched.Several several => $"{{{string.Join(',', several.Facts)}}}",
            Matched.Evidence evidence => $"<{string.Join(',', evidence.Conclusions)}>",
            _ => "?",
        };
}
