namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// The ids of the questions that the program itself must know; all others are known to the rules only. Each stands here
/// once. A knowledge folder without such a question never tells what it asks.
/// </summary>
public static class QuestionIds
{
    /// <summary>The kind of place, one word.</summary>
    public const string Place = "place";

    /// <summary>What stands over it, one word.</summary>
    public const string Cover = "cover";

    /// <summary>Whether the house is heated, yes or no.</summary>
    public const string Heated = "heated";

    /// <summary>The name of the house.</summary>
    public const string House = "house";

    /// <summary>What stock stands there, one word.</summary>
    public const string Stock = "stock";

    /// <summary>Which crops, words.</summary>
    public const string Crops = "crops";

    /// <summary>How far the crop's growth is, one word.</summary>
    public const string Growth = "growth-state";

    /// <summary>Whether plants ship soon, yes or no.</summary>
    public const string Shipping = "shipping-soon";

    /// <summary>What comes next for the stock or the empty ground, one word.</summary>
    public const string ComesNext = "comes-next";

    /// <summary>The day on which that comes.</summary>
    public const string ComesNextOn = "comes-next-on";

    /// <summary>Whether the nursery or the crop is grown as organic, yes or no.</summary>
    public const string Organic = "organic";

    /// <summary>The region.</summary>
    public const string Region = "region";

    /// <summary>How moist the surface is, one word.</summary>
    public const string Moisture = "surface-moisture";

    /// <summary>What grows round about, one word.</summary>
    public const string Surroundings = "surroundings";

    /// <summary>How the pots stand, one word.</summary>
    public const string Spacing = "spacing";

    /// <summary>The mulch on the pots, one word.</summary>
    public const string Mulch = "mulch";

    /// <summary>How deep the mulch lies, centimetres.</summary>
    public const string MulchDepth = "mulch-depth";

    /// <summary>Weeks between two rounds of weeding.</summary>
    public const string Rounds = "weeding-interval";

    /// <summary>
    /// What an hour of labour costs, US dollars; also the id of the price that stands in for the answer.
    /// </summary>
    public const string Wage = "labour-rate";

    /// <summary>How many pots stand there.</summary>
    public const string Pots = "pots";

    /// <summary>How wide the pots are, centimetres.</summary>
    public const string PotWidth = "pot-width";

    /// <summary>Tools that are there, words.</summary>
    public const string Equipment = "equipment";

    /// <summary>Whether a licensed person is at hand: <c>yes</c> or <c>no</c>.</summary>
    public const string Licensed = "licensed";

    /// <summary>The day of potting.</summary>
    public const string PottedOn = "potted-on";

    /// <summary>Whether film goes on, yes or no.</summary>
    public const string CoveringPlanned = "covering-planned";

    /// <summary>The day film goes on.</summary>
    public const string CoveringDate = "covering-date";

    /// <summary>The weather of the visit's day, words.</summary>
    public const string Weather = "weather-today";

    /// <summary>The chemicals that lie in the store or are asked about, as they are called there.</summary>
    public const string InHand = "in-hand";

    /// <summary>Whether anything was put on lately, yes or no.</summary>
    public const string PutOnLately = "put-on-lately";

    /// <summary>The weeds that stand there.</summary>
    public const string Weeds = "weeds";

    /// <summary>Which weeds are to come, one word.</summary>
    public const string ExpectedWeeds = "expected-weeds";

    /// <summary>Earlier uses.</summary>
    public const string Past = "past";
}
