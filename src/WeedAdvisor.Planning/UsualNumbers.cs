using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning;

/// <summary>What is taken where neither the visit nor a record says it, from <c>rules/usual.yaml</c>.</summary>
public sealed class UsualNumbers
{
    private readonly ImmutableSortedDictionary<string, UsualNumber> _numbers;

    private UsualNumbers(ImmutableSortedDictionary<string, UsualNumber> numbers) => _numbers = numbers;

    /// <summary>A value, in the unit that its id names.</summary>
    /// <param name="id">One of <see cref="UsualIds"/>.</param>
    public decimal this[string id] => _numbers[id].Value;

    /// <summary>The numbers of the knowledge, or the ids that it lacks.</summary>
    public static (UsualNumbers? Numbers, ImmutableArray<string> Missing) Of(KnowledgeBase knowledge)
    {
        ImmutableArray<string> missing = [.. UsualIds.All.Where(id => !knowledge.Usual.ContainsKey(id))];
        return missing.IsEmpty ? (new UsualNumbers(knowledge.Usual), []) : (null, missing);
    }

    /// <summary>What to say of ids that the knowledge lacks.</summary>
    public static string Lacking(ImmutableArray<string> missing) =>
        $"The knowledge lacks what is taken for usual: {string.Join(", ", missing)} in usual.yaml.";

    internal int Whole(string id) => (int)decimal.Ceiling(this[id]);
}
