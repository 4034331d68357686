using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class StrengthTests
{
    [Theory]
    [InlineData("weak", 0.3)]
    [InlineData("fair", 0.5)]
    [InlineData("strong", 0.7)]
    [InlineData("decisive", 0.9)]
    public void A_strength_is_read_as_a_word_or_as_its_number(string word, double number)
    {
        Assert.Equal(number, Strengths.Of(word));
        Assert.Contains(word, Strengths.Words);
    }

    [Fact]
    public void The_words_stand_in_the_order_of_their_numbers() =>
        Assert.Equal(Strengths.Words.OrderBy(word => Strengths.Of(word)), Strengths.Words);

    [Fact]
    public void Another_word_is_no_strength() => Assert.Null(Strengths.Of("certain"));
}
