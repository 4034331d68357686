using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Tests.Interview;

/// <summary>
/// Words are found wherever the lines of a page are broken, and a place is kept when they are broken anew.
/// </summary>
public sealed class PageSearchTests
{
    private static readonly Gen<string[]> s_words = Gen.Int[0, 30].Select(number => $"w{number}x").Array[8, 60];

    [Fact]
    public void Words_that_stand_in_a_text_are_found_at_every_width_in_the_line_where_they_begin() =>
        Gen.Select(s_words, Gen.Int[0, 7], Gen.Int[1, 4], Gen.Int[12, 60])
            .Sample(
                (words, from, count, width) =>
                {
                    string sought = string.Join(' ', words.Skip(from).Take(count));
                    ImmutableArray<AdviceLine> lines = Lines(words, width);
                    int at = PageSearch.Next(lines, sought.ToUpperInvariant(), -1)!.Value;
                    string rest = string.Join(' ', lines.Skip(at).Select(line => line.Text));
                    int place = rest.IndexOf(sought, StringComparison.Ordinal);
                    Assert.InRange(place, 0, lines[at].Text.Length - 1);
                },
                iter: Sizes.Of(200, 10_000)
            );

    [Fact]
    public void The_next_place_is_behind_the_line_and_after_the_last_comes_the_first()
    {
        ImmutableArray<AdviceLine> lines = [new("green moss"), new("on"), new("green"), new("moss"), new("end")];
        Assert.Equal(2, PageSearch.Next(lines, "green moss", 0));
        Assert.Equal(0, PageSearch.Next(lines, "green moss", 2));
        Assert.Null(PageSearch.Next(lines, "moss green", 0));
    }

    [Fact]
    public void The_line_at_another_width_holds_the_first_word_of_the_line_before() =>
        Gen.Select(s_words, Gen.Int[12, 60], Gen.Int[12, 60], Gen.Int[0, 200])
            .Sample(
                (words, wide, narrow, drawn) =>
                {
                    ImmutableArray<AdviceLine> before = Lines(words, wide),
                        after = Lines(words, narrow);
                    int at = drawn % before.Length;
                    int same = PageSearch.Same(before, at, after)!.Value;
                    int passed = before.Take(at).Sum(Count),
                        until = after.Take(same).Sum(Count);
                    Assert.InRange(passed, until, until + Count(after[same]) - 1);
                },
                iter: Sizes.Of(200, 10_000)
            );

    [Fact]
    public void A_page_that_says_something_else_has_no_same_line() =>
        Assert.Null(PageSearch.Same(Lines(["one", "two"], 20), 0, Lines(["one", "three"], 20)));

    private static int Count(AdviceLine line) => line.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;

    private static ImmutableArray<AdviceLine> Lines(string[] words, int width) =>
        PageLines.Of([new Paragraph(string.Join(' ', words))], width);
}
