using System.Text;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class VisitDocumentTests
{
    private const string Told = """
        # walked with the foreman
        date: 2026-04-14   # a Tuesday
        visit: wet-house

        title: A wet house
        areas:
          # the house at the road
          - name: The bench
            id: bench
            weeds:
              # seen from the door
              - {weed: liverwort, stage: mature}   # under the gutter
              - weed: spurge
                stage: seedling
            answers:
              sides: closed  # since March
              # asked twice
              cover: film-on
              equipment:
                - spreader
          # nothing there yet
          - id: yard
            name: The yard
            past: []
        # what should come out
        expect:
          - area: bench
            clear: [hand-weed]
        # the end

        """;

    [Fact]
    public void A_changed_answer_changes_its_line_and_no_other() =>
        Assert.Equal(
            Told.Replace("cover: film-on", "cover: open-sky", StringComparison.Ordinal)
                .Replace("visit: wet-house\n", "visit: wet-house\nformat: 2\n", StringComparison.Ordinal),
            Edited(Told, visit => visit.Answered(0, "cover", "open-sky"))
        );

    [Fact]
    public void The_comment_behind_a_value_stays_when_the_value_changes_and_goes_with_its_line() =>
        Assert.Equal(
            Told.Replace("sides: closed  # since March", "sides: open  # since March", StringComparison.Ordinal)
                .Replace(
                    "      - {weed: liverwort, stage: mature}   # under the gutter\n",
                    "",
                    StringComparison.Ordinal
                )
                .Replace("date: 2026-04-14 ", "date: 2026-04-15 ", StringComparison.Ordinal)
                .Replace("visit: wet-house\n", "visit: wet-house\nformat: 2\n", StringComparison.Ordinal),
            Edited(Told, visit =>
                visit
                    .Answered(0, "sides", "open")
                    .WithArea(0, area => area with { Weeds = area.Weeds!.Value.RemoveAt(0) }) with
                {
                    Date = new DateOnly(2026, 4, 15),
                }
            )
        );

    [Fact]
    public void What_is_new_is_written_in_the_lines_of_its_own_list()
    {
        string text = Told.Replace(
            "      - {weed: liverwort, stage: mature}   # under the gutter\n",
            "",
            StringComparison.Ordinal
        );
        Assert.Equal(
            text.Replace(
                    "        stage: seedling\n",
                    "        stage: seedling\n      - {weed: liverwort, cover-percent: 5}\n",
                    StringComparison.Ordinal
                )
                .Replace("        - spreader\n", "        - spreader\n      place: yard\n", StringComparison.Ordinal)
                .Replace("visit: wet-house\n", "visit: wet-house\nformat: 2\n", StringComparison.Ordinal)
                .Replace("    name: The yard\n", "    name: The yard\n    weeds: []\n", StringComparison.Ordinal),
            Edited(text, visit =>
                visit
                    .Answered(0, "place", "yard")
                    .WithArea(0, area =>
                        area with
                        {
                            Weeds = area.Weeds!.Value.Add(new WeedSeen("liverwort", null, 5)),
                        }
                    )
                    .WithArea(1, area => area with { Weeds = [] })
            )
        );
    }

    [Fact]
    public void A_removed_area_takes_its_lines_with_it_and_the_comment_above_it_stays() =>
        Assert.Equal(
            """
            # walked with the foreman
            date: 2026-04-14   # a Tuesday
            visit: wet-house
            format: 2

            title: A wet house
            areas:
              # the house at the road
              # nothing there yet
              - id: yard
                name: The yard
                past: []
            # what should come out
            expect:
              - area: bench
                clear: [hand-weed]
            # the end

            """,
            Edited(Told, visit => visit with { Areas = visit.Areas.RemoveAt(0) })
        );

    [Theory]
    [InlineData(false, false, true)]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(true, true, false)]
    public void Line_ends_the_mark_of_the_encoding_and_an_open_end_stay_as_they_are(bool crlf, bool mark, bool isEnded)
    {
        string text = isEnded ? Told : Told.TrimEnd('\n');
        text = (mark ? "\uFEFF" : "") + (crlf ? text.ReplaceLineEndings("\r\n") : text);
        VisitDocument document = Document(text);

        Assert.Equal(Encoding.UTF8.GetBytes(text), document.With(document.Visit).Bytes);
        string expected = text.Replace("cover: film-on", "cover: open-sky", StringComparison.Ordinal)
            .Replace(
                crlf ? "wet-house\r\n" : "wet-house\n",
                crlf ? "wet-house\r\nformat: 2\r\n" : "wet-house\nformat: 2\n",
                StringComparison.Ordinal
            );
        Assert.Equal(expected, Edited(text, visit => visit.Answered(0, "cover", "open-sky")));
    }

    [Fact]
    public void What_the_head_says_is_said_by_an_area_only_where_the_area_differs()
    {
        const string text = """
            visit: v
            format: 2
            date: 2026-04-14
            answers: {cover: film-on}  # all of it
            areas:
            - id: one
              name: One
              answers:
                cover: film-on # said again
                place: yard
            - {id: two, name: Two}

            """;
        Assert.Equal(
            text.Replace(
                    "    cover: film-on # said again\n",
                    "    cover: open-sky # said again\n",
                    StringComparison.Ordinal
                )
                .Replace(
                    "- {id: two, name: Two}",
                    "- id: two\n  name: Two\n  answers:\n    cover: not-known",
                    StringComparison.Ordinal
                ),
            Edited(text, visit =>
                visit
                    .Answered(0, "cover", "open-sky")
                    .WithArea(1, area => area with { Answers = area.Answers.Remove("cover") })
            )
        );
    }

    [Theory]
    [InlineData("{visit: v, date: 2026-04-14, areas: [{id: one, name: One}]} # all on one line\n")]
    [InlineData("visit: v\r# a comment\rdate: 2026-04-14\rareas: [{id: one, name: One}]\r")]
    [InlineData(
        "visit: v\ndate: 2026-04-14\nareas:\n  -\n    id: one\n    name: One # a dash on its own\n  - {id: b, name: "
            + "B}\n"
    )]
    public void What_does_not_stand_in_lines_is_written_anew_and_says_so(string text)
    {
        VisitDocument document = Document(text);
        Visit edited = document.Visit with
        {
            Title = "New",
            Areas = document.Visit.Areas.Add(VisitArea.Blank("new", "New")),
        };
        VisitWriting written = document.With(edited);
        Assert.False(written.KeepsLines);
        Assert.Equal(VisitText.Of(edited), Encoding.UTF8.GetString([.. written.Bytes]));
    }

    internal static VisitDocument Document(string text) =>
        VisitDocument.Of(Encoding.UTF8.GetBytes(text), "visit.yaml", FixtureKnowledge.Good) is { IsGood: true } read
            ? read.Value
            : throw new InvalidOperationException(
                VisitDocument
                    .Of(Encoding.UTF8.GetBytes(text), "visit.yaml", FixtureKnowledge.Good)
                    .Refusals[0]
                    .ToString()
            );

    private static string Edited(string text, Func<Visit, Visit> edit)
    {
        VisitDocument document = Document(text);
        VisitWriting written = document.With(edit(document.Visit));
        Assert.True(written.KeepsLines, Encoding.UTF8.GetString([.. written.Bytes]));
        return Encoding.UTF8.GetString([.. written.Bytes]);
    }
}

/// <summary>Edits of a visit.</summary>
internal static class VisitEditing
{
    public static Visit WithArea(this Visit visit, int at, Func<VisitArea, VisitArea> edit) =>
        visit with
        {
            Areas = visit.Areas.SetItem(at, edit(visit.Areas[at])),
        };

    public static Visit Answered(this Visit visit, int at, string question, string word) =>
        visit.WithArea(at, area => area.With(question, word));
}
