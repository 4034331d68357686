using System.Numerics;

namespace WeedAdvisor.Inference.Catalogue;

/// <summary>
/// A set of actions of one catalogue, by their place in it. Immutable. Sets of different catalogues must not be mixed.
/// </summary>
internal readonly struct ActionSet : IEquatable<ActionSet>
{
    private const int BitsInPart = 64;

    private readonly ulong[] _parts;

    private ActionSet(ulong[] parts) => _parts = parts;

    /// <summary>Whether no action is in it.</summary>
    public bool IsEmpty => Array.TrueForAll(_parts, part => part == 0);

    /// <summary>The actions of a catalogue that pass.</summary>
    /// <param name="count">How many actions the catalogue has.</param>
    /// <param name="passes">Whether the action at a place belongs to the set.</param>
    public static ActionSet Where(int count, Func<int, bool> passes)
    {
        ulong[] parts = new ulong[(count + BitsInPart - 1) / BitsInPart];
        for (int place = 0; place < count; place++)
        {
            if (passes(place))
                parts[place / BitsInPart] |= 1UL << (place % BitsInPart);
        }

        return new ActionSet(parts);
    }

    /// <summary>The set without actions, for a catalogue of this size.</summary>
    public static ActionSet None(int count) => new(new ulong[(count + BitsInPart - 1) / BitsInPart]);

    /// <summary>Whether the action at a place is in it.</summary>
    public bool Contains(int place) => (_parts[place / BitsInPart] >> (place % BitsInPart) & 1) != 0;

    /// <summary>The actions in both.</summary>
    public ActionSet And(ActionSet other)
    {
        ulong[] parts = new ulong[_parts.Length];
        for (int i = 0; i < parts.Length; i++)
            parts[i] = _parts[i] & other._parts[i];
        return new ActionSet(parts);
    }

    /// <summary>The actions in either.</summary>
    public ActionSet Or(ActionSet other)
    {
        ulong[] parts = new ulong[_parts.Length];
        for (int i = 0; i < parts.Length; i++)
            parts[i] = _parts[i] | other._parts[i];
        return new ActionSet(parts);
    }

    /// <summary>The actions in this and not in the other.</summary>
    public ActionSet Without(ActionSet other)
    {
        ulong[] parts = new ulong[_parts.Length];
        for (int i = 0; i < parts.Length; i++)
            parts[i] = _parts[i] & ~other._parts[i];
        return new ActionSet(parts);
    }

    /// <summary>The places of the actions in it, in order.</summary>
    public Places GetEnumerator() => new(_parts);

    /// <inheritdoc/>
    public bool Equals(ActionSet other) => _parts.AsSpan().SequenceEqual(other._parts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ActionSet other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (ulong part in _parts)
            hash.Add(part);
        return hash.ToHashCode();
    }

    /// <summary>Walks through the places of a set.</summary>
    public struct Places
    {
        private readonly ulong[] _parts;
        private int _part;
        private ulong _left;

        internal Places(ulong[] parts)
        {
            _parts = parts;
            _part = -1;
            _left = 0;
            Current = -1;
        }

        /// <summary>The place reached.</summary>
        public int Current { get; private set; }

        /// <summary>Goes on to the next place; false at the end.</summary>
        public bool MoveNext()
        {
            while (_left == 0)
            {
                if (++_part >= _parts.Length)
                    return false;
                _left = _parts[_part];
            }

            Current = _part * BitsInPart + BitOperations.TrailingZeroCount(_left);
            _left &= _left - 1;
            return true;
        }
    }
}
