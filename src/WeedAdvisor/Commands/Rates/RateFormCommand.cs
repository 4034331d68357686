using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Asking;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Rates;

namespace WeedAdvisor.Commands.Rates;

/// <summary>The command of one rate sum: an option for each field of its form.</summary>
internal static class RateFormCommand
{
    private const int ExampleColumns = 76;

    /// <summary>Words that a field of a form must not have as its id.</summary>
    public static ImmutableArray<string> Reserved { get; } =
    ["format", "units", "columns", "visit", "visit-area", "knowledge", "help", "version"];

    public static Command Of(RateForm form, Surroundings surroundings)
    {
        ImmutableArray<Option<string?>> fields = [.. form.Fields.Select(OptionOf)];
        Option<string> format = FormatOption.Of("How the result is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> columns = LayoutOptions.Columns();
        var command = new ExampleCommand(
            form.Id,
            $"{form.Title}. {form.About}",
            [.. RateCommandLine.Example(form, ExampleColumns)]
        );
        foreach (Option<string?> field in fields)
            command.Add(field);
        RateSiteOptions? site = form.MayReadArea ? RateSiteOptions.AddTo(command) : null;
        command.Add(format);
        command.Add(units);
        command.Add(columns);
        command.SetAction(parsed =>
        {
            string? written = parsed.GetValue(format);
            RateSite? place = site?.Read(parsed, surroundings)
                ?? (form.NeedsKnowledge ? Nowhere(parsed, surroundings) : null);
            ImmutableSortedDictionary<string, Source> sources = place?.Knowledge.Sources
                ?? KnowledgeOption.Sources(parsed, surroundings);
            Dictionary<string, string> typed = Typed(form, fields, parsed);
            if (typed.Count == 0 && surroundings.IsInputTerminal && written == FormatOption.Text)
            {
                var lines = new Lines(surroundings.In, surroundings.Out, echo: false);
                new RateDialogue(form, place, sources, lines, parsed.GetValue(columns))
                {
                    Units = UnitsWords.Find(parsed.GetValue(units)) ?? place?.Units,
                }.Run();
                return ExitCode.Done;
            }

            RateReport report = Done(form, typed, place, sources);
            surroundings.Out.Write(
                written == FormatOption.Json
                    ? RateJson.Of(report)
                    : FormatOption.Written(
                        written,
                        UnitsOption.Applied(RateDocument.Of(report), parsed.GetValue(units), place?.Units),
                        parsed.GetValue(columns)
                    )
            );
            return ExitCode.Done;
        });
        return command;
    }

    private static RateSite Nowhere(ParseResult parsed, Surroundings surroundings) =>
        new(KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.WithoutWorkedVisits), null, null);

    private static Option<string?> OptionOf(RateField field)
    {
        var option = new Option<string?>($"--{field.Id}")
        {
            Description = $"{field.Label} ({FieldText.Hint(field)}). {field.Help}",
            HelpName = FieldText.Placeholder(field),
        };
        if (field.Kind is RateFieldKind.Choice choice)
            option.CompletionSources.Add([.. choice.Words.Select(word => word.Key)]);
        return option;
    }

    private static Dictionary<string, string> Typed(
        RateForm form,
        ImmutableArray<Option<string?>> options,
        ParseResult parsed
    )
    {
        var typed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((RateField field, Option<string?> option) in form.Fields.Zip(options))
        {
            if (parsed.GetValue(option) is { } text)
                typed.Add(field.Id, text);
        }

        return typed;
    }

    private static RateReport Done(
        RateForm form,
        Dictionary<string, string> typed,
        RateSite? site,
        ImmutableSortedDictionary<string, Source> sources
    )
    {
        Outcome<RateAnswer, RateProblem> outcome = form.Run(typed, site);
        if (outcome.Value is not { } answer)
        {
            throw new RefusalException(
                ExitCode.Usage,
                [.. outcome.Refusals.Select(problem => $"--{problem.Field}: {problem.Text}")]
            );
        }

        return new RateReport(form, RateEntry.AllOf(form, typed, site), answer, sources);
    }
}
