using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview.Desks.Season;

/// <summary>A season plan in lines for the screen.</summary>
internal static class SeasonLines
{
    /// <summary>A number of applications.</summary>
    public static string Applications(int count) => Figures.Count(count, "application", "applications");

    /// <summary>The wishes in few words.</summary>
    public static string Short(YearPlan plan)
    {
        SeasonRequest request = plan.Case.Request;
        string run = request.RunOfSite is { } times ? FormattableString.Invariant($"{times}") : "any";
        string closed = request.Closed.IsEmpty
            ? ""
            : $"   {Figures.Count(request.Closed.Count, "week", "weeks")} closed";
        return FormattableString.Invariant($"at most {plan.Case.Problem.Wishes.AtMost}   rotation {run}{closed}");
    }

    /// <summary>What the year costs.</summary>
    public static AdviceLine Money(YearPlan plan)
    {
        string hands = $"hands alone {Figures.Dollars(plan.HandsOnlyUsd)}";
        if (plan is not { Plan: { } best, Way: { } way })
            return new AdviceLine($"1000 pots: no plan; {hands}", LineTone.Warning);
        return new AdviceLine(
            $"1000 pots: {Figures.Dollars(way.Usd)}: preventives {Figures.Dollars(best.ApplicationCost)}, "
                + $"weeding {Figures.Dollars(way.WeedingUsd)}; {hands}",
            LineTone.Heading
        );
    }

    /// <summary>What goes on, the application of one week marked, then the wishes.</summary>
    public static IEnumerable<Block> Of(YearPlan plan, int week, KnowledgeBase knowledge)
    {
        if (plan.Plan is { Applications.IsEmpty: true })
            yield return new Hanging(SeasonWords.Nothing(plan));
        ImmutableArray<SeasonApplication> uses = plan.Plan?.Applications ?? [];
        Strip strip = Strip.Of(plan);
        for (int i = 0; i < uses.Length; i++)
        {
            SeasonApplication one = uses[i];
            Treatment treatment = knowledge.Treatments[one.Name];
            string groups = SeasonWords.Groups(treatment, "+");
            string must = plan.Case.Request.MustUse.Contains(one.Name) ? ", must go on" : "";
            Line said = Line.Of($"{new Named(treatment.Name)} (group {groups}), {Amounts.Dollars(one.Cost)}{must}");
            yield return ItemList.One(
                $"{(one.Week == week ? '>' : ' ')} {strip.Letters[i]}  {SeasonWords.Days(plan.Uses[i])}  ",
                said with
                {
                    Tone = one.Week == week ? Tone.Strong : Tone.Normal,
                    Action = one.Name,
                }
            );
        }

        yield return Quiet(Wishes(plan, knowledge));
        yield return Quiet(
            "The label is the law. Run the advice again on the day. Prices are invented until you give yours."
        );
    }

    private static Hanging Quiet(string text) => new(Line.FromString(text) with { Tone = Tone.Muted });

    /// <summary>How a plan compares with the first one.</summary>
    /// <param name="dearer">By how much it is dearer, US dollars; null when one of them does not exist.</param>
    public static string Against(decimal? dearer) =>
        dearer switch
        {
            > 0 => $"{Figures.Dollars(dearer.Value)} dearer than at first",
            < 0 => $"{Figures.Dollars(-dearer.Value)} cheaper than at first",
            0 => "It costs the same as at first",
            null => "There is nothing to compare it with",
        };

    private static string Wishes(YearPlan plan, KnowledgeBase knowledge)
    {
        SeasonRequest request = plan.Case.Request;
        string rotation = request.RunOfSite switch
        {
            1 => "no site of action twice running",
            { } run => $"no site of action more than {run} times running",
            null => "no rotation",
        };
        string closed = request.Closed.IsEmpty
            ? ""
            : $"; {Figures.Count(request.Closed.Count, "week", "weeks")} closed";
        return $"At most {Applications(plan.Case.Problem.Wishes.AtMost ?? SeasonYear.Weeks)}; "
            + $"{rotation}{closed}{Named("without", request.Dropped)}{Named("surely with", request.MustUse)}.";

        string Named(string word, ImmutableArray<string> ids) =>
            ids.IsEmpty ? "" : $"; {word} {string.Join(", ", ids.Select(id => knowledge.Treatments[id].Name))}";
    }
}
