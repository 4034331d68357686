using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>NRules as it comes: the catalogue is in working memory, and the network joins the case with it.</summary>
internal sealed class PlainNRulesWay : IWay
{
    private readonly ISession _session;
    private readonly object[][] _cases;
    private readonly List<Concluded> _last = [];
    private object[] _inside = [];

    public PlainNRulesWay(DrawnRules rules)
    {
        _session = new RuleCompiler().Compile(rules.Set.Select(RuleOf)).CreateSession();
        _session.InsertAll(rules.Catalogue);
        _cases = [.. rules.All.Select(one => (object[])[one.Site, .. one.Weeds])];
    }

    public string Name => "plain NRules";

    public int Conclude(int place)
    {
        _last.Clear();
        if (_inside.Length > 0)
            _session.RetractAll(_inside);
        _inside = _cases[place];
        _session.InsertAll(_inside);
        _session.Fire();
        return _last.Count;
    }

    public IEnumerable<string> Keys() => _last.Select(one => one.Key);

    private IRuleDefinition RuleOf(PlainRule rule)
    {
        var builder = new RuleBuilder();
        builder.Name(rule.Id);
        GroupBuilder all = builder.LeftHandSide();
        Expression<Func<PlainSite, bool>> ofSite = site => Array.IndexOf(rule.Stocks, site.Stock) >= 0;
        Expression<Func<PlainWeed, bool>> ofWeed = weed =>
            Array.IndexOf(rule.Kinds, weed.Kind) >= 0
            && Array.IndexOf(rule.Stages, weed.Stage) >= 0
            && weed.Percent >= rule.LeastPercent;
        all.Pattern(typeof(PlainSite), "site").Condition(ofSite);
        all.Pattern(typeof(PlainWeed), "weed").Condition(ofWeed);
        if (rule.Forms is not { } forms)
        {
            Expression<Action<IContext, PlainWeed>> ofArea = (context, weed) =>
                _last.Add(new Concluded(rule.Id, weed.Id, null));
            builder.RightHandSide().Action(ofArea);
            return builder.Build();
        }

        Expression<Func<PlainAction, bool>> ofForm = action => Array.IndexOf(forms, action.Form) >= 0;
        Expression<Func<PlainWeed, PlainAction, bool>> controls = (weed, action) =>
            Array.IndexOf(action.Controls, weed.Kind) >= 0;
        Expression<Func<PlainSite, PlainAction, bool>> under = (site, action) =>
            Array.IndexOf(action.Under, site.Cover) >= 0;
        PatternBuilder ofCatalogue = all.Pattern(typeof(PlainAction), "action");
        ofCatalogue.Condition(ofForm);
        ofCatalogue.Condition(controls);
        ofCatalogue.Condition(under);
        Expression<Action<IContext, PlainWeed, PlainAction>> ofAction = (context, weed, action) =>
            _last.Add(new Concluded(rule.Id, weed.Id, action.Id));
        builder.RightHandSide().Action(ofAction);
        return builder.Build();
    }
}
