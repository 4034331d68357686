using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>One step of the work of a use, or one thing that it takes.</summary>
/// <param name="Id">Names it, so that the same line is found in every report.</param>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Amount">Hours of work, or US dollars of what is used up, from the least to the most.</param>
/// <param name="Working">The sum that gives the amount.</param>
public sealed record CostLine(string Id, string Name, Span Amount, string Working);

/// <summary>The smallest pack that has to be bought before the first use.</summary>
/// <param name="Holds">What it holds, such as <c>20 kg</c>.</param>
/// <param name="Usd">What it costs, US dollars.</param>
public sealed record SmallestPack(string Holds, decimal Usd);
