using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Catalogue;

namespace WeedAdvisor.Commands;

/// <summary><c>knowledge</c>: check, test, list, show and describe what the advice rests on.</summary>
internal static class KnowledgeCommand
{
    public static Command Of(Surroundings surroundings) =>
        new ExampleCommand(
            "knowledge",
            "Check, test and look up the knowledge that the advice rests on.",
            "weedadvisor knowledge list weeds",
            "weedadvisor knowledge show liverwort",
            "weedadvisor knowledge check --knowledge my-rules"
        )
        {
            Check(surroundings),
            WorkedVisitCommands.Test(surroundings),
            WorkedVisitCommands.Coverage(surroundings),
            List(surroundings),
            Show(surroundings),
            WorkedVisitCommands.Doc(surroundings),
        };

    private static ExampleCommand Check(Surroundings surroundings)
    {
        var command = new ExampleCommand(
            "check",
            "Read the knowledge, count what it holds, and name every problem.",
            "weedadvisor knowledge check",
            "weedadvisor knowledge check --knowledge my-rules"
        );
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            surroundings.Out.Write(CatalogueText.Counts(knowledge, surroundings.Today));
            return ExitCode.Done;
        });
        return command;
    }

    private static ExampleCommand List(Surroundings surroundings)
    {
        Argument<string> kind = LayoutOptions.OneOfArgument("CATALOGUE", "One of", KnowledgeCatalogue.Kinds);
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "list",
            "List the records of a catalogue: id and name.",
            "weedadvisor knowledge list weeds",
            "weedadvisor knowledge list judgements"
        )
        {
            kind,
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            ImmutableArray<CatalogueEntry> entries = KnowledgeCatalogue.Of(
                knowledge,
                parsed.GetRequiredValue(kind),
                surroundings.Today
            );
            surroundings.Out.Write(CatalogueText.List(entries, parsed.GetValue(width)));
            return ExitCode.Done;
        });
        return command;
    }

    private static ExampleCommand Show(Surroundings surroundings)
    {
        var id = new Argument<string>("ID") { Description = "The id of any record." };
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "show",
            "Show a record in full, with its sources.",
            "weedadvisor knowledge show liverwort",
            "weedadvisor knowledge show nothing-is-sprayed-over-unrooted-cuttings"
        )
        {
            id,
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            surroundings.Out.Write(
                Record(knowledge, parsed.GetRequiredValue(id), parsed.GetValue(width), surroundings.Today)
            );
            return ExitCode.Done;
        });
        return command;
    }

    private static string Record(KnowledgeBase knowledge, string id, int width, DateOnly today)
    {
        ImmutableArray<CatalogueEntry> entries = KnowledgeCatalogue.Find(knowledge, id, today);
        if (entries.IsEmpty)
        {
            string hint = UsageError.DidYouMean(id, KnowledgeCatalogue.Ids(knowledge));
            throw new RefusalException(
                ExitCode.Usage,
                $"no record '{id}'{hint}. See '{CommandLine.Name} knowledge list --help'."
            );
        }

        return CatalogueText.Show(entries, width);
    }
}
