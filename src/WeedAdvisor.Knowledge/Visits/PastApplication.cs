using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// An earlier application in an area: of a record of the catalogue, or of a product that is not in it, told by its
/// actives, its groups or no more than its kind. What is left out is not known.
/// </summary>
/// <param name="Treatment">The treatment's id; null for a product that is not in the catalogue.</param>
/// <param name="Date">The day; null when not known.</param>
/// <param name="Result"><c>clean</c>, <c>escapes</c> or <c>injury</c>; null when not known.</param>
/// <param name="Escaped">Ids of the weeds that came through.</param>
public sealed record PastApplication(string? Treatment, DateOnly? Date, string? Result, WordSet Escaped)
{
    /// <summary>
    /// ISO common names of the actives of a product that is not in the catalogue; empty when not known.
    /// </summary>
    public WordSet Actives { get; init; } = WordSet.Empty;

    /// <summary>HRAC/WSSA codes of such a product; empty when not known.</summary>
    public WordSet Groups { get; init; } = WordSet.Empty;

    /// <summary><c>weed-killer</c> or <c>other-pesticide</c> for such a product; null when not known.</summary>
    public string? Kind { get; init; }

    /// <summary>The hour at which it ended; null when not known, which counts as the end of the day.</summary>
    public TimeOnly? Hour { get; init; }

    /// <summary>
    /// Product put on, in <see cref="RateUnit"/>; null when not known, which counts as the highest published rate.
    /// </summary>
    public decimal? Rate { get; init; }

    /// <summary>The unit of the rate, as records write it; null exactly when the rate is.</summary>
    public string? RateUnit { get; init; }

    /// <summary>How it was put on: a word of <see cref="PastWords.Methods"/>; null when not known.</summary>
    public string? Method { get; init; }

    /// <summary>Whether only a part of the area was treated; null when not known, which counts as the whole.</summary>
    public bool? PartOnly { get; init; }

    /// <summary>Whether it was watered in; null when not known.</summary>
    public bool? WateredIn { get; init; }

    /// <summary>Whether the house was aired afterwards as the law asks; null when not known.</summary>
    public bool? Aired { get; init; }

    /// <summary>Whether it drifted to where it does not belong, off this area or into it; null when not told.</summary>
    public bool? Drifted { get; init; }

    /// <summary><c>few</c> or <c>many</c> of the escaped weeds came through; null when not known.</summary>
    public string? CameThrough { get; init; }

    /// <summary>In how many seasons running they came through; null when not known.</summary>
    public int? SeasonsRunning { get; init; }
}

/// <summary>The words in which an earlier application is told.</summary>
public static class PastWords
{
    /// <summary>Kinds of product.</summary>
    public const string Kinds = "words:weed-killer|other-pesticide";

    /// <summary>Ways of putting it on.</summary>
    public const string Methods = "words:granules|low-coarse-spray|other-spray|mist-or-fog";

    /// <summary>Results.</summary>
    public const string Results = "words:clean|escapes|injury";

    /// <summary>How many weeds came through.</summary>
    public const string Amounts = "words:few|many";
}
