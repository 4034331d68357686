namespace WeedAdvisor.Planning.Tests.Weeding.Trade;

/// <summary>
/// The model beside survey figures per acre. Trade #3 pots on 15-inch squares are 27878 to the acre of bed; beds are
/// taken to be six tenths of the ground (an assumption). Herbicide three times a year is taken to stop 80 %.
/// </summary>
public sealed class AcreFiguresTests
{
    private const double LargePots = 27_878,
        SmallPots = 62_726,
        BedShare = 0.6;

    // gilliam-1990: 70 to 143 hours an acre (worked out from cost and wage), 32 nurseries, three applications a year.
    [Fact]
    public void Hours_per_acre_lie_within_the_survey() => Assert.InRange(HoursPerAcre(LargePots, 0.8), 70, 143);

    // gilliam-1990: 246 to 567 dollars an acre at wages of 3.53 to 3.97 dollars.
    [Theory]
    [InlineData(3.53)]
    [InlineData(3.97)]
    public void Cost_per_acre_lies_within_the_survey_at_its_wages(double wage) =>
        Assert.InRange(HoursPerAcre(LargePots, 0.8) * wage, 246, 567);

    // aces-containers: 500 to 4000 dollars an acre.
    [Theory]
    [InlineData(0.7)]
    [InlineData(0.8)]
    [InlineData(0.9)]
    public void Cost_per_acre_of_larger_pots_lies_within_500_to_4000_dollars(double control) =>
        Assert.InRange(HoursPerAcre(LargePots, control) * Yard.Wage, 500, 4000);

    // nm-2018: weed control as a whole, herbicide among it, costs more than 4000 dollars an acre. Small pots on 10-inch
    // squares (62726 to the acre of bed) reach that by hand weeding alone.
    [Fact]
    public void Small_pots_close_together_cost_over_4000_dollars_an_acre() =>
        Assert.InRange(HoursPerAcre(SmallPots, 0.8) * Yard.Wage, 4000, 12_000);

    private static double HoursPerAcre(double potsPerAcreOfBed, double control) =>
        Yard.Run(Yard.Setup(Yard.SixWeeds) with { Control = control }, 2).Hours * potsPerAcreOfBed * BedShare / 1000;
}
