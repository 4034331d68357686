namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// Partial plans ("labels") in flat arrays, so that making and dropping one costs no allocation. A label is the number
/// of its slot.
/// </summary>
internal sealed class LabelStore(CompiledSeason season)
{
    private const int FirstSlots = 32;

    private readonly int _cover = season.Reach * season.Rows;
    private readonly int _sites = season.Runs.Length;
    private readonly int _rows = season.Resources.Length;
    private readonly Stack<int> _free = new();
    private int _slots;
    private long[] _saving = [];
    private long[] _room = [];
    private byte[] _ready = [];
    private byte[] _canonical = [];
    private byte[] _runs = [];
    private byte[] _uses = [];

    /// <summary>What each plan costs if nothing more goes on.</summary>
    public long[] Cost { get; private set; } = [];

    /// <summary>No completion of the plan costs less.</summary>
    public long[] Bound { get; private set; } = [];

    /// <summary>
    /// What each plan has spent so far: its cost with nothing saved from now on. Filled in when labels are compared.
    /// </summary>
    public long[] Spent { get; private set; } = [];

    /// <summary>The week of the last application, from which its savings are kept.</summary>
    public int[] Since { get; private set; } = [];

    /// <summary>The number of applications.</summary>
    public int[] Applications { get; private set; } = [];

    /// <summary>The plan's last step in the <see cref="PlanTrail"/>; -1 when it has none.</summary>
    public int[] Step { get; private set; } = [];

    /// <summary>Of which forbidden sequences the plan is a beginning, one bit each.</summary>
    public int[] Forbidden { get; private set; } = [];

    /// <summary>Slots in use.</summary>
    public int Held => _slots - _free.Count;

    /// <summary>What the plan saves in the cells from <see cref="Since"/> on.</summary>
    public Span<long> Saving(int label) => _saving.AsSpan(label * _cover, _cover);

    /// <summary>The same from a later week on.</summary>
    public Span<long> SavingFrom(int label, int week) =>
        Saving(label)[Math.Min(_cover, (week - Since[label]) * season.Rows)..];

    /// <summary>What is left of each resource.</summary>
    public Span<long> Room(int label) => _room.AsSpan(label * _rows, _rows);

    /// <summary>The first week that the intervals leave open to each candidate.</summary>
    public Span<byte> Ready(int label) => _ready.AsSpan(label * season.Candidates, season.Candidates);

    /// <summary>The first week that each candidate can still be of use; filled in when labels are compared.</summary>
    public Span<byte> Canonical(int label) => _canonical.AsSpan(label * season.Candidates, season.Candidates);

    /// <summary>The running applications of each site of action.</summary>
    public Span<byte> Runs(int label) => _runs.AsSpan(label * _sites, _sites);

    /// <summary>The applications of each site of action.</summary>
    public Span<byte> Uses(int label) => _uses.AsSpan(label * _sites, _sites);

    /// <summary>A slot for a new label. Its content is left over from an earlier one.</summary>
    public int Take()
    {
        if (_free.TryPop(out int free))
            return free;
        if (_slots == Cost.Length)
            Grow(Math.Max(FirstSlots, _slots * 2));
        return _slots++;
    }

    /// <summary>Gives a slot back.</summary>
    public void Drop(int label) => _free.Push(label);

    /// <summary>The empty plan.</summary>
    public int TakeRoot(int forbidden)
    {
        int root = Take();
        Cost[root] = season.CostOfNothing;
        Since[root] = 0;
        Applications[root] = 0;
        Step[root] = -1;
        Forbidden[root] = forbidden;
        season.PastSaving.CopyTo(Saving(root));
        season.Ready.CopyTo(Ready(root));
        season.Runs.CopyTo(Runs(root));
        Uses(root).Clear();
        for (int row = 0; row < _rows; row++)
            Room(root)[row] = season.Resources[row].Room;
        return root;
    }

    /// <summary>Whether the plan's limits let a candidate go on in a week, intervals and rotation included.</summary>
    public bool Allows(int label, int candidate, int week)
    {
        if (Ready(label)[candidate] > week || !RotationAllows(label, candidate))
            return false;
        int spot = (candidate * season.Weeks) + week;
        ReadOnlySpan<long> room = Room(label);
        for (int row = 0; row < room.Length; row++)
        {
            if (season.Resources[row].Use[spot] > room[row] && !season.Resources[row].IsNeed)
                return false;
        }
        return season.Open[spot];
    }

    /// <summary>Whether a candidate may be the next one.</summary>
    public bool RotationAllows(int label, int candidate)
    {
        Span<byte> runs = Runs(label);
        foreach (int site in season.SitesOf[candidate])
        {
            if (runs[site] >= season.MaxRun)
                return false;
        }
        return true;
    }

    /// <summary>
    /// The plan with one more application; its bound, step and forbidden sequences are left to the caller.
    /// </summary>
    public int TakeNext(int label, int candidate, int week)
    {
        int next = Take(),
            spot = (candidate * season.Weeks) + week;
        Since[next] = week;
        Applications[next] = Applications[label] + 1;
        Span<long> saving = Saving(next);
        ReadOnlySpan<long> still = SavingFrom(label, week);
        still.CopyTo(saving);
        saving[still.Length..].Clear();
        Cost[next] = Cost[label] + season.Cost[spot] - Lanes.Raise(saving, season.SavingOf(spot));
        Span<byte> ready = Ready(next),
            before = Ready(label);
        ReadOnlySpan<int> delay = season.Delay.AsSpan(candidate * season.Candidates, season.Candidates);
        for (int other = 0; other < ready.Length; other++)
            ready[other] = (byte)Math.Max(before[other], week + delay[other]);
        Span<byte> runs = Runs(next),
            runsBefore = Runs(label),
            uses = Uses(next);
        Uses(label).CopyTo(uses);
        runs.Clear();
        foreach (int site in season.SitesOf[candidate])
        {
            // A run that nothing limits need not be counted beyond what a byte holds.
            runs[site] = (byte)Math.Min(runsBefore[site] + 1, byte.MaxValue - 1);
            uses[site]++;
        }
        Span<long> room = Room(next),
            roomBefore = Room(label);
        for (int row = 0; row < room.Length; row++)
        {
            long left = roomBefore[row] - season.Resources[row].Use[spot];
            room[row] = season.Resources[row].IsNeed ? Math.Min(0, left) : left;
        }
        return next;
    }

    /// <summary>Whether the plan as it stands meets every need, and every share of a site of action.</summary>
    public bool MeetsNeeds(int label)
    {
        ReadOnlySpan<long> room = Room(label);
        for (int row = 0; row < room.Length; row++)
        {
            if (season.Resources[row].IsNeed && room[row] < 0)
                return false;
        }
        int share = season.ShareOf(Applications[label]);
        foreach (byte uses in Uses(label))
        {
            if (uses > share)
                return false;
        }
        return true;
    }

    private void Grow(int slots)
    {
        _saving = Longer(_saving, slots * _cover);
        _room = Longer(_room, slots * _rows);
        _ready = Longer(_ready, slots * season.Candidates);
        _canonical = Longer(_canonical, slots * season.Candidates);
        _runs = Longer(_runs, slots * _sites);
        _uses = Longer(_uses, slots * _sites);
        Cost = Longer(Cost, slots);
        Bound = Longer(Bound, slots);
        Spent = Longer(Spent, slots);
        Since = Longer(Since, slots);
        Applications = Longer(Applications, slots);
        Step = Longer(Step, slots);
        Forbidden = Longer(Forbidden, slots);
    }

    private static T[] Longer<T>(T[] array, int length)
    {
        Array.Resize(ref array, length);
        return array;
    }
}
