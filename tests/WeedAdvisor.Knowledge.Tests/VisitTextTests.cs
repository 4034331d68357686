using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class VisitTextTests
{
    private static readonly DateOnly s_day = new(2026, 4, 14);

    private static readonly Gen<string> s_id = Gen.String[Gen.Char["abcxyz019"], 1, 5]
        .Array[1, 3]
        .Select(words => string.Join('-', words));

    private static readonly Gen<string> s_text = Gen.String[Gen.Char, 1, 20]
        .Where(text => !string.IsNullOrWhiteSpace(text) && text.All(c => !char.IsControl(c) && !char.IsSurrogate(c)));

    private static readonly Gen<DateOnly> s_past = Gen.Int[0, 4000].Select(days => s_day.AddDays(-days));

    private static readonly Gen<decimal> s_percent = Gen.Int[0, 10_000].Select(hundredths => hundredths / 100m);

    private static readonly Gen<ImmutableArray<WeedSeen>?> s_weeds = Gen.Select(
        Gen.Shuffle(FixtureKnowledge.Good.Weeds.Keys.ToArray(), 0, 2),
        Gen.OneOf<string?>(null, "mature", "seedling"),
        Gen.OneOf(Gen.Const((decimal?)null), s_percent.Select(percent => (decimal?)percent)),
        Gen.Int[0, 5],
        (weeds, stage, cover, how) =>
            how == 0
                ? null
                : (ImmutableArray<WeedSeen>?)
                    [
                        .. weeds.Select(weed => new WeedSeen(weed, stage, cover)
                        {
                            PotsPercent = how > 3 ? 20 * how : null,
                            Stands = how switch
                            {
                                2 => WeedSeen.InPots,
                                3 => WeedSeen.InGround,
                                _ => null,
                            },
                        }),
                        // One of them in another stage too.
                        .. how == 1 ? weeds.Take(1).Select(weed => new WeedSeen(weed, "expected", 5)) : [],
                    ]
    );

    private static readonly Gen<bool?> s_flag = Gen.OneOf<bool?>(null, true, false);

    // A use of a record, or of a product that is not in the catalogue, told more or less fully.
    private static readonly Gen<PastApplication> s_more = Gen.Select(
        Gen.Int[0, 3],
        Gen.OneOf<string?>(null, "granules", "mist-or-fog"),
        Gen.Int[-1, 1439],
        Gen.OneOf<decimal?>(null, 0.5m, 150),
        s_flag,
        s_flag,
        s_flag,
        Gen.OneOf<string?>(null, "few", "many"),
        (kind, method, minute, rate, part, watered, aired, amount) =>
            new PastApplication(kind == 0 ? "oxadine-granules" : null, null, null, WordSet.Empty)
            {
                Actives = kind == 1 ? WordSet.Of(["oxadine"]) : WordSet.Empty,
                Groups = kind is 1 or 2 ? WordSet.Of(["14"]) : WordSet.Empty,
                Kind = kind == 3 ? "other-pesticide" : null,
                Method = method,
                Hour = minute < 0 ? null : new TimeOnly(minute / 60, minute % 60),
                Rate = rate,
                RateUnit = rate is null ? null : "lb/acre",
                PartOnly = part,
                WateredIn = watered,
                Aired = aired,
                Drifted = aired,
                CameThrough = amount,
                SeasonsRunning = amount is null ? null : 3,
            }
    );

    private static readonly Gen<ImmutableArray<PastApplication>?> s_applications = Gen.Select(
        Gen.OneOf(Gen.Const((DateOnly?)null), s_past.Select(day => (DateOnly?)day)),
        Gen.OneOf<string?>(null, "clean", "escapes", "injury"),
        Gen.Shuffle(FixtureKnowledge.Good.Weeds.Keys.ToArray(), 0, 2),
        Gen.Int[-1, 2],
        s_more,
        (day, result, escaped, count, more) =>
            count < 0
                ? (ImmutableArray<PastApplication>?)null
                :
                [
                    .. Enumerable.Repeat(
                        more with
                        {
                            Date = day,
                            Result = result,
                            Escaped = WordSet.Of(escaped),
                        },
                        count
                    ),
                ]
    );

    private static readonly Gen<VisitArea> s_area = Gen.Select(
        s_id,
        s_text,
        Gen.Shuffle(FixtureKnowledge.Good.Questions.ToArray(), 0, 8).SelectMany(Answers),
        s_weeds,
        s_applications,
        (id, name, answers, weeds, past) => new VisitArea(id, name, answers, weeds, past)
    );

    private static readonly Gen<Visit> s_visit = Gen.Select(
        s_id,
        s_text,
        Gen.Bool,
        Gen.Int[0, 3],
        s_area.Array[0, 4],
        Gen.Shuffle(FixtureKnowledge.Good.Questions.ToArray(), 0, 4).SelectMany(Answers),
        (id, text, titled, units, areas, head) =>
            new Visit(id, titled ? text : null, s_day, titled ? null : text, [.. areas.DistinctBy(area => area.Id)])
            {
                Head = head,
                Units = units < 3 ? (UnitsWanted)units : null,
            }
    );

    internal static Gen<Visit> Visits => s_visit;

    internal static Gen<VisitArea> Areas => s_area;

    [Fact]
    public void Every_visit_comes_back_as_it_was_written() =>
        s_visit.Sample(visit =>
        {
            string text = VisitText.Of(visit);
            Visit back = Read(text);

            Assert.Equal(
                (visit.Id, visit.Title, visit.Date, visit.Nursery),
                (back.Id, back.Title, back.Date, back.Nursery)
            );
            Assert.Equal(visit.Head, back.Head);
            Assert.Equal(visit.Areas.Length, back.Areas.Length);
            foreach ((VisitArea area, VisitArea same) in visit.Areas.Zip(back.Areas))
            {
                Assert.Equal((area.Id, area.Name), (same.Id, same.Name));
                Assert.Equal(Known(area, visit), Known(same, back));
                Assert.Equal(area.Weeds.HasValue, same.Weeds.HasValue);
                Assert.Equal(area.Weeds ?? [], same.Weeds ?? []);
                Assert.Equal(area.Past.HasValue, same.Past.HasValue);
                Assert.Equal(area.Past ?? [], same.Past ?? []);
            }

            Assert.Equal(text, VisitText.Of(back));
        });

    [Fact]
    public void What_stands_at_the_head_holds_for_every_area_that_does_not_say_otherwise()
    {
        Visit visit = Read(
            """
            visit: v
            format: 2
            date: 2026-04-14
            answers:
              cover: film-on
              mulch-depth: 2
            areas:
              - id: one
                name: One
              - id: two
                name: Two
                answers: { cover: open-sky, mulch-depth: not-known }
            """
        );

        Assert.Equal("film-on", Word(visit.Areas[0], "cover"));
        Assert.Equal(new Answer.Number(2), visit.Areas[0].Answers["mulch-depth"]);
        Assert.Equal("open-sky", Word(visit.Areas[1], "cover"));
        Assert.Equal(new Answer.NotKnown(), visit.Areas[1].Answers["mulch-depth"]);
        Assert.Equal(visit.Areas[1].Answers, Read(VisitText.Of(visit)).Areas[1].Answers);
    }

    [Fact]
    public void A_visit_is_written_as_a_person_would_write_it()
    {
        Visit visit = Read(FixtureFiles.All["visits/wet-house.yaml"]);

        Assert.Equal(
            """
            visit: wet-house
            format: 2
            title: A wet house
            date: 2026-04-14
            nursery: Example Nursery (invented)
            areas:
              - id: bench
                name: The bench
                answers:
                  cover: film-on
                  crops: []
                  equipment: spreader
                  mulch-depth: 2.5
                  place: house
                  potted-on: 2026-04-01
                  sides: not-known
                weeds:
                  - {weed: liverwort, stage: mature, cover-percent: 20}
                past:
                  - {treatment: oxadine-granules, date: 2026-03-01, result: escapes, escaped: [liverwort]}
              - id: yard
                name: The yard
                past: []

            """,
            VisitText.Of(visit)
        );
    }

    [Fact]
    public void Culture_changes_nothing()
    {
        Visit visit = Read(FixtureFiles.All["visits/wet-house.yaml"]);
        string text = VisitText.Of(visit);
        using var culture = new CommaCulture();

        Assert.Equal(text, VisitText.Of(visit));
        Assert.Equal(text, VisitText.Of(Read(text)));
    }

    [Theory]
    [InlineData("a\u001B[31mb", "a [31mb")]
    [InlineData("two\r\nlines", "two \nlines")]
    [InlineData("\uD83C\uDF31 seed", "\uD83C\uDF31 seed")]
    [InlineData("line\u2028separator", "line\u2028separator")]
    [InlineData("a: b # c", "a: b # c")]
    [InlineData("true", "true")]
    [InlineData("- dash", "- dash")]
    [InlineData(" spaces ", " spaces ")]
    public void What_cannot_stand_in_a_file_is_replaced_and_the_rest_is_kept(string name, string expected)
    {
        var visit = new Visit("v", null, s_day, null, [VisitArea.Blank("a", name)]);

        Assert.Equal(expected, Read(VisitText.Of(visit)).Areas[0].Name);
    }

    [Fact]
    public void Half_a_character_is_replaced()
    {
        var visit = new Visit("v", null, s_day, null, [VisitArea.Blank("a", $"half {(char)0xD83C}")]);

        Assert.Equal("half \uFFFD", Read(VisitText.Of(visit)).Areas[0].Name);
    }

    [Fact]
    public void An_area_without_a_name_is_called_by_its_id()
    {
        var visit = new Visit("v", " ", s_day, "", [VisitArea.Blank("a-bed", " ")]);

        Visit back = Read(VisitText.Of(visit));

        Assert.Equal((null, null, "a-bed"), (back.Title, back.Nursery, back.Areas[0].Name));
    }

    private static Gen<ImmutableSortedDictionary<string, Answer>> Answers(Question[] questions) =>
        questions
            .Where(question => question.Kind is not (QuestionKind.Weeds or QuestionKind.Past))
            .Aggregate(
                Gen.Const(ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal)),
                (all, question) =>
                    Gen.Select(all, AnswerTo(question), (answers, answer) => answers.SetItem(question.Id, answer))
            );

    private static Gen<Answer> AnswerTo(Question question) =>
        Gen.OneOf(
            Gen.Const<Answer>(new Answer.NotKnown()),
            question.Kind switch
            {
                QuestionKind.OneOf => Gen.OneOf(Words(question)).Select(Set),
                QuestionKind.AnyOf => Gen.Shuffle(Words(question), 0, 2).Select(Set),
                QuestionKind.Crops => Gen.Shuffle(FixtureKnowledge.Good.Crops.Keys.ToArray(), 0, 3).Select(Set),
                QuestionKind.Region => Gen.Const(Set("warm-coast")),
                QuestionKind.Chemicals => Gen.Shuffle(s_chemicals, 0, 3).Select(Set),
                QuestionKind.Number => s_percent.Select(percent => (Answer)new Answer.Number(percent * 0.3m)),
                _ => s_past.Select(day => (Answer)new Answer.Date(day)),
            }
        );

    private static readonly string[] s_chemicals = ["vinegar", "2-4-d", "24"];

    private static string[] Words(Question question) => [.. question.Choices.Select(choice => choice.Id)];

    private static Answer Set(params string[] words) => new Answer.Words(WordSet.Of(words));

    private static Answer Set(string word) => Set([word]);

    // An answer that the head gives and the area lacks is written as not known, which says the same.
    private static IEnumerable<KeyValuePair<string, Answer>> Known(VisitArea area, Visit visit) =>
        area.Answers.Where(answer =>
            answer.Value is not Answer.NotKnown || visit.Head.ContainsKey(answer.Key) == false
        );

    private static string Word(VisitArea area, string question) =>
        ((Answer.Words)area.Answers[question]).Value.Single();

    private static Visit Read(string text)
    {
        Outcome<Visit, Problem> outcome = VisitFile.Parse(text, "visit.yaml", FixtureKnowledge.Good);
        return outcome.Value ?? throw new InvalidOperationException($"{outcome.Refusals[0]}\n{text}");
    }
}
