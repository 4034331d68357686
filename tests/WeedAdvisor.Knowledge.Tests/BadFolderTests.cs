using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Files that are missing, broken, out of place, or at odds with each other.</summary>
public sealed class BadFolderTests
{
    [Theory]
    [InlineData("findings.yaml")]
    [InlineData("knowledge.yaml")]
    [InlineData("prices.yaml")]
    [InlineData("regions.yaml")]
    [InlineData("sources.yaml")]
    public void A_missing_file_is_one_problem_and_not_one_for_each_use_of_its_ids(string file)
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().Without(file).Load();

        Assert.Equal(
            [$"{file}: found no such file; expected a file that exists"],
            outcome.Refusals.Select(p => p.ToString())
        );
    }

    [Fact]
    public void A_file_that_cannot_be_parsed_is_one_problem_and_not_one_for_each_use_of_its_ids()
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().With("questions.yaml", "- id: [place").Load();

        Assert.Equal("questions.yaml", Assert.Single(outcome.Refusals).Where.File);
    }

    [Fact]
    public void A_question_that_the_program_reads_has_to_be_of_the_kind_that_it_reads()
    {
        var fixture = new FixtureKnowledge();
        string questions =
            fixture.Text("questions.yaml")
            + "- { id: heated, group: crop, ask: How warm?, why: So., kind: number, unit: cm, between: [0, 9], source: "
            + "[common-practice] }\n";

        Assert.Contains(
            "found the question 'heated' of kind number; expected kind one-of: the program itself reads this question",
            Assert.Single(fixture.With("questions.yaml", questions).Load().Refusals).ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("stock")]
    [InlineData("growth-state")]
    public void A_question_whose_answers_records_name_has_to_be_there(string question)
    {
        FixtureKnowledge fixture = new FixtureKnowledge().Change(
            "questions.yaml",
            $"- id: {question}\n",
            "- id: other\n"
        );
        Assert.Contains(
            $"questions.yaml: found no question '{question}'; "
                + $"expected a question '{question}', whose answers records name",
            fixture.Load().Refusals.Select(problem => problem.ToString())
        );
    }

    // Every list is asked for by a reader, so that each can be missing; what each record says is not told besides.
    [Fact]
    public void A_list_of_words_that_is_missing_is_one_problem_and_no_check_is_passed_over()
    {
        string[] lists = [.. FixtureKnowledge.Good.Vocabulary.Keys.Except(["rated-only"])];
        Assert.True(lists.Length > 20);
        Assert.All(lists, list =>
        {
            FixtureKnowledge fixture = new FixtureKnowledge().Change(
                "vocabulary/lists.yaml",
                $"{list}: {{",
                $"mine: {{"
            );
            Assert.Equal(
                $"vocabulary: found no list '{list}'; expected a list '{list}' in one of the files of vocabulary/",
                fixture.Load().Refusals[0].ToString()
            );
        });
    }

    [Theory]
    [InlineData("weed/liverwort.yaml", "weeds")]
    [InlineData("weeds/annual/spurge.yaml", "weeds")]
    [InlineData("question.yaml", "questions.yaml")]
    [InlineData("crops.yml", "crops.yaml")]
    public void A_file_that_nothing_reads_is_a_problem(string path, string nearest)
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().With(path, "- id: x").Load();

        Problem problem = Assert.Single(outcome.Refusals);
        Assert.Equal("a file that nothing reads", problem.Found);
        Assert.Equal(nearest, problem.Nearest);
    }

    [Theory]
    [InlineData("judgements/my-bars.YAML")]
    [InlineData("judgements/my-bars.yaml.txt")]
    [InlineData("judgements/of/mine/and/more/my-bars.yaml")]
    [InlineData("a/b/c/d/e/f/my-bars.yaml")]
    [InlineData("labels.csv")]
    public void No_file_is_passed_over_in_silence(string path)
    {
        Problem problem = Assert.Single(new FixtureKnowledge().With(path, "- id: x").Load().Refusals);
        Assert.Equal(("a file that nothing reads", path), (problem.Found, problem.Where.File));
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("judgements/changes.md")]
    [InlineData(".editor")]
    public void Notes_and_hidden_files_may_lie_there(string path) =>
        Assert.True(new FixtureKnowledge().With(path, "words").Load().IsGood);

    [Fact]
    public void The_same_list_in_two_files_is_a_problem() =>
        Assert.Equal(
            "vocabulary/more.yaml:1:1: found the id 'when' a second time; "
                + "expected another id: vocabulary/lists.yaml:27:1 has this one",
            Assert
                .Single(new FixtureKnowledge().With("vocabulary/more.yaml", "when: { now: now }").Load().Refusals)
                .ToString()
        );

    [Fact]
    public void A_folder_that_is_not_there_is_a_problem()
    {
        using var folder = new TempFolder();

        Assert.Equal("no such folder", Assert.Single(KnowledgeFolder.Load(folder.At("missing")).Refusals).Found);
        Assert.False(KnowledgeFolder.Load(folder.Write("file", "text")).IsGood);
        Assert.False(KnowledgeFolder.Load("").IsGood);
        Assert.False(KnowledgeFolder.Load("a\0b").IsGood);
    }

    [Fact]
    public void An_empty_folder_lacks_every_required_file()
    {
        using var folder = new TempFolder();

        Assert.Equal(
            [
                "crops.yaml",
                "findings.yaml",
                "knowledge.yaml",
                "prices.yaml",
                "questions.yaml",
                "regions.yaml",
                "scales.yaml",
                "sources.yaml",
                "usual.yaml",
            ],
            KnowledgeFolder.Load(folder.Path).Refusals.Select(problem => problem.Where.File)
        );
    }

    [Fact]
    public void Three_errors_in_two_files_are_three_problems_in_order()
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge()
            .Change("weeds/spurge.yaml", "kind: broadleaf", "kind: brodleaf")
            .Change("weeds/spurge.yaml", "identify:", "idenitfy: x\n  identify:")
            .Change("crops.yaml", "[shrubs]", "[shrubz]")
            .Load();

        Assert.Null(outcome.Value);
        Assert.Equal(
            ["crops.yaml:2", "weeds/spurge.yaml:4", "weeds/spurge.yaml:13"],
            outcome.Refusals.Select(p => $"{p.Where.File}:{p.Where.Line}")
        );
        Assert.Equal(["shrubs", "broadleaf", "identify"], outcome.Refusals.Select(problem => problem.Nearest));
    }
}
