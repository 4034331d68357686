using System.CommandLine;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Commands;

/// <summary>Options on how text is laid out, and arguments that are one of a few words.</summary>
internal static class LayoutOptions
{
    private const int UsualWidth = 80;

    /// <summary>Columns of the page.</summary>
    public static Option<int> Width() => Width("--width");

    /// <summary>Columns of the page, for commands whose <c>--width</c> is a width in the field.</summary>
    public static Option<int> Columns() => Width("--columns");

    private static Option<int> Width(string name) =>
        NumberOptions.Whole(
            name,
            "N",
            "Columns of the text.",
            Page.Narrowest,
            Page.Widest,
            UsualWidth,
            FormattableString.Invariant($"a number from {Page.Narrowest} to {Page.Widest}")
        );

    /// <summary>Whether the text shows everything.</summary>
    public static Option<bool> Full() =>
        new("--full") { Description = "Show everything, not only what is needed first, in every format." };

    /// <summary>An option that takes one of a few words; the first is the usual one.</summary>
    public static Option<string> OneOf(string name, string description, params string[] words) =>
        Limited(new Option<string>(name) { Description = description, DefaultValueFactory = _ => words[0] }, words);

    /// <summary>An option that takes one of a few words; null when it is not given.</summary>
    public static Option<string?> OneOfOrNone(string name, string description, params string[] words) =>
        Limited(new Option<string?>(name) { Description = description }, words);

    private static Option<T> Limited<T>(Option<T> option, string[] words)
    {
        option.HelpName = string.Join('|', words);
        option.CompletionSources.Add(words);
        option.Validators.Add(result =>
        {
            string? given = result.GetValueOrDefault<string>();
            if (given is not null && Complaint(option.Name, given, words) is { } complaint)
                result.AddError(complaint);
        });
        return option;
    }

    /// <summary>An argument that is one of a few words.</summary>
    public static Argument<string> OneOfArgument(string name, string description, IReadOnlyCollection<string> words)
    {
        var argument = new Argument<string>(name)
        {
            HelpName = name,
            Description = $"{description}: {string.Join(", ", words)}.",
        };
        argument.CompletionSources.Add([.. words]);
        argument.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string>() is { } given && Complaint(name, given, words) is { } complaint)
                result.AddError(complaint);
        });
        return argument;
    }

    private static string? Complaint(string name, string given, IReadOnlyCollection<string> words) =>
        words.Contains(given)
            ? null
            : $"{name} is one of {string.Join(", ", words)}, not '{given}'" + UsageError.DidYouMean(given, words);
}
