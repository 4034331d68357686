using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What the page says of a crop to be stood apart is held against the advice on the same area without that crop.
/// </summary>
public sealed class CropApartTests
{
    private const string Crops = "crops";

    [Fact]
    public void The_crop_apart_alone_bars_as_many_as_are_free_without_it()
    {
        (VisitArea block, Visit visit) = Block("boxwood", "hollies", "hydrangeas");
        string page = Page(visit, block);
        HashSet<string> barred = BarredIn(visit, block);
        HashSet<string> without = BarredIn(visit, With(block, "boxwood", "hollies"));
        int freed = barred.Except(without).Count();
        Assert.True(freed >= 3);
        Assert.Contains($"Stand Hydrangeas apart: they alone bar {freed} chemicals", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_crop_is_never_stood_apart()
    {
        (VisitArea block, Visit visit) = Block("hydrangeas");
        Assert.DoesNotContain("apart:", Page(visit, block), StringComparison.Ordinal);
    }

    [Fact]
    public void Crops_that_share_their_bars_are_not_stood_apart()
    {
        (VisitArea block, Visit visit) = Block("hydrangeas", "ferns");
        Assert.DoesNotContain("Stand Hydrangeas apart", Page(visit, block), StringComparison.Ordinal);
    }

    private static (VisitArea Block, Visit Visit) Block(params string[] crops)
    {
        Visit visit = ShippedRules.Visit("container-yard-with-spurge");
        VisitArea block = With(visit.Areas[0], crops);
        return (block, visit);
    }

    private static VisitArea With(VisitArea area, params string[] crops) =>
        area with
        {
            Answers = area.Answers.SetItem(Crops, new Answer.Words(WordSet.Of(crops))),
        };

    private static HashSet<string> BarredIn(Visit visit, VisitArea area) =>
        [
            .. AdviceOn(visit, area)
                .Areas[0]
                .Barred.Select(one => one.Action)
                .Where(ShippedRules.Knowledge.Treatments.ContainsKey),
        ];

    private static VisitAdvice AdviceOn(Visit visit, VisitArea area) =>
        ShippedRules.Advisor.Advise(visit with { Areas = [area] });

    private static string Page(Visit visit, VisitArea area) =>
        string.Join(
            ' ',
            TextReport
                .Of(AdviceOn(visit, area), ShippedRules.Knowledge, new TextLayout())
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        );
}
