using System.CommandLine;
using WeedAdvisor.Asking;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Commands;

/// <summary><c>identify</c>: which weed it is, from what can be seen of it.</summary>
internal static class IdentifyCommand
{
    public static Command Of(Surroundings surroundings)
    {
        var seen = new Argument<string[]>("FEATURE")
        {
            Description = "Features seen, by word or text; without any, questions are asked line by line.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var absent = new Option<string[]>("--not")
        {
            Description = "Features that you looked for and that are not there.",
            HelpName = "FEATURE",
            Arity = ArgumentArity.OneOrMore,
            AllowMultipleArgumentsPerToken = true,
        };
        var list = new Option<bool>("--list") { Description = "List the features that can be named." };
        Option<string> format = LayoutOptions.OneOf("--format", "How the result is written.", "text", "json");
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "identify",
            "Find out which weed it is, by what can be seen of it.",
            "weedadvisor identify",
            "weedadvisor identify three-heart-shaped-leaflets flat-mat",
            "weedadvisor identify \"milky sap\" --not upright-stem twining-stems",
            "weedadvisor identify --list"
        )
        {
            seen,
            absent,
            list,
            format,
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.WithoutWorkedVisits);
            bool json = parsed.GetValue(format) == "json";
            string[] named = parsed.GetValue(seen) ?? [],
                denied = parsed.GetValue(absent) ?? [];
            if (parsed.GetValue(list))
                List(new FeatureList(knowledge), json, parsed.GetValue(width), surroundings.Out);
            else if (named.Length + denied.Length > 0)
                Tell(knowledge, named, denied, json, parsed.GetValue(width), surroundings.Out);
            else
                Ask(knowledge, json, surroundings);
            return ExitCode.Done;
        });
        return command;
    }

    private static void Tell(
        KnowledgeBase knowledge,
        string[] named,
        string[] denied,
        bool json,
        int width,
        TextWriter output
    )
    {
        var key = new WeedKey(knowledge);
        string[] seen = [.. named.Select(name => Find(key.Features, name))];
        string[] absent = [.. denied.Select(name => Find(key.Features, name))];
        if (seen.Intersect(absent).FirstOrDefault() is { } both)
            throw new RefusalException(
                ExitCode.Usage,
                $"feature '{both}' cannot be both there and not there. Leave one out."
            );
        Identification found = key.Of(Sighting.Of(seen, absent));
        output.Write(
            json ? IdentifyJson.Of(found, knowledge, key.Features) : IdentifyText.Of(found, key.Features, width)
        );
    }

    private static void Ask(KnowledgeBase knowledge, bool json, Surroundings surroundings)
    {
        if (json)
            throw new RefusalException(
                ExitCode.Usage,
                "--format json needs a feature. Questions are asked in text only."
            );
        var lines = new Lines(surroundings.In, surroundings.Out, echo: !surroundings.IsInputTerminal);
        new IdentifyDialogue(new Narrowing(knowledge), lines, picks: false).Run();
    }

    private static void List(FeatureList features, bool json, int width, TextWriter output) =>
        output.Write(json ? IdentifyJson.Of(features) : IdentifyText.Of(features, width));

    private static string Find(FeatureList features, string name)
    {
        Typed<string> found = FeatureNames.Find(features, name);
        return found.Value
            ?? throw new RefusalException(ExitCode.Usage, $"{found.Error}. See '{CommandLine.Name} identify --list'.");
    }
}
