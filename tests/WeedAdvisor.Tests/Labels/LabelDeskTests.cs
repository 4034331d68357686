using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Labels;

public sealed class LabelDeskTests
{
    private const string Granule = "oxadiazon-granule";

    [Fact]
    public void What_only_the_label_can_tell_no_longer_waits_once_it_is_copied()
    {
        using var shelf = new Shelf();
        var open = ShippedRules.Knowledge.Treatments.Values.First(treatment =>
            treatment.RepeatAfterDays is null && treatment.Label is null
        );
        Assert.Null(shelf.Typed(open.Id, ("name", "My product"), ("repeat-after-days", "90")).Keep());
        Assert.Equal(90, shelf.Session.Knowledge.Treatments[open.Id].RepeatAfterDays);
        Assert.Equal("My product", shelf.Session.Knowledge.Treatments[open.Id].Label!.Name);
        Assert.Contains("+labels-", shelf.Session.Knowledge.Stamp.Brief, StringComparison.Ordinal);
    }

    [Fact]
    public void The_treatments_that_wait_for_a_label_are_offered_first_after_those_of_the_book()
    {
        using var shelf = new Shelf();
        string[] waiting = [.. shelf.Labels.Wanted().Select(treatment => treatment.Id)];
        Assert.Equal(waiting, LabelEntry.Of(shelf.Labels).Take(waiting.Length).Select(entry => entry.Treatment));
        shelf.Typed(Granule, ("name", "My granules")).Keep();
        Assert.Equal(Granule, LabelEntry.Of(shelf.Labels)[0].Treatment);
        Assert.Equal(ShippedRules.Knowledge.Treatments.Count, LabelEntry.Of(shelf.Labels).Length);
    }

    [Theory]
    [InlineData("entry-hours", "four", "expected a number")]
    [InlineData("crops", "boxwod", "did you mean boxwood?")]
    [InlineData("sites", "yard", "expected an answer to 'place'")]
    [InlineData("read", "31 February", "expected a date")]
    [InlineData("read", "2027-06-01", "expected a day not after today")]
    [InlineData("signal-word", "cautoin", "did you mean caution?")]
    [InlineData("rates", "some", "expected")]
    [InlineData("rates", "200 to 100 lb/acre", "expected")]
    [InlineData("uses-per-year", "-1", "expected")]
    public void A_slip_is_told_at_its_field_and_nothing_is_written(string key, string text, string told)
    {
        using var shelf = new Shelf();
        LabelDesk desk = shelf.Typed(Granule, ("name", "Mine"), (key, text));
        var (field, problem) = Assert.Single(desk.Problems);
        Assert.Equal(key, field.Key);
        Assert.Contains(told, problem, StringComparison.Ordinal);
        Assert.Contains(field.Label, desk.Keep(), StringComparison.Ordinal);
        Assert.False(File.Exists(shelf.Book));
    }

    [Fact]
    public void Without_a_name_it_is_not_kept()
    {
        using var shelf = new Shelf();
        Assert.NotNull(shelf.Typed(Granule, ("entry-hours", "12")).Keep());
        Assert.False(File.Exists(shelf.Book));
    }

    [Fact]
    public void What_an_edit_does_not_speak_of_stays_to_the_letter()
    {
        const string Book = """
            # My labels, read in winter.
            - id: own-granules   # the blue bag
              name: Own granules
              treatment: oxadiazon-granule
              # Read twice.
              read: 2026-01-05
              rates:
                - { product-per-area: [100, 200], unit: lb/acre, note: "on the back" }
              wait-after-potting-days: 7

            # The one for the liners.
            - id: other
              name: Other
              treatment: prodiamine-granule
              read: 2026-01-06

            """;
        using var shelf = new Shelf(Book);
        Assert.Null(shelf.Typed(Granule, ("wait-after-potting-days", ""), ("entry-hours", "24")).Keep());
        Assert.Equal(
            Book.Replace("  wait-after-potting-days: 7\n", "  entry-hours: 24\n", StringComparison.Ordinal),
            shelf.Text
        );
        Assert.Null(shelf.Typed("prodiamine-granule", ("name", "Other one")).Keep());
        Assert.Contains(
            "# The one for the liners.\n- id: other\n  name: Other one\n",
            shelf.Text,
            StringComparison.Ordinal
        );
        Assert.Null(shelf.Typed("dithiopyr-granule", ("name", "Third")).Keep());
        Assert.StartsWith("# My labels, read in winter.\n", shelf.Text, StringComparison.Ordinal);
        Assert.Equal(3, shelf.Labels.Book.Labels.Length);
    }

    [Fact]
    public void A_label_that_another_window_wrote_in_the_meantime_stays()
    {
        using var shelf = new Shelf();
        LabelDesk mine = shelf.Typed(Granule, ("name", "Mine"));
        AtomicFile.Write(
            shelf.Book,
            "- { id: theirs, name: Theirs, treatment: prodiamine-granule, read: 2026-01-06 }\n"
        );
        Assert.Null(mine.Keep());
        Assert.Equal(["theirs", "mine"], shelf.Labels.Book.Labels.Select(label => label.Id));
    }

    [Fact]
    public void A_book_that_cannot_be_read_is_told_and_never_written_over()
    {
        const string Foreign = "tins:\n  - beans\n";
        using var shelf = new Shelf(Foreign);
        Assert.Contains("labels.yaml:1:1", shelf.Trouble, StringComparison.Ordinal);
        Assert.NotNull(shelf.Typed(Granule, ("name", "Mine")).Keep());
        Assert.Equal(Foreign, shelf.Text);
    }

    [Fact]
    public void Whatever_is_typed_comes_back_as_it_was_typed()
    {
        Gen<string> number = Gen.Int[0, 300].Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Gen<string> crops = Gen.Shuffle(ShippedRules.Knowledge.Crops.Keys.ToArray(), 0, 3)
            .Select(some => string.Join(", ", some.Order(StringComparer.Ordinal)));
        Gen<string> rates = Gen.Select(Gen.Int[1, 90], Gen.Int[0, 90], Gen.Bool)
            .Select(
                (low, more, active) =>
                    more == 0
                        ? ""
                        : $"{low} to {low + more} lb/acre{(active ? $" ({low} to {low + more} lb active/acre)" : "")}; "
                            + $"{low} lb/acre"
            );
        Gen.Select(Gen.String[Gen.Char[" abc:#\"'é-"], 1, 9], number, number, crops, rates)
            .Sample(
                (name, hours, days, named, rate) =>
                {
                    if (string.IsNullOrWhiteSpace(name))
                        return;
                    using var shelf = new Shelf(
                        "# Mine\n- id: first\n  name: First\n  treatment: dithiopyr-granule\n  read: 2026-01-06 # in "
                            + "winter\n"
                    );
                    foreach (string text in new[] { hours, "" })
                    {
                        LabelDesk desk = shelf.Typed(
                            Granule,
                            ("name", name),
                            ("entry-hours", text),
                            ("repeat-after-days", days),
                            ("crops", named),
                            ("rates", rate)
                        );
                        Assert.Null(desk.Keep());
                        var back = new LabelDesk(shelf.Labels, Granule);
                        Assert.Equal(
                            Enumerable
                                .Range(0, desk.Fields.Length)
                                .Select(at => at == 1 ? "2026-04-14" : desk.TextOf(at).Trim()),
                            Enumerable.Range(0, back.Fields.Length).Select(back.TextOf)
                        );
                    }

                    Assert.StartsWith(
                        "# Mine\n- id: first\n  name: First\n  treatment: dithiopyr-granule\n  read: 2026-01-06 # in "
                            + "winter\n",
                        shelf.Text,
                        StringComparison.Ordinal
                    );
                },
                iter: Sizes.Of(few: 8, many: 2_000),
                threads: 1
            );
    }
}
