using System.Collections.Immutable;
using System.Text;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// A visit is written as a person might have written it, with a comment before and behind every line, and edited at
/// random: what was edited can be read, and of the comments none is gone that stood outside what was edited. Which
/// stand outside is told here from the text alone, by its indentation.
/// </summary>
public sealed class VisitDocumentLawTests
{
    private static readonly Gen<(Visit Visit, int[] Tape, VisitArea[] Fresh)> s_case = Gen.Select(
        VisitTextTests.Visits,
        Gen.Int[0, 1_000_000].Array[64],
        VisitTextTests.Areas.Array[2]
    );

    [Fact]
    public void Whatever_is_edited_can_be_read_and_no_comment_is_lost_that_stood_elsewhere() =>
        s_case.Sample(
            drawn =>
            {
                var tape = new Tape(drawn.Tape);
                string[] lines = Commented(VisitText.Of(drawn.Visit), tape);
                string eol = tape.Next(2) == 0 ? "\n" : "\r\n";
                string text =
                    (tape.Next(4) == 0 ? "\uFEFF" : "") + string.Join(eol, lines) + (tape.Next(4) == 0 ? "" : eol);
                VisitDocument document = VisitDocumentTests.Document(text);
                Assert.Equal(Encoding.UTF8.GetBytes(text), document.With(document.Visit).Bytes);

                Visit edited = document.Visit;
                for (int i = tape.Next(4); i >= 0; i--)
                    edited = Edit(edited, drawn.Fresh, tape);
                VisitWriting written = document.With(edited);

                string saved = Encoding.UTF8.GetString([.. written.Bytes]);
                Assert.True(written.KeepsLines, text);
                Assert.Equal(VisitText.Of(edited), VisitText.Of(VisitDocumentTests.Document(saved).Visit));
                foreach (string comment in Outside(lines, document.Visit, edited))
                    Assert.True(
                        saved.Contains(comment, StringComparison.Ordinal),
                        $"{comment}\n{text}\nbecame\n{saved}"
                    );
                Assert.Equal(text.StartsWith('\uFEFF'), saved.StartsWith('\uFEFF'));
                Assert.Equal(eol == "\n" ? 0 : saved.Count(c => c == '\n'), saved.Split("\r\n").Length - 1);
            },
            iter: Sizes.Of(300, 20_000)
        );

    [Fact]
    public void What_is_edited_and_edited_back_gives_the_same_bytes() =>
        s_case.Sample(
            drawn =>
            {
                var tape = new Tape(drawn.Tape);
                string text = string.Join('\n', Commented(VisitText.Of(drawn.Visit), tape));
                VisitDocument document = VisitDocumentTests.Document(text);
                Edit(document.Visit, drawn.Fresh, tape);
                VisitWriting back = document.With(VisitDocumentTests.Document(VisitText.Of(document.Visit)).Visit);
                Assert.Equal(document.Bytes, back.Bytes);
            },
            iter: Sizes.Of(50, 2_000)
        );

    private static string[] Commented(string text, Tape tape)
    {
        var lines = new List<string>();
        int number = 0;
        foreach (string line in text.TrimEnd('\n').Split('\n'))
        {
            string indent = new(' ', line.Length - line.TrimStart().Length);
            if (tape.Next(3) == 0)
                lines.Add($"{indent}# note {number++}.");
            if (tape.Next(6) == 0)
                lines.Add("");
            lines.Add(tape.Next(4) == 0 ? $"{line}  # said {number++}." : line);
        }

        return [.. lines, "expect: []", $"# note {number}."];
    }

    private static Visit Edit(Visit visit, VisitArea[] fresh, Tape tape)
    {
        int at = visit.Areas.IsEmpty ? -1 : tape.Next(visit.Areas.Length);
        VisitArea other = fresh[tape.Next(fresh.Length)];
        switch (tape.Next(10))
        {
            case 0:
                return visit with { Title = tape.Next(2) == 0 ? null : "A new title" };
            case 1:
                return visit with
                {
                    Date = visit.Date.AddDays(1),
                    Nursery = tape.Next(2) == 0 ? null : "Another (invented)",
                    Units = tape.Next(4) is var drawn and < 3 ? (UnitsWanted)drawn : null,
                };
            case 2 when visit.Areas.All(area => area.Id != other.Id):
                return visit with { Areas = visit.Areas.Insert(tape.Next(visit.Areas.Length + 1), other) };
            case 3 when visit.Areas.Length > 1:
                return visit with { Areas = visit.Areas.RemoveAt(at) };
            case 4:
                return visit with { Head = tape.Next(2) == 0 ? VisitArea.NoAnswers : other.Answers };
            case 5 when at >= 0:
                return visit.WithArea(at, area => area with { Name = "Named anew" });
            case 6 when at >= 0:
                return visit.WithArea(at, area => area with { Weeds = Listed(area.Weeds, other.Weeds, tape) });
            case 7 when at >= 0:
                return visit.WithArea(at, area => area with { Past = Listed(area.Past, other.Past, tape) });
            case 8 when at >= 0 && visit.Areas[at].Answers.Count > 0:
                return visit.WithArea(at, area =>
                    area with
                    {
                        Answers = area.Answers.Remove(area.Answers.Keys.ElementAt(tape.Next(area.Answers.Count))),
                    }
                );
            default:
                return at < 0
                    ? visit
                    : visit.WithArea(at, area =>
                        area with
                        {
                            Answers = area.Answers.SetItems(other.Answers.Take(tape.Next(3))),
                        }
                    );
        }
    }

    private static ImmutableArray<T>? Listed<T>(ImmutableArray<T>? list, ImmutableArray<T>? other, Tape tape) =>
        tape.Next(5) switch
        {
            0 => null,
            1 => [],
            2 when list is { IsEmpty: false } some => some.RemoveAt(tape.Next(some.Length)),
            3 when list is { IsEmpty: false } some => [.. some.Reverse()],
            _ =>
            [
                .. (list ?? [])
                    .Concat(other ?? [])
                    .Distinct()
                    .DistinctBy(item => item is WeedSeen seen ? (seen.Weed, seen.Stage) : (object)item!),
            ],
        };

    // A comment on a line of its own belongs to the innermost area and block between whose lines it stands; one behind
    // a value to its line, of which nothing is told here.
    private static IEnumerable<string> Outside(string[] lines, Visit before, Visit after)
    {
        int areas = Array.FindIndex(lines, line => line.StartsWith("areas:", StringComparison.Ordinal));
        int end = Array.FindIndex(lines, line => line.StartsWith("expect:", StringComparison.Ordinal));
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].TrimStart().StartsWith('#'))
                continue;
            bool isLost =
                i > areas && i < end
                    ? IsWithin(lines, i, end, 2) is { } area
                        && (
                            after.Areas.All(kept => kept.Id != Id(area))
                            || (
                                IsWithin(lines, i, end, 4) is { } block
                                && IsChangedWhole(block, Id(area), before, after)
                            )
                        )
                    : IsWithin(lines, i, areas, 0) is { } top
                        && top.StartsWith("answers:", StringComparison.Ordinal)
                        && after.Head.IsEmpty;
            if (!isLost)
                yield return lines[i].Trim();
        }
    }

    private static bool IsChangedWhole(string block, string id, Visit before, Visit after)
    {
        VisitArea one = before.Areas.Single(area => area.Id == id),
            other = after.Areas.Single(area => area.Id == id);
        return block.TrimStart().Split(':')[0] switch
        {
            "weeds" => other.Weeds is null or { IsEmpty: true },
            "past" => other.Past is null or { IsEmpty: true },
            // Few of an area's answers may be its own; whether none is left is not told here.
            "answers" => !one.Answers.SequenceEqual(other.Answers) || !before.Head.SequenceEqual(after.Head),
            _ => false,
        };
    }

    // The line with this indentation under which line i stands, when a deeper line follows before the next such line.
    private static string? IsWithin(string[] lines, int at, int end, int depth)
    {
        bool IsBare(string line) => line.TrimStart() is "" or ['#', ..];
        int Depth(string line) => line.Length - line.TrimStart().Length;
        int above = Array.FindLastIndex(lines, at, line => !IsBare(line) && Depth(line) <= depth);
        int below = Array.FindIndex(lines, at, line => !IsBare(line));
        return above >= 0 && Depth(lines[above]) == depth && below >= 0 && below < end && Depth(lines[below]) > depth
            ? lines[above]
            : null;
    }

    private static string Id(string area) => area.Trim().Split([' ', '#'], StringSplitOptions.RemoveEmptyEntries)[2];

    private sealed class Tape(int[] numbers)
    {
        private int _at;

        public int Next(int below) => numbers[_at++ % numbers.Length] % below;
    }
}
