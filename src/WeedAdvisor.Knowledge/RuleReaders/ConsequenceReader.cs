using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>Reads the one consequence of a rule and holds it against the actions that the rule matches.</summary>
internal static class ConsequenceReader
{
    private const int MostOrder = 99;

    private static readonly string[] s_keys = ["finding", "support", "doubt", "bar", "caution"];

    /// <summary>The consequence, or a problem and null.</summary>
    /// <param name="map">The rule.</param>
    /// <param name="actions">How many patterns on actions the rule has, outside none and any.</param>
    /// <param name="variables">The variables that the conditions bind.</param>
    public static Consequence? Read(MappingReader map, int actions, VariableScope variables)
    {
        Consequence?[] all =
        [
            Finding(map),
            Argument(map, "support"),
            Argument(map, "doubt"),
            Bar(map, variables),
            Caution(map),
        ];
        int count = s_keys.Count(map.Has);
        if (count != 1)
        {
            map.Context.Report(map.Node, $"{count} consequences", $"exactly one of {string.Join(", ", s_keys)}");
            return null;
        }

        if (all.OfType<Consequence>().FirstOrDefault() is not { } found)
            return null;
        CheckActions(map, found, actions);
        return found;
    }

    private static void CheckActions(MappingReader map, Consequence consequence, int actions)
    {
        (bool isGood, string expected) = consequence switch
        {
            Consequence.MakesFinding => (
                actions == 0,
                "none: a finding is about the area; put the action inside 'any' or 'none'"
            ),
            Consequence.Caution => (actions <= 1, "at most one: the action that the caution goes with"),
            _ => (actions == 1, "exactly one: the action that the rule is about"),
        };
        if (!isGood)
            map.Context.Report(map.Node, $"{actions} practice, treatment or action patterns", expected);
    }

    private static Consequence.MakesFinding? Finding(MappingReader map)
    {
        if (map.OptionalMap("finding", "a finding") is not { } finding)
            return null;
        var consequence = new Consequence.MakesFinding(finding.Word("id", "findings"), finding.Certainty("certainty"));
        finding.Finish();
        return consequence;
    }

    private static Consequence.Argument? Argument(MappingReader map, string key) =>
        !map.Has(key) ? null
        : key == "doubt"
            ? new Consequence.Argument(map.Certainty(key), IsDoubt: true, map.OptionalFlag("after-cleaning"))
            {
                OneOf = map.OptionalWord("one-of", "list:one-of"),
            }
        : new Consequence.Argument(map.Certainty(key), IsDoubt: false);

    private static Consequence.Bar? Bar(MappingReader map, VariableScope variables)
    {
        Lift lift = LiftReader.Read(map, variables);
        return map.OptionalWord("bar", "words:prohibited|unsuitable") is { } severity
            ? new Consequence.Bar(severity == "prohibited" ? Severity.Prohibited : Severity.Unsuitable, lift)
            : null;
    }

    private static Consequence.Caution? Caution(MappingReader map) =>
        map.OptionalText("caution") is { } text
            ? Protecting(new Consequence.Caution(text, (int?)map.OptionalNumber("order", 1, MostOrder)), map)
            : null;

    private static Consequence.Caution Protecting(Consequence.Caution caution, MappingReader map)
    {
        string? whom = map.OptionalWord("protects", "words:people|crop|water|result");
        return caution with
        {
            ProtectsPeople = whom == "people",
            ProtectsCrop = whom == "crop",
            ProtectsWater = whom == "water",
            SavesTheResult = whom == "result",
        };
    }
}
