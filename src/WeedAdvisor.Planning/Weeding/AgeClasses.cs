using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// What a diameter by age says of each age: asked in every week of every plan that is priced, so it is worked out once.
/// </summary>
internal sealed class AgeClasses
{
    private readonly int[] _size;
    private readonly bool[] _growsOld;
    private readonly bool[] _growsOver;

    /// <summary>The classes of some diameters, centimetres, by age in weeks.</summary>
    public AgeClasses(ImmutableArray<double> diameterCm)
    {
        _size = [.. diameterCm.Select(PlantSizes.Of)];
        _growsOld = [.. Enumerable.Range(0, _size.Length).Select(age => GrowsInto(PlantSizes.FirstOld, age))];
        _growsOver = [.. Enumerable.Range(0, _size.Length).Select(age => GrowsInto(PlantSizes.FirstOvergrown, age))];
    }

    /// <summary>The class of <see cref="PlantSizes"/> by age.</summary>
    public ReadOnlySpan<int> Size => _size;

    /// <summary>By age, whether a plant that lives a week longer is then one of 10 cm for the first time.</summary>
    public ReadOnlySpan<bool> GrowsOld => _growsOld;

    /// <summary>By age, whether a plant that lives a week longer is then one of 20 cm for the first time.</summary>
    public ReadOnlySpan<bool> GrowsOver => _growsOver;

    private bool GrowsInto(int size, int age) => age + 1 < _size.Length && _size[age] < size && _size[age + 1] >= size;
}
