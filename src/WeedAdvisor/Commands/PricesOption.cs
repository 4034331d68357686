using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;

namespace WeedAdvisor.Commands;

/// <summary>The grower's own prices.</summary>
internal static class PricesOption
{
    /// <summary>The option.</summary>
    public static Option<string?> Of() =>
        new("--prices") { Description = "A file with your own prices.", HelpName = "FILE" };

    /// <summary>The book of prices: the shipped ones, with those of the file in their place.</summary>
    /// <exception cref="RefusalException">The file is not there, or something in it is wrong.</exception>
    public static PriceBook Read(string? path, KnowledgeBase knowledge, Surroundings surroundings)
    {
        if (path is null)
            return PriceBook.Of(knowledge);
        string full = surroundings.FullPath(path);
        if (!File.Exists(full))
            throw new RefusalException(ExitCode.InputOutput, $"no price file '{path}'. Check the path.");
        Outcome<ImmutableList<Price>, Problem> prices = PriceFile.Read(full, knowledge);
        if (prices.IsGood)
            return PriceBook.Of(knowledge, prices.Value);
        throw new RefusalException(
            ExitCode.Usage,
            prices.Refusals.Select(problem => problem with { Where = problem.Where with { File = path } }),
            prices.Refusals.Length == 1
                ? null
                : $"{prices.Refusals.Length} problems in '{path}'. Mend them and run it again."
        );
    }
}
