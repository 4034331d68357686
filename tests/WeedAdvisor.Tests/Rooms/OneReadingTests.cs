namespace WeedAdvisor.Tests.Rooms;

/// <summary>
/// An answer is read in one place: outside the rooms named here nobody looks into the answers of an area or knows the
/// id of a question.
/// </summary>
public sealed class OneReadingTests
{
    // Rooms that ask, keep or turn answers into readings; and the one that sets the answers of a day to come.
    private static readonly string[] s_mayReadAnswers =
    [
        "WeedAdvisor.Knowledge/Visits",
        "WeedAdvisor.Inference/Facts",
        "WeedAdvisor.Inference/Areas",
        "WeedAdvisor.Inference/Entry",
        "WeedAdvisor/Interview",
        "WeedAdvisor/Asking",
        "WeedAdvisor/Screens",
        "WeedAdvisor.Planning/Season/Year/AreaThroughYear.cs",
    ];

    private static readonly string[] s_mayNameQuestions =
    [
        .. s_mayReadAnswers,
        "WeedAdvisor.Knowledge/Records/QuestionIds.cs",
        "WeedAdvisor.Knowledge/Folder/QuestionKinds.cs",
        // A place of a nursery's own is one more answer to the question for it.
        "WeedAdvisor.Knowledge/Local/LocalPlaces.cs",
        // Needs name the question whose answer would settle them.
        "WeedAdvisor.Inference/Limits",
        "WeedAdvisor.Inference/Assembly/DayWeather.cs",
        "WeedAdvisor.Inference/Stretches/FilmCountdown.cs",
        // Which answers stand behind what is worked out from them.
        "WeedAdvisor.Inference/Unlock",
        // The price that stands in for an answer has its id.
        "WeedAdvisor.Planning/Weeding/Wage.cs",
        // Tries answers that are missing; it reads none.
        "WeedAdvisor.Planning/Plan/PlanAnswers.cs",
        // Tries the area with what lies round about mown; it reads none.
        "WeedAdvisor.Planning/Plan/SourceCleaned.cs",
    ];

    private static readonly string[] s_projects =
    [
        "WeedAdvisor.Knowledge",
        "WeedAdvisor.Inference",
        "WeedAdvisor.Planning",
        "WeedAdvisor.Reports",
        "WeedAdvisor",
    ];

    [Fact]
    public void Nobody_else_looks_into_answers() =>
        Assert.Empty(
            Elsewhere(".Answers.", s_mayReadAnswers)
                .Concat(Elsewhere(".Answers[", s_mayReadAnswers))
                .Except(Elsewhere("Rates.Answers", []))
        );

    [Fact]
    public void Nobody_else_knows_the_id_of_a_question() => Assert.Empty(Elsewhere("QuestionIds.", s_mayNameQuestions));

    [Fact]
    public void An_id_stands_once_as_a_word()
    {
        string[] words =
        [
            .. System
                .Text.RegularExpressions.Regex.Matches(
                    Sources.Of("WeedAdvisor.Knowledge").Single(file => file.Path == "Records/QuestionIds.cs").Text,
                    "\"([a-z-]+)\""
                )
                .Select(match => match.Groups[1].Value)
                // These are also the names of lists, files, kinds and pages.
                .Except([
                    "place",
                    "cover",
                    "house",
                    "crops",
                    "region",
                    "mulch",
                    "equipment",
                    "weeds",
                    "past",
                    "spacing",
                    "stock",
                    "pots",
                    "pot-width",
                    "surroundings",
                ]),
        ];
        Assert.NotEmpty(words);
        foreach (string word in words)
            Assert.Equal(["WeedAdvisor.Knowledge/Records/QuestionIds.cs"], Elsewhere($"\"{word}\"", []));
    }

    private static IEnumerable<string> Elsewhere(string text, string[] allowed) =>
        s_projects
            .SelectMany(project => Sources.Of(project).Select(file => (Name: project + "/" + file.Path, file.Text)))
            .Where(file => file.Text.Contains(text, StringComparison.Ordinal))
            .Select(file => file.Name)
            .Where(name =>
                !Array.Exists(allowed, room => name == room || name.StartsWith(room + "/", StringComparison.Ordinal))
            );
}
