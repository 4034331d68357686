using System.CommandLine;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Rates;

namespace WeedAdvisor.Commands.Rates;

/// <summary><c>rate</c>: the rate sums, one command each, made from their forms.</summary>
internal static class RateCommand
{
    private const string Name = "rate";
    private const int ExampleColumns = 76;

    public static Command Of(Surroundings surroundings, string[] args)
    {
        // Help at the root must come at once; a completion has the whole line in one argument.
        bool isAsked = args.Any(arg => arg.Contains(Name, StringComparison.Ordinal));
        Option<int> columns = LayoutOptions.Columns();
        var command = new ExampleCommand(
            Name,
            "Work out rates: calibrate sprayers and spreaders, product for an area or a tank.",
            isAsked ? Examples() : []
        )
        {
            columns,
        };
        command.SetAction(parsed =>
        {
            surroundings.Out.Write(DocumentText.Of(RateListDocument.Of(RateForms.Groups), parsed.GetValue(columns)));
            return ExitCode.Done;
        });
        if (isAsked)
        {
            foreach (RateGroup group in RateForms.Groups)
                command.Add(Group(group, surroundings));
        }

        return command;
    }

    private static string[] Examples() =>
        [
            "weedadvisor rate",
            $"weedadvisor rate {RateForms.Groups[0].Id}",
            .. RateCommandLine.Example(RateForms.Groups[0].Forms[0], ExampleColumns),
        ];

    private static ExampleCommand Group(RateGroup group, Surroundings surroundings)
    {
        Option<int> columns = LayoutOptions.Columns();
        string[] examples = [.. group.Forms.SelectMany(form => RateCommandLine.Example(form, ExampleColumns))];
        var command = new ExampleCommand(group.Id, group.Title + ".", examples) { columns };
        command.SetAction(parsed =>
        {
            surroundings.Out.Write(
                DocumentText.Of(RateListDocument.Of(group, parsed.GetValue(columns)), parsed.GetValue(columns))
            );
            return ExitCode.Done;
        });
        foreach (var form in group.Forms)
            command.Add(RateFormCommand.Of(form, surroundings));
        return command;
    }
}
