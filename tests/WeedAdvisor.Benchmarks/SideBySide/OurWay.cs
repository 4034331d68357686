using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>The engine of this program: matches on the case, sets over the catalogue; all conclusions made.</summary>
internal sealed class OurWay : IWay
{
    private readonly EngineSession _session;
    private readonly ImmutableArray<Fact>[] _cases;
    private ImmutableArray<Conclusion> _last = [];

    public OurWay(DrawnRules rules)
    {
        _session = RuleEngine.Of(rules.Set.Select(JudgementOf), rules.Catalogue.Select(ActionOf)).Open();
        _cases = [.. rules.All.Select(FactsOf)];
    }

    public string Name => "this engine";

    public int Conclude(int place)
    {
        _last = _session.Change(_cases[place]).All();
        return _last.Length;
    }

    public IEnumerable<string> Keys() => _last.Select(one => one.Key);

    private static Judgement JudgementOf(PlainRule rule)
    {
        var site = new Pattern.Fact(FactKind.Site, [Is("stock", rule.Stocks), Binds("cover", "cover")]);
        var weed = new Pattern.Fact(
            FactKind.Weed,
            [
                Is("kind", rule.Kinds),
                Binds("kind", "kind"),
                Is("stage", rule.Stages),
                new AttributeCondition("percent", new AttributeTest.Limit(Comparison.AtLeast, rule.LeastPercent)),
            ]
        );
        ImmutableArray<Pattern> when = rule.Forms is null
            ? [site, weed]
            :
            [
                site,
                weed,
                new Pattern.Fact(
                    FactKind.Treatment,
                    [Shares("controls", "kind"), Shares("under", "cover"), Is("form", rule.Forms)]
                ),
            ];
        Consequence then = rule.Forms is null
            ? new Consequence.Caution("Mind it.")
            : new Consequence.Argument(0.5, IsDoubt: false);
        return new Judgement(rule.Id, "drawn", when, then, "It is drawn.", [], [], Place.Whole("drawn"));
    }

    private static AttributeCondition Is(string attribute, string[] words) =>
        new(attribute, new AttributeTest.Word(WordSet.Of(words), Negated: false));

    private static AttributeCondition Binds(string attribute, string name) =>
        new(attribute, new AttributeTest.Variable(name, Binds: true, Negated: false));

    private static AttributeCondition Shares(string attribute, string name) =>
        new(attribute, new AttributeTest.Variable(name, Binds: false, Negated: false));

    private static ImmutableArray<Fact> FactsOf(PlainCase one) =>
        [
            new SiteFact(
                new Dictionary<string, Reading>
                {
                    ["cover"] = Reading.Of(one.Site.Cover),
                    ["stock"] = Reading.Of(one.Site.Stock),
                }
            ),
            .. one.Weeds.Select(weed => new WeedFact(
                weed.Id,
                weed.Id,
                new Dictionary<string, Reading>
                {
                    ["kind"] = Reading.Of(weed.Kind),
                    ["stage"] = Reading.Of(weed.Stage),
                    ["percent"] = Reading.Of(weed.Percent),
                }
            )),
        ];

    private static ActionFact ActionOf(PlainAction action) =>
        new TreatmentFact(
            action.Id,
            action.Id,
            new Dictionary<string, Reading>
            {
                ["controls"] = Reading.Of(WordSet.Of(action.Controls)),
                ["under"] = Reading.Of(WordSet.Of(action.Under)),
                ["form"] = Reading.Of(action.Form),
            }
        );
}
