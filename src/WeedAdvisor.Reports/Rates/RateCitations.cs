using System.Collections.Frozen;
using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Rates;

/// <summary>
/// The sources of the rate sums, by key. They stand here because most sums are done without reading the knowledge.
/// </summary>
public static class RateCitations
{
    private static readonly ImmutableArray<Source> s_all =
    [
        new("common-practice", null, "Practice of the trade, without a published source", null, null, null, null),
        new("memory", null, "From memory, not confirmed", null, null, null, null),
        new(
            "consumer-drop",
            "consumer magazine",
            "How to calibrate a drop spreader",
            "2006",
            "Consumer Reports",
            "http://www.consumerreports.org/cro/home-garden/news/october-2006/fall-lawn-and-yard-checklist-10-06/how-to-calibrate-a-drop-spreader/0610_fall-lawn-and-yard-checklist_how-to-calibrate-a-drop-spreader.htm",
            null),
        new(
            "formulation-list",
            "Belgian weblog reproducing the code list",
            "Formulation codes: CropLife International Technical Monograph no. 2, 7th edition, revised March 2017",
            "2017",
            "copy of the CropLife International list",
            "https://tom.ji42.com/?p=22735",
            null),
        new(
            "gpn-spacing",
            "GPN magazine",
            "Grower 101: Calculations part IV: spacing containers",
            null,
            "GPN",
            "http://www.gpnmag.com/grower-101-calculations-part-iv-spacing-containers",
            null),
        new(
            "handbook-safety",
            "agrochemical safety handbook, p. 128 as stored",
            "Agrochemical and Pesticide Safety, examples 4 and 5",
            null,
            "text copy",
            "http://what-when-how.com/Tutorial/topic-166581h5j/Agrochemical-and-Pesticide-Safety-128.html",
            null),
        new(
            "ksu-conv",
            "Moorberg and Crouse",
            "Soils Laboratory Manual, Conversion Factors and Formulas",
            "2021",
            "Kansas State University Libraries (CC BY 4.0)",
            "https://kstatelibraries.pressbooks.pub/soilslabmanual/back-matter/conversion-factors-and-formulas/",
            null),
        new(
            "list-handheld",
            "fruit growers' mailing list post quoting extension text (points to a Virginia Cooperative Extension "
                + "publication)",
            "NAFEX list, March 2009, message 314",
            "2009",
            "ibiblio",
            "https://lists.ibiblio.org/sympa/nomenu/arc/nafex/2009-03/msg00314.html",
            null),
        new(
            "lsu-128",
            "LSU AgCenter (Barbosa, Koske, Parish)",
            "Ounces Equal Gallons: Sprayer Calibration",
            null,
            "LSU AgCenter, Louisiana",
            "https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/equipment/sprayers/ounces-equal-gallons-sprayer-calibration",
            null),
        new(
            "lsu-rotary",
            "LSU AgCenter",
            "Calibrating a broadcast (rotary) spreader, steps 1-7",
            "2019",
            "LSU AgCenter, Louisiana",
            "https://www.lsuagcenter.com/profiles/aiverson/articles/page1577117518190",
            null),
        new(
            "mesa-boom",
            "Mesa County (Colorado) weed and pest office",
            "Stationary Calibration Method for Boom Sprayers",
            null,
            "Mesa County, Colorado",
            "https://www.mesacounty.us/pest/controlling-weeds/sprayer-calibration-methods/stationary-calibration-method-for-boom-sprayers/",
            null),
        new(
            "mesa-handgun",
            "Mesa County (Colorado) weed and pest office",
            "How to Calibrate a Handgun",
            null,
            "Mesa County, Colorado",
            "https://www.mesacounty.us/pest/controlling-weeds/sprayer-calibration-methods/how-to-calibrate-a-handgun/",
            null),
        new(
            "mu-g1270a",
            "University of Missouri Extension",
            "G1270a nozzle flow worksheet",
            null,
            "University of Missouri",
            "https://extension.missouri.edu/publications/g1270a",
            null),
        new(
            "mu-g1272",
            "University of Missouri Extension",
            "G1272 pesticide amount for the spray tank",
            null,
            "University of Missouri",
            "http://extension.missouri.edu/publications/DisplayPrinterFriendlyPub.aspx?P=G1272",
            null),
        new(
            "ncsu-ag826",
            "NC State Extension",
            "Using a hand-cranked, hand-held spreader to apply herbicides in container nurseries, AG-826",
            null,
            "NC State Extension Publications",
            "https://content.ces.ncsu.edu/using-a-hand-cranked-hand-held-spreader-to-apply-herbicides-in-container-nurseries",
            null),
        new(
            "ncsu-backpack",
            "NC Cooperative Extension",
            "Backpack Sprayer Calibration Worksheet (Christmas trees)",
            null,
            "NC State University",
            "https://christmastrees.ces.ncsu.edu/backpack-sprayer-calibration-worksheet/",
            null),
        new(
            "ncsu-granular",
            "Amy Barker, Joe Neal, NC State Extension",
            "Calibrating Hand-Held Granular Spreaders for Nursery Weed Control",
            null,
            "NC State University",
            "https://content.ces.ncsu.edu/calibrating-hand-held-granular-spreaders-for-nursery-weed-control",
            null),
        new(
            "ncsu-handcrank",
            "NC State Extension",
            "Using a Hand-Cranked, Hand-Held Spreader to Apply Herbicides in Container Nurseries (AG-826)",
            null,
            "NC State University",
            "https://content.ces.ncsu.edu/using-a-hand-cranked-hand-held-spreader-to-apply-herbicides-in-container-nurseries",
            null),
        new(
            "ncsu-individual",
            "NC State Extension (photos J. Neal)",
            "Treating individual containers with herbicides",
            null,
            "NC State Extension Publications",
            "https://content.ces.ncsu.edu/treating-individual-containers-with-herbicides",
            null),
        new(
            "ncsu-onslow",
            "Kate Holt, NC Cooperative Extension, Onslow County",
            "Calibrating Your Spreader",
            "2017",
            "NC Cooperative Extension",
            "https://onslow.ces.ncsu.edu/2017/03/calibrating-your-spreader/",
            null),
        new(
            "ncsu-turf-cal",
            "NC State Extension",
            "The Calibration of Turfgrass Boom Sprayers and Spreaders",
            null,
            "NC State University",
            "https://content.ces.ncsu.edu/the-calibration-of-turfgrass-and-boom-sprayers-and-spreaders",
            null),
        new(
            "neveg",
            "New England Vegetable Management Guide",
            "Dilution and concentration tables",
            null,
            "New England land-grant universities",
            "https://nevegetable.org/book/export/html/244",
            null),
        new(
            "nsw-knapsack",
            "NSW Department of Primary Industries",
            "Calibration Method for knapsack and hand-held pneumatic sprayers, INT09/35816, p. 1-2",
            "2009",
            "NSW DPI, Australia",
            "https://studylib.net/doc/7747028/calibration-method-for-knapsack-and-hand",
            null),
        new(
            "osu-b817",
            "Ohio State University Extension",
            "Calibrating Turfgrass Chemical Application Equipment, Bulletin 817-00, low-pressure boom sprayers, Table "
                + "1",
            "2000",
            "Ohio State University",
            "http://ohioline.osu.edu/b817/b817_07.html",
            null),
        new(
            "porter-parish-1993",
            "Porter WC, Parish RL (authors from memory; Louisiana Agric. Exp. Stn. stated)",
            "Nontarget losses of granular herbicide applied to container-grown landscape plants",
            "1993",
            "J. Environ. Hort. 11(3):143-146",
            "https://jeh.kglmeridian.com/view/journals/jenh/11/3/article-p143.xml",
            null),
        new(
            "pressure-blog",
            "sprayer trade blog",
            "How pressure affects chemical application",
            null,
            "trade weblog",
            "https://sprayerguru.com/sprayers-and-pressure-how-pressure-affects-chemical-application/",
            null),
        new(
            "pressure-eng",
            "spray-drying engineering page",
            "Pressure nozzles: flow proportional to the root of pressure",
            null,
            "engineering firm page",
            "http://www.wilengin.com.sg/Video.htm",
            null),
        new(
            "sfm-5940",
            "sports field managers' magazine (New Jersey case)",
            "Sprayer calibration in a pinch",
            "2010",
            "trade magazine",
            "https://sportsfieldmanagementonline.com/2010/03/23/sprayer-calibration-in-a-pinch/4424/",
            null),
        new(
            "ucanr-area",
            "University of California ANR (S. Stone-Schmidt)",
            "Why Are Calculations Important? (area and mixing)",
            null,
            "UC ANR",
            "https://ucanr.edu/blogs/blogcore/postdetail.cfm?postnum=16761",
            null),
        new(
            "uiuc-ae",
            "University of Illinois IPM",
            "Herbicide Formulations and Calculations: Active Ingredient or Acid Equivalent? (weed fact sheet)",
            null,
            "University of Illinois; text copy",
            "https://online.documentine.com/24d-rate-per-acre/2/herbicide-formulations-and-calculations-active-ingredient.html",
            null),
        new(
            "va-dwr",
            "Virginia Department of Wildlife Resources",
            "Formulas for Determining Application Rates",
            null,
            "Commonwealth of Virginia",
            "https://dwr.virginia.gov/fishing/aquatic-plant-id-and-treatment/formulas-for-determining-application-rates/",
            null),
    ];

    private static readonly FrozenDictionary<string, Source> s_byKey =
        s_all.ToFrozenDictionary(source => source.Key, StringComparer.Ordinal);

    /// <summary>The source of a key; null when it is not in the list.</summary>
    public static Source? Find(string key) => s_byKey.GetValueOrDefault(key);
}
