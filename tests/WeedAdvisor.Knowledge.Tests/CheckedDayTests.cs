using WeedAdvisor.World;
using Record = WeedAdvisor.Knowledge.Records.Record;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// The day of a check stands where somebody could check: on a record that names a text, or of which it says what was
/// looked through. What rests on nothing but memory or practice carries none.
/// </summary>
public sealed class CheckedDayTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly (Record Record, DateOnly? Checked)[] s_records =
    [
        .. s_knowledge.Ingredients.Values.Select(one => ((Record)one, one.Checked)),
        .. s_knowledge.ActiveLimits.Values.Select(one => ((Record)one, one.Checked)),
        .. s_knowledge.Resistance.Values.Select(one => ((Record)one, one.Checked)),
        .. s_knowledge.Withdrawn.Values.Select(one => ((Record)one, one.Checked)),
    ];

    [Fact]
    public void A_record_carries_the_day_just_where_there_was_something_to_hold_it_against()
    {
        Assert.Contains(s_records, one => one.Checked is null);
        Assert.All(s_records, one => Assert.Equal(HasText(one.Record), one.Checked is not null));
    }

    [Fact]
    public void So_do_the_tables_of_ratings() =>
        Assert.Equal(
            ["common-practice", "memory"],
            s_knowledge.RatingTables.Where(table => table.Checked is null).Select(table => table.Source).Order()
        );

    // Of these three the cited regulation was never read: what they say of it is recalled, and marked so.
    [Fact]
    public void Law_carries_the_day_but_for_what_is_recalled() =>
        Assert.Equal(
            [
                "nobody-sprays-without-training-there",
                "spray-records-are-kept-for-three-years",
                "users-are-trained-and-certified-there",
            ],
            s_knowledge
                .Judgements.Where(rule => rule.Law is { IsHeld: true, Checked: null })
                .Select(rule => rule.Id)
                .Order(StringComparer.Ordinal)
        );

    private static bool HasText(Record record) =>
        record
            .From.Own.SelectMany(value => value.Sources)
            .Any(source => source is not ("memory" or "common-practice" or "invented"))
        || !record.From.Searched.IsEmpty;
}
