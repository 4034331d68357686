using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>The classes of size by which pulling time is counted.</summary>
public static class PlantSizes
{
    private static readonly double[] s_limits = [2.5, 5, 10, 20];

    /// <summary>How many classes there are.</summary>
    public const int Count = 5;

    /// <summary>The first class of a weed that has stood for long: from 10 cm.</summary>
    public const int FirstOld = 3;

    /// <summary>The first class of a weed that closes a pot: from 20 cm.</summary>
    public const int FirstOvergrown = 4;

    /// <summary>Their names, smallest first.</summary>
    public static ImmutableArray<string> Names { get; } =
    ["under 2.5 cm", "2.5 to 5 cm", "5 to 10 cm", "10 to 20 cm", "over 20 cm"];

    /// <summary>
    /// The class, 0 to 4, of a plant with this diameter in centimetres. A limit belongs to the larger class.
    /// </summary>
    public static int Of(double diameterCm)
    {
        int size = 0;
        while (size < s_limits.Length && diameterCm >= s_limits[size])
            size++;
        return size;
    }
}
