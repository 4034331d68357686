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
            "jeh-losses",
            "Louisiana Agricultural Experiment Station authors",
            "Nontarget Losses of Granular Herbicide Applied to Container-grown Landscape Plants, J. Environ. Hort. 11(3):143-146",
            "1993",
            "Journal of Environmental Horticulture",
            "https://jeh.kglmeridian.com/view/journals/jenh/11/3/article-p143.xml",
            null),
        new(
            "larimer",
            "Larimer County (Colorado) weed district",
            "Single Nozzle Sprayer Calibration",
            null,
            "Larimer County, Colorado",
            "http://www.larimer.org/weeds/calibration.htm",
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
            "ncsu-onslow",
            "Kate Holt, NC Cooperative Extension, Onslow County",
            "Calibrating Your Spreader",
            "2017",
            "NC Cooperative Extension",
            "https://onslow.ces.ncsu.edu/2017/03/calibrating-your-spreader/",
            null),
        new(
            "ncsu-pots",
            "NC State Extension (J. Neal)",
            "Treating Individual Containers with Herbicides, text before Table 1",
            null,
            "NC State University",
            "https://content.ces.ncsu.edu/treating-individual-containers-with-herbicides",
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
            "nist-811-copy",
            "NIST, quoted in comments of two open-source unit tables",
            "Guide to the SI (SP 811) Appendix B factor list, as quoted",
            null,
            "text copy of NIST SP 811",
            null,
            null),
        new(
            "nist-hb44c",
            "NIST",
            "Handbook 44 Appendix C, General Tables of Units of Measurement (only the contents page and introduction could be read)",
            "2012",
            "NIST",
            "https://docslib.org/doc/6734737/appendix-c-general-tables-of-units-of-measurement",
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
            "Calibrating Turfgrass Chemical Application Equipment, Bulletin 817-00, low-pressure boom sprayers, Table 1",
            "2000",
            "Ohio State University",
            "http://ohioline.osu.edu/b817/b817_07.html",
            null),
        new(
            "pnw-container-area",
            "Pacific Northwest Weed Management Handbook",
            "Container growing areas",
            null,
            "OSU, WSU, UI",
            "http://www.pnwhandbooks.org/weed/horticultural/nursery-greenhouse-bulb/container-grown-nursery-stock/container-growing-areas",
            null),
        new(
            "pnw-units",
            "Pacific Northwest Weed Management Handbook",
            "Weights and Measures; Pints of Commercial Material; Amount of Chemical Needed (node 328)",
            null,
            "Oregon State University, Washington State University, University of Idaho",
            "https://www.pnwhandbooks.org/node/328/print",
            null),
    ];

    private static readonly FrozenDictionary<string, Source> s_byKey =
        s_all.ToFrozenDictionary(source => source.Key, StringComparer.Ordinal);

    /// <summary>The source of a key; null when it is not in the list.</summary>
    public static Source? Find(string key) => s_byKey.GetValueOrDefault(key);
}
