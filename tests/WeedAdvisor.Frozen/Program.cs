#pragma warning disable RS0030 // The entry of a program talks to the console.
using System.Globalization;
using WeedAdvisor.Frozen;
using WeedAdvisor.Frozen.Drawn;

// This program is copied into older states of the repository and built there: it uses only what all of them have. Of
// Surroundings it leaves out OpenScreens, whose type changed, and which no command that takes a visit asks for.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
return args switch
{
    ["draw", var rules, var folder, var count] => VisitsDrawn.Write(
        rules,
        folder,
        int.Parse(count, CultureInfo.InvariantCulture)
    ),
    ["draw-present", var rules, var folder, var count] => PresentVisits.Write(
        rules,
        folder,
        int.Parse(count, CultureInfo.InvariantCulture),
        Console.Out
    ),
    ["make", var rules, var visits, var output, "quick"] => Freezer.Make(
        rules,
        visits,
        output,
        FrozenCommands.Quick,
        Console.Out
    ),
    ["make", var rules, var visits, var output, .. var only] => Freezer.Make(rules, visits, output, only, Console.Out),
    ["compare", var before, var after, var list] => Comparison.Print(before, after, list, false, Console.Out),
    ["compare", var before, var after, var list, "quick"] => Comparison.Print(before, after, list, true, Console.Out),
    ["cleared", var before, var after] => Comparison.PrintCleared(before, after, Console.Out),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine(
        "frozen draw RULES FOLDER COUNT | draw-present RULES FOLDER COUNT"
            + " | make RULES VISITS OUT [quick | NAME...] | compare BEFORE AFTER LIST [quick]"
            + " | cleared BEFORE AFTER"
    );
    return 2;
}
