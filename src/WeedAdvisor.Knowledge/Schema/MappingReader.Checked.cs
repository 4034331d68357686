using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>The day on which a record was last held against its sources.</summary>
internal sealed partial class MappingReader
{
    private const string CheckedKey = "checked";

    /// <summary>The day; null where the record never was held against a source.</summary>
    public DateOnly? CheckedDay() => OptionalDate(CheckedKey);

    /// <summary>Reports a day of checking where there was nothing to check against.</summary>
    /// <param name="sources">Every source of the record, and what was looked through for it.</param>
    public void CheckedAgainst(IReadOnlyCollection<string> sources)
    {
        if (sources.Count > 0 && !sources.Any(Origins.CanBeRead) && Optional(CheckedKey) is { } day)
            Context.Report(
                day,
                $"'{CheckedKey}' in {_what} that names no source",
                $"no '{CheckedKey}': there was nothing to hold it against"
            );
    }
}
