using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>Draws earlier uses that tell all that can be told of one, each thing left out now and then.</summary>
/// <param name="knowledge">The words.</param>
internal sealed class UsesDrawn(KnowledgeBase knowledge)
{
    private const int DaysOfThisWeek = 7;
    private static readonly string[] s_flags = ["yes", "no"];
    private static readonly string[] s_results = ["clean", "clean", "escapes", "injury"];
    private static readonly string[] s_sprayed = ["low-coarse-spray", "other-spray", "mist-or-fog"];
    private static readonly string[] s_amounts = ["few", "many"];
    private readonly string[] _weeds = [.. knowledge.Weeds.Keys];
    private readonly string[] _treatments = [.. knowledge.Treatments.Keys];

    /// <summary>A use before a day, and whether it was, or may have been, in the week before that day.</summary>
    public (string Use, bool IsOfThisWeek) Use(DateOnly visit, Tape tape)
    {
        Treatment? record = tape.OnceIn(5) ? null : knowledge.Treatments[tape.Of(_treatments)];
        int daysAgo = tape.OnceIn(4) ? tape.Below(DaysOfThisWeek + 1) : 8 + tape.Below(500);
        bool isDated = !tape.OnceIn(8);
        string? result = tape.OnceIn(4) ? null : tape.Of(s_results);
        bool isEscaped = result == "escapes";
        Rate? rate = record?.Rates.FirstOrDefault(one => one.Product is not null);
        bool isRated = rate is not null && tape.OnceIn(2);
        (string Key, string? Value)[] told =
        [
            .. Product(record, tape),
            ("date", isDated ? AnswersDrawn.Day(visit.AddDays(-daysAgo)) : null),
            ("hour", tape.OnceIn(2) ? string.Create(CultureInfo.InvariantCulture, $"'{tape.Below(24):00}:30'") : null),
            ("rate", isRated ? Number(Between(rate!.Product!.Value.Low, rate.Product.Value.High, tape)) : null),
            ("rate-unit", isRated ? rate!.Unit : null),
            (
                "method",
                tape.OnceIn(3) ? null
                : record?.Formulation == "GR" ? "granules"
                : tape.Of(s_sprayed)
            ),
            ("part-only", Flag(tape)),
            ("watered-in", Flag(tape)),
            ("aired", Flag(tape)),
            ("drifted", tape.OnceIn(5) ? tape.Of(s_flags) : null),
            ("result", result),
            ("escaped", isEscaped && !tape.OnceIn(4) ? $"[{string.Join(", ", tape.Some(_weeds, 2))}]" : null),
            ("came-through", isEscaped && tape.OnceIn(2) ? tape.Of(s_amounts) : null),
            ("seasons-running", isEscaped && tape.OnceIn(2) ? Number(1 + tape.Below(3)) : null),
        ];
        var lines = told.Where(one => one.Value is not null).Select(one => $"{one.Key}: {one.Value}");
        return ($"{{ {string.Join(", ", lines)} }}", isDated && daysAgo <= DaysOfThisWeek);
    }

    // A product of the list, or one outside it: by its active, its group, or no more than its kind.
    private (string Key, string? Value)[] Product(Treatment? record, Tape tape)
    {
        if (record is not null)
            return [("treatment", record.Id)];
        Active active = tape.Of(knowledge.Treatments[tape.Of(_treatments)].Actives);
        return tape.Below(4) switch
        {
            0 => [("actives", $"['{active.Name}']"), ("kind", "weed-killer")],
            1 when active.Group is not null => [("groups", $"['{active.Group}']")],
            2 => [("kind", "other-pesticide")],
            _ => [("kind", "weed-killer")],
        };
    }

    private static string? Flag(Tape tape) => tape.OnceIn(2) ? null : tape.Of(s_flags);

    /// <summary>A number in a range, mostly one of its ends.</summary>
    public static decimal Between(decimal low, decimal high, Tape tape) =>
        tape.Below(3) switch
        {
            0 => low,
            1 => high,
            _ => decimal.Round((low + high) / 2, 2),
        };

    /// <summary>A number as files write it.</summary>
    public static string Number(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
