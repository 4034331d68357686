using System.Collections.Immutable;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Interview.Desks.Rates;

/// <summary>The rate sums of an interview. What was entered in each stays until the program is left.</summary>
/// <param name="session">The interview; its area and day are those of the sums.</param>
public sealed class RateDesks(InterviewSession session)
{
    private readonly Dictionary<RateForm, RateDesk> _desks = new(ReferenceEqualityComparer.Instance);

    /// <summary>All forms, group by group.</summary>
    public ImmutableArray<RateForm> Forms { get; } = [.. RateForms.Groups.SelectMany(group => group.Forms)];

    /// <summary>The desk of a form, in the area that the interview is at.</summary>
    public RateDesk At(RateForm form)
    {
        var site = new RateSite(session.Knowledge, session.Area, session.Visit.Date) { Units = session.Units };
        if (_desks.TryGetValue(form, out RateDesk? desk))
            desk.MoveTo(site);
        else
            _desks.Add(form, desk = new RateDesk(form, site));
        return desk;
    }

    /// <summary>
    /// The forms as items of a list: the group's word before its first form, then the title; a mark when begun.
    /// </summary>
    public IEnumerable<(string Mark, string Text)> Entries()
    {
        int column = RateForms.Groups.Max(group => group.Id.Length) + 2;
        string? group = null;
        foreach (RateForm form in Forms)
        {
            string before = (form.Group == group ? "" : form.Group).PadRight(column);
            bool begun = _desks.TryGetValue(form, out RateDesk? desk) && desk.HasBegun;
            yield return (before, begun ? $"{form.Title} (begun)" : form.Title);
            group = form.Group;
        }
    }

    /// <summary>What a form is for, and where its group leads.</summary>
    public static string About(RateForm form) =>
        $"{RateForms.Groups.Single(group => group.Id == form.Group).Title}. {form.About}";
}
