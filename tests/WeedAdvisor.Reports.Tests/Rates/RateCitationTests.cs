using System.Collections.Immutable;
using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Rates;

public sealed partial class RateCitationTests
{
    [Fact]
    public void Every_key_that_a_sum_names_has_its_citation()
    {
        string[] keys = [.. Keys().Distinct().Order(StringComparer.Ordinal)];
        Assert.NotEmpty(keys);
        ImmutableSortedDictionary<string, Source> sources = SourceFile.Load(Repository.Rules).Value!;
        Assert.DoesNotContain(keys, key => !sources.ContainsKey(key));
    }

    // The code, not the examples: a source may be named only for certain entries.
    private static IEnumerable<string> Keys() =>
        Directory
            .EnumerateFiles(
                Path.Combine(Repository.Folder, "src", "WeedAdvisor.Planning", "Rates"),
                "*.cs",
                SearchOption.AllDirectories
            )
            .SelectMany(file => SourcesInCode().Matches(File.ReadAllText(file)))
            .SelectMany(list => Key().Matches(list.Value))
            .Select(key => key.Groups["key"].Value);

    [GeneratedRegex(@"\bSources = .*", RegexOptions.CultureInvariant)]
    private static partial Regex SourcesInCode();

    [GeneratedRegex(@"""(?<key>[a-z][a-z0-9-]*)""", RegexOptions.CultureInvariant)]
    private static partial Regex Key();
}
