using RulesEngine.Models;

namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>
/// A general-purpose rules package (RulesEngine): rules are texts that it compiles and evaluates on the records it is
/// given. It knows no joins, so the loops around it are by hand: each weed, and for the rules that hold, each action.
/// </summary>
internal sealed class PackageWay : IWay
{
    private const string OnCase = "case",
        OnCatalogue = "catalogue";

    private readonly DrawnRules _rules;
    private readonly RulesEngine.RulesEngine _engine;
    private readonly HashSet<string> _joining;
    private readonly List<Concluded> _last = [];

    public PackageWay(DrawnRules rules)
    {
        _rules = rules;
        _joining = [.. rules.Set.Where(rule => rule.Forms is not null).Select(rule => rule.Id)];
        var onCase = new Workflow { WorkflowName = OnCase, Rules = [.. rules.Set.Select(CaseOf)] };
        var onCatalogue = new Workflow
        {
            WorkflowName = OnCatalogue,
            Rules = [.. rules.Set.Where(rule => rule.Forms is not null).Select(ActionOf)],
        };
        _engine = new RulesEngine.RulesEngine(_joining.Count > 0 ? [onCase, onCatalogue] : [onCase]);
    }

    public string Name => "RulesEngine";

    public int Conclude(int place)
    {
        _last.Clear();
        PlainCase one = _rules.All[place];
        var site = new RuleParameter("site", one.Site);
        foreach (PlainWeed plain in one.Weeds)
        {
            var weed = new RuleParameter("weed", plain);
            foreach (RuleResultTree result in _engine.ExecuteAllRulesAsync(OnCase, site, weed).AsTask().Result)
            {
                if (!result.IsSuccess)
                    continue;
                if (_joining.Contains(result.Rule.RuleName))
                    Actions(result.Rule.RuleName, site, weed, plain);
                else
                    _last.Add(new Concluded(result.Rule.RuleName, plain.Id, null));
            }
        }

        return _last.Count;
    }

    public IEnumerable<string> Keys() => _last.Select(one => one.Key);

    private void Actions(string rule, RuleParameter site, RuleParameter weed, PlainWeed plain)
    {
        foreach (PlainAction action in _rules.Catalogue)
        {
            RuleParameter[] on = [site, weed, new("action", action)];
            if (_engine.ExecuteActionWorkflowAsync(OnCatalogue, rule, on).AsTask().Result.Results[0].IsSuccess)
                _last.Add(new Concluded(rule, plain.Id, action.Id));
        }
    }

    private static Rule CaseOf(PlainRule rule) =>
        new()
        {
            RuleName = rule.Id,
            Expression =
                $"({Any("site.Stock", rule.Stocks)}) && ({Any("weed.Kind", rule.Kinds)})"
                + $" && ({Any("weed.Stage", rule.Stages)}) && weed.Percent >= {rule.LeastPercent}",
        };

    private static Rule ActionOf(PlainRule rule) =>
        new()
        {
            RuleName = rule.Id,
            Expression =
                $"({Any("action.Form", rule.Forms!)}) && action.Controls.Contains(weed.Kind)"
                + " && action.Under.Contains(site.Cover)",
        };

    private static string Any(string of, string[] words) =>
        string.Join(" || ", words.Select(word => $"{of} == \"{word}\""));
}
