#pragma warning disable RS0030 // The entry of a program talks to the console.
using WeedAdvisor.Frozen;

// This program is copied into older states of the repository and built there: it uses only what all of them have.
return args switch
{
    ["draw", var rules, var folder, var count] => VisitsDrawn.Write(rules, folder, int.Parse(count, null)),
    ["make", var rules, var visits, var output] => Freezer.Make(rules, visits, output, Console.Out),
    ["compare", var before, var after] => Comparison.Print(before, after, Console.Out),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("frozen draw RULES FOLDER COUNT | make RULES VISITS OUT | compare BEFORE AFTER");
    return 2;
}
