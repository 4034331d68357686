using CsCheck;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class NearestWordTests
{
    private static readonly string[] s_words = ["house", "mouse", "horsetail", "liverwort", "no"];

    [Theory]
    [InlineData("hose", "house")]
    [InlineData("huose", "house")]
    [InlineData("House", "house")]
    [InlineData("iverwrt", "liverwort")]
    [InlineData("liverworth", "liverwort")]
    [InlineData("on", "no")]
    [InlineData("xouse", "house")]
    public void The_word_that_was_meant_is_found(string written, string meant) =>
        Assert.Equal(meant, NearestWord.Of(written, s_words));

    [Theory]
    [InlineData("")]
    [InlineData("greenhouse")]
    [InlineData("yes")]
    [InlineData("spurge")]
    public void A_different_word_is_near_to_nothing(string written) => Assert.Null(NearestWord.Of(written, s_words));

    [Fact]
    public void A_very_long_text_is_near_to_nothing() =>
        Assert.Null(NearestWord.Of(new string('a', 100_000), [new string('a', 100_000)]));

    [Fact]
    public void The_order_of_the_words_does_not_matter() =>
        Gen.Select(Gen.String[Gen.Char['a', 'd'], 0, 6], Gen.String[Gen.Char['a', 'd'], 1, 6].Array[1, 8])
            .Sample((written, words) => NearestWord.Of(written, words) == NearestWord.Of(written, words.Reverse()));

    [Fact]
    public void One_slip_in_a_word_of_four_letters_or_more_is_always_found_out() =>
        Gen.Select(Gen.String[Gen.Char['a', 'z'], 4, 12], Gen.Int[0, 11], Gen.Char['a', 'z'])
            .Sample(
                (word, at, letter) =>
                    NearestWord.Of(word.Insert(at % word.Length, letter.ToString()), [word]) == word
                    && NearestWord.Of(word.Remove(at % word.Length, 1), [word]) == word
            );
}
