using Google.OrTools.Sat;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Tests.Season.Support;

/// <summary>The season problem as a model for CP-SAT: another way to the optimum, by other people's code.</summary>
internal sealed class CpSatSeason
{
    private const decimal Unit = 10_000m;

    private readonly SeasonProblem _problem;
    private readonly CpModel _model = new();
    private readonly BoolVar?[][] _goes;
    private readonly LinearExpr[] _any;
    private readonly LinearExprBuilder _cost = LinearExpr.NewBuilder();

    /// <summary>Builds the model.</summary>
    public CpSatSeason(SeasonProblem problem)
    {
        if (problem.Limits.MaxShareOfSite is not null || !problem.Wishes.MustCover.IsEmpty)
            throw new NotSupportedException("the model knows neither shares of a site nor wishes for cover");
        _problem = problem;
        _goes = [.. problem.Candidates.Select((one, number) => Goes(one, number))];
        _any = [.. Enumerable.Range(0, problem.Weeks).Select(week => LinearExpr.Sum(In(week, _ => true)))];
        AddIntervals();
        AddSums();
        AddRotation();
        AddEscapes();
        _model.Minimize(_cost);
    }

    /// <summary>Solves it in one thread, with the settings that were fastest for this model.</summary>
    /// <param name="seconds">The most seconds.</param>
    /// <param name="hint">A plan to begin with; none when left out.</param>
    /// <returns>The proven optimum in money; null when it was not proven in time.</returns>
    public decimal? Solve(double seconds, IReadOnlyList<(int Week, int Candidate)>? hint = null)
    {
        if (hint is not null)
        {
            for (int candidate = 0; candidate < _goes.Length; candidate++)
            {
                for (int week = 0; week < _problem.Weeks; week++)
                {
                    if (_goes[candidate][week] is { } goes)
                        _model.AddHint(goes, hint.Contains((week, candidate)) ? 1 : 0);
                }
            }
        }
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"max_time_in_seconds:{seconds},num_workers:1,random_seed:1,linearization_level:2"
            ),
        };
        return solver.Solve(_model) == CpSolverStatus.Optimal ? (decimal)solver.ObjectiveValue / Unit : null;
    }

    private BoolVar?[] Goes(SeasonCandidate candidate, int number) =>
        [
            .. candidate.Cost.Select(
                (cost, week) =>
                {
                    bool open =
                        cost is not null
                        && !_problem.Wishes.ClosedWeeks.Contains(week)
                        && !_problem.Wishes.Dropped.Contains(candidate.Name)
                        && !_problem.History.Any(past => week - past.Week < Between(past.Used, candidate));
                    BoolVar? goes = open ? _model.NewBoolVar($"{number} in {week}") : null;
                    if (goes is not null)
                        _cost.AddTerm(goes, (long)(cost!.Value * Unit));
                    return goes;
                }
            ),
        ];

    private int Between(SeasonCandidate one, SeasonCandidate other)
    {
        bool related =
            one.Name == other.Name
            || one.Actives.Select(a => a.Active).Intersect(other.Actives.Select(a => a.Active)).Any();
        int any = _problem.Limits.MinWeeksBetweenAny;
        return related ? Math.Max(any, Math.Max(one.MinWeeksBetween, other.MinWeeksBetween)) : any;
    }

    private IEnumerable<BoolVar> In(int week, Func<SeasonCandidate, bool> which) =>
        _goes.Where((_, number) => which(_problem.Candidates[number])).Select(weeks => weeks[week]).OfType<BoolVar>();

    private void AddIntervals()
    {
        int any = _problem.Limits.MinWeeksBetweenAny;
        for (int week = 0; week < _problem.Weeks; week++)
        {
            _model.AddAtMostOne(
                Enumerable.Range(week, Math.Min(any, _problem.Weeks - week)).SelectMany(near => In(near, _ => true))
            );
        }
        for (int one = 0; one < _goes.Length; one++)
        {
            for (int other = 0; other < _goes.Length; other++)
            {
                int between = _problem
                    .Gaps.Where(gap =>
                        gap.Before == _problem.Candidates[one].Name && gap.After == _problem.Candidates[other].Name
                    )
                    .Select(gap => gap.Weeks)
                    .Append(Between(_problem.Candidates[one], _problem.Candidates[other]))
                    .Max();
                for (int week = 0; week < _problem.Weeks && between > any; week++)
                {
                    if (_goes[one][week] is not { } goes)
                        continue;
                    for (int later = week + 1; later < Math.Min(week + between, _problem.Weeks); later++)
                    {
                        if (_goes[other][later] is { } follows)
                            _model.AddBoolOr([goes.Not(), follows.Not()]);
                    }
                }
            }
        }
    }

    private void AddSums()
    {
        foreach (ActiveLimit limit in _problem.Limits.Yearly)
        {
            AddSum(
                one => (long)(1000 * one.Actives.Where(a => a.Active == limit.Active).Sum(a => a.KgPerHa)),
                (long)Math.Max(0, Math.Floor(1000 * (limit.KgPerHa - limit.KgUsedBefore)))
            );
        }
        foreach (SeasonCandidate limited in _problem.Candidates.Where(one => one.MaxUsesPerYear is not null))
            AddSum(
                one => one.Name == limited.Name ? 1 : 0,
                Math.Max(0, limited.MaxUsesPerYear!.Value - limited.UsesBefore)
            );
        if (_problem.Limits.Spending is { } spending)
            AddSum(one => (long)(spending.Each[one.Name] * Unit), (long)(spending.Most * Unit));
        if (_problem.Wishes.AtMost is { } most)
            AddSum(_ => 1, most);
        if (_problem.Wishes.AtLeast is { } least)
            _model.Add(LinearExpr.Sum(_any) >= least);
        if (_problem.Wishes.Budget is { } budget)
        {
            LinearExprBuilder spent = LinearExpr.NewBuilder();
            ForEach((goes, candidate, week) => spent.AddTerm(goes, (long)(candidate.Cost[week]!.Value * Unit)));
            _model.Add(spent <= (long)(budget * Unit));
        }
        foreach (string name in _problem.Wishes.MustUse)
            _model.AddBoolOr(Enumerable.Range(0, _problem.Weeks).SelectMany(week => In(week, one => one.Name == name)));
    }

    private void AddSum(Func<SeasonCandidate, long> use, long room)
    {
        LinearExprBuilder sum = LinearExpr.NewBuilder();
        ForEach((goes, candidate, _) => sum.AddTerm(goes, use(candidate)));
        _model.Add(sum <= room);
    }

    private void ForEach(Action<BoolVar, SeasonCandidate, int> act)
    {
        for (int candidate = 0; candidate < _goes.Length; candidate++)
        {
            for (int week = 0; week < _problem.Weeks; week++)
            {
                if (_goes[candidate][week] is { } goes)
                    act(goes, _problem.Candidates[candidate], week);
            }
        }
    }

    // The run of a site after each week: one longer with the site, as it was without any application, free otherwise.
    private void AddRotation()
    {
        if (_problem.Limits.MaxRunOfSite is not { } most)
            return;
        foreach (string site in _problem.Candidates.SelectMany(one => one.Sites).Distinct())
        {
            int past = _problem.History.Reverse().TakeWhile(one => one.Used.Sites.Contains(site)).Count();
            LinearExpr before = LinearExpr.Constant(Math.Min(past, most));
            for (int week = 0; week < _problem.Weeks; week++)
            {
                IntVar run = _model.NewIntVar(0, most, $"run of {site} in {week}");
                LinearExpr with = LinearExpr.Sum(In(week, one => one.Sites.Contains(site)));
                _model.Add(run >= before + with - ((most + 1) * (_any[week] - with)));
                before = run;
            }
        }
    }

    // For each cell a chain of steps: a step of saving is reached by an application of just that step, or of a higher
    // one.
    private void AddEscapes()
    {
        for (int weed = 0; weed < _problem.Weeds.Length; weed++)
        {
            for (int week = 0; week < _problem.Weeks; week++)
            {
                decimal escape = _problem.Weeds[weed].EscapeCost[week];
                long past = (long)(Unit * SeasonRules.Saved(escape, SeasonRules.Control(_problem, [], weed, week)));
                _cost.Add((long)(escape * Unit) - past);
                BoolVar? higher = null;
                long step = 0;
                foreach (
                    IGrouping<long, BoolVar> group in Savings(weed, week, escape)
                        .Where(one => one.Saving > past)
                        .GroupBy(one => one.Saving, one => one.Goes)
                        .OrderByDescending(group => group.Key)
                )
                {
                    BoolVar reached = _model.NewBoolVar($"{weed} in {week} saves {group.Key}");
                    _model.AddBoolOr([.. group, .. higher is null ? Array.Empty<ILiteral>() : [higher], reached.Not()]);
                    if (higher is not null)
                        _cost.AddTerm(higher, -(step - group.Key));
                    (higher, step) = (reached, group.Key);
                }
                if (higher is not null)
                    _cost.AddTerm(higher, -(step - past));
            }
        }
    }

    private IEnumerable<(long Saving, BoolVar Goes)> Savings(int weed, int week, decimal escape)
    {
        for (int candidate = 0; candidate < _goes.Length; candidate++)
        {
            var control = _problem.Candidates[candidate].Control[weed];
            for (int age = 0; age < control.Length && age <= week; age++)
            {
                if (_goes[candidate][week - age] is { } goes)
                    yield return ((long)(Unit * SeasonRules.Saved(escape, control[age])), goes);
            }
        }
    }
}
