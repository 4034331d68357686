namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>Loops by hand, with what rules share left unused: what no engine at all would cost.</summary>
internal sealed class LoopWay(DrawnRules rules) : IWay
{
    private readonly List<Concluded> _last = [];

    public string Name => "loops by hand";

    public int Conclude(int place)
    {
        _last.Clear();
        PlainCase one = rules.All[place];
        foreach (PlainRule rule in rules.Set)
        {
            if (Array.IndexOf(rule.Stocks, one.Site.Stock) < 0)
                continue;
            foreach (PlainWeed weed in one.Weeds)
            {
                if (
                    weed.Percent < rule.LeastPercent
                    || Array.IndexOf(rule.Stages, weed.Stage) < 0
                    || Array.IndexOf(rule.Kinds, weed.Kind) < 0
                )
                    continue;
                if (rule.Forms is not { } forms)
                    _last.Add(new Concluded(rule.Id, weed.Id, null));
                else
                    Actions(rule.Id, forms, one.Site, weed);
            }
        }

        return _last.Count;
    }

    public IEnumerable<string> Keys() => _last.Select(one => one.Key);

    private void Actions(string rule, string[] forms, PlainSite site, PlainWeed weed)
    {
        foreach (PlainAction action in rules.Catalogue)
        {
            if (
                Array.IndexOf(forms, action.Form) >= 0
                && Array.IndexOf(action.Controls, weed.Kind) >= 0
                && Array.IndexOf(action.Under, site.Cover) >= 0
            )
                _last.Add(new Concluded(rule, weed.Id, action.Id));
        }
    }
}
