using System.CommandLine;
using System.CommandLine.Help;
using WeedAdvisor.Commands.Rates;
using WeedAdvisor.Commands.Weeding;

namespace WeedAdvisor.Commands;

/// <summary>All commands. Building the tree reads no knowledge and starts no engine: help must come at once.</summary>
internal static class CommandTree
{
    /// <param name="surroundings">What the program meets outside itself.</param>
    /// <param name="args">The arguments: the many rate sums become commands only when one is asked for.</param>
    public static RootCommand Of(Surroundings surroundings, string[] args)
    {
        var root = new RootCommand(
            "Advice on weeds in nurseries and greenhouses: what to do, what is barred and why. "
                + "It never replaces the label, the law or a licensed applicator."
        )
        {
            KnowledgeOption.Of(),
            KnowledgeOption.OfLocal(),
            LabelsOption.Of(),
            AskCommand.Of(surroundings),
            AdviseCommand.Of(surroundings),
            WhyCommand.Of(surroundings),
            PlanCommand.Of(surroundings),
            UnlockCommand.Of(surroundings),
            WhatIfCommand.Of(surroundings),
            LessonCommand.Of(surroundings),
            MoneyCommand.Of(surroundings),
            Season.SeasonCommand.Of(surroundings),
            IdentifyCommand.Of(surroundings),
            WeedingCommand.Of(surroundings),
            RateCommand.Of(surroundings, args),
            KnowledgeCommand.Of(surroundings),
            DemoCommand.Of(surroundings),
        };
        root.HelpName = CommandLine.Name;

        // Beside a command it would stand in the usage of every command.
        Argument<string?>? visit = null;
        if (!args.Any(arg => root.Subcommands.Any(command => command.Name == arg)))
            root.Add(visit = StartCommand.File());
        root.SetAction(parsed => StartCommand.Run(parsed, visit is null ? null : parsed.GetValue(visit), surroundings));
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        return root;
    }
}
