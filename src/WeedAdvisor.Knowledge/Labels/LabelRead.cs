using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Labels;

/// <summary>What the grower's own label says otherwise than the record, or in its place.</summary>
/// <param name="Name">The grower's name for the product.</param>
/// <param name="RegistrationNumber">The registration number; null when not noted.</param>
/// <param name="Read">The day it was read.</param>
/// <param name="Says">What it says, each with the record's figure; may be empty.</param>
public sealed record LabelRead(string Name, string? RegistrationNumber, DateOnly Read, ImmutableArray<string> Says)
{
    private const int YearsFresh = 1;

    /// <summary>The line that stands in every output which names the treatment.</summary>
    /// <param name="today">The day of the visit: a label that was read more than a year before is to be read
    /// again.</param>
    public string Line(DateOnly today)
    {
        string number = RegistrationNumber is { } registered ? $", number {registered}" : "";
        string what = Says.IsEmpty ? "as the record says" : string.Join("; ", Says);
        string old =
            Read.AddYears(YearsFresh) < today ? " That was more than a year ago: read it again."
            : Read > today ? " It was read after the day of the visit."
            : "";
        return $"By your label of {Name}{number}, read {CalendarDay.Text(Read)}: " + $"{what}.{old}";
    }
}
