using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Something that patterns are matched against: a key that says what it is, and what is known of its attributes. Two
/// facts with the same key are the same fact, however much more is known of one of them. Immutable.
/// </summary>
public abstract class Fact : IEquatable<Fact>
{
    private readonly IReadOnlyDictionary<string, Reading> _readings;
    private readonly int _hash;

    // Read for every pattern of every rule: most readings come in a dictionary, which is quicker asked as what it is.
    private readonly Dictionary<string, Reading>? _own;

    private protected Fact(string key, string name, IReadOnlyDictionary<string, Reading> readings)
    {
        Key = key;
        _hash = key.GetHashCode(StringComparison.Ordinal);
        Name = name;
        _readings = readings;
        _own = readings as Dictionary<string, Reading>;
    }

    /// <summary>What it is, such as <c>weed/liverwort</c>; unique among all facts of an area.</summary>
    public string Key { get; }

    /// <summary>Its name in a reason.</summary>
    public string Name { get; }

    /// <summary>What is known, attribute by attribute.</summary>
    internal IReadOnlyDictionary<string, Reading> Readings => _readings;

    /// <summary>What is known of an attribute; an attribute that this kind of fact does not have is absent.</summary>
    public Reading Read(string attribute) => Find(attribute) ?? Reading.Absent;

    /// <summary>Whether the same is known of the same fact.</summary>
    public bool SaysTheSame(Fact other) =>
        ReferenceEquals(this, other)
        || Key == other.Key
            && Name == other.Name
            && _readings.Count == other._readings.Count
            && (_own is null ? ReadsTheSame(_readings, other) : ReadsTheSame(_own, other));

    private Reading? Find(string attribute)
    {
        if (_own is not null)
            return _own.GetValueOrDefault(attribute);
        return _readings.TryGetValue(attribute, out Reading? reading) ? reading : null;
    }

    private static bool ReadsTheSame(IEnumerable<KeyValuePair<string, Reading>> readings, Fact other) =>
        readings.All(pair => other.Find(pair.Key) == pair.Value);

    private static bool ReadsTheSame(Dictionary<string, Reading> readings, Fact other)
    {
        foreach ((string attribute, Reading reading) in readings)
        {
            if (other.Find(attribute) != reading)
                return false;
        }

        return true;
    }

    /// <inheritdoc/>
    public bool Equals(Fact? other) => other is not null && GetType() == other.GetType() && Key == other.Key;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Fact);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash;

    /// <inheritdoc/>
    public override string ToString() => Key;
}

/// <summary>The area with its answers.</summary>
public sealed class SiteFact(IReadOnlyDictionary<string, Reading> readings) : Fact("site", "this area", readings);

/// <summary>A weed seen.</summary>
public sealed class WeedFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"weed/{id}", name, readings);

/// <summary>A crop that stands in the area.</summary>
public sealed class CropFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"crop/{id}", name, readings);

/// <summary>An earlier application.</summary>
public sealed class PastFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"past/{id}", name, readings);

/// <summary>An application whose entry interval runs, or may run, on the day of the visit.</summary>
public sealed class ClosureFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"closure/{id}", name, readings);

/// <summary>A limit of an active that keeps treatments out, or may do so.</summary>
public sealed class LimitFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"limit/{id}", name, readings);

/// <summary>A weed that came through a site of action although it is rated good on it, or may have done so.</summary>
public sealed class EscapeFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : Fact($"escape/{id}", name, readings);

/// <summary>A practice or a treatment of the catalogue.</summary>
public abstract class ActionFact : Fact
{
    private protected ActionFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
        : base($"action/{id}", name, readings) => Id = id;

    /// <summary>The action's id.</summary>
    public string Id { get; }
}

/// <summary>A non-chemical action of the catalogue.</summary>
public sealed class PracticeFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : ActionFact(id, name, readings);

/// <summary>A chemical use of the catalogue.</summary>
public sealed class TreatmentFact(string id, string name, IReadOnlyDictionary<string, Reading> readings)
    : ActionFact(id, name, readings);
