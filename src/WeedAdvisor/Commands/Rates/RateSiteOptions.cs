using System.CommandLine;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Commands.Rates;

/// <summary>The options of a sum that reads the knowledge: a visit and an area of it.</summary>
/// <param name="Visit">The visit file.</param>
/// <param name="Area">The area of the visit.</param>
internal sealed record RateSiteOptions(Option<string?> Visit, Option<string?> Area)
{
    /// <summary>Adds the options to a command.</summary>
    public static RateSiteOptions AddTo(Command command)
    {
        var options = new RateSiteOptions(
            new Option<string?>("--visit")
            {
                Description = "A visit file: what was used in its area this year counts towards yearly limits.",
                HelpName = "FILE",
            },
            new Option<string?>("--visit-area")
            {
                Description = "The area of the visit, by id; may be left out when it has only one.",
                HelpName = "ID",
            }
        );
        command.Add(options.Visit);
        command.Add(options.Area);
        return options;
    }

    /// <summary>Reads the knowledge, and the area when a visit is given.</summary>
    public RateSite Read(ParseResult parsed, Surroundings surroundings)
    {
        string? file = parsed.GetValue(Visit),
            id = parsed.GetValue(Area);
        if (file is null && id is not null)
            throw new RefusalException(ExitCode.Usage, "--visit-area needs --visit FILE.");
        KnowledgeBase knowledge = LabelsOption.Load(parsed, file, KnowledgeScope.WithoutWorkedVisits, surroundings);
        if (file is null)
            return new RateSite(knowledge, null, null);
        Visit visit = VisitArgument.Read(file, id, knowledge, surroundings);
        if (visit.Areas is not [var area])
        {
            string ids = string.Join(", ", visit.Areas.Select(one => one.Id));
            throw new RefusalException(
                ExitCode.Usage,
                $"the visit has several areas; name one with --visit-area: {ids}."
            );
        }

        return new RateSite(knowledge, area, visit.Date) { Units = VisitUnits.Of(visit, knowledge) };
    }
}
