using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>
/// One rate sum: what is entered and how it is worked out. The command line and the screens are both made from it.
/// </summary>
/// <param name="Group">Word of the group, such as <c>sprayer</c>.</param>
/// <param name="Id">Its id in the group, kebab-case.</param>
/// <param name="Title">Its name.</param>
/// <param name="About">What it is for and what to do in the field, in one to three sentences.</param>
/// <param name="Fields">What is entered, in order.</param>
/// <param name="Work">The sum. It is given entries that the fields allow.</param>
public sealed record RateForm(
    string Group,
    string Id,
    string Title,
    string About,
    ImmutableArray<RateField> Fields,
    Func<RateInputs, Outcome<RateAnswer, RateProblem>> Work
)
{
    /// <summary>An example that gives an answer: field ids and what is typed.</summary>
    public required ImmutableArray<KeyValuePair<string, string>> Example { get; init; }

    /// <summary>Whether it reads the knowledge.</summary>
    public bool NeedsKnowledge { get; init; }

    /// <summary>Whether it may read an area of a visit; such a form needs the knowledge as well.</summary>
    public bool MayReadArea { get; init; }

    /// <summary>Reads what was typed and does the sum.</summary>
    /// <param name="typed">Text by field id; a field that is missing or blank was not entered.</param>
    /// <param name="site">The knowledge and the area; null for forms that need none.</param>
    /// <exception cref="ArgumentException">A field is typed that the form has not, or the form needs knowledge and has
    /// none.</exception>
    public Outcome<RateAnswer, RateProblem> Run(IReadOnlyDictionary<string, string> typed, RateSite? site = null)
    {
        if (NeedsKnowledge && site is null)
            throw new ArgumentException($"the form {Group} {Id} needs the knowledge", nameof(site));
        (RateInputs? inputs, ImmutableArray<RateProblem> problems) = FormReader.Read(this, typed, site);
        if (inputs is null)
            return Outcome<RateAnswer, RateProblem>.Bad(problems);
        try
        {
            return Work(inputs);
        }
        catch (OverflowException)
        {
            // Every entry may be believable and their product still be absurd.
            return Outcome<RateAnswer, RateProblem>.Bad(
                new RateProblem(Fields[0].Id, "these entries together give a number beyond all measure; check them")
            );
        }
    }
}

/// <summary>Where a sum is done: what the trade knows, and the area when there is one.</summary>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Area">The area; null when none was given.</param>
/// <param name="Date">The day of the sum, for what was used earlier in the same year; null when no area was
/// given.</param>
public sealed record RateSite(KnowledgeBase Knowledge, VisitArea? Area, DateOnly? Date)
{
    /// <summary>The units of the visit; null when it names none.</summary>
    public UnitsWanted? Units { get; init; }
}
