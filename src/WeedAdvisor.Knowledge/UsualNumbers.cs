using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge;

/// <summary>What is taken where neither the visit nor a record says it: all of <see cref="UsualIds"/>.</summary>
/// <param name="records">The numbers by id, as <c>usual.yaml</c> has them.</param>
public sealed class UsualNumbers(ImmutableSortedDictionary<string, UsualNumber> records)
{
    /// <summary>The numbers with their names and sources, by id.</summary>
    public ImmutableSortedDictionary<string, UsualNumber> Records { get; } = records;

    /// <summary>A value, in the unit that its id names.</summary>
    /// <param name="id">One of <see cref="UsualIds"/>.</param>
    /// <exception cref="KeyNotFoundException">It is none of them.</exception>
    public decimal this[string id] => Records[id].Value;

    /// <summary>A value made whole: a part of a week or of a use counts as one.</summary>
    /// <param name="id">One of <see cref="UsualIds"/>.</param>
    /// <exception cref="KeyNotFoundException">It is none of them.</exception>
    public int Whole(string id) => (int)decimal.Ceiling(this[id]);
}
