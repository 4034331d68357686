using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Rates;

/// <summary>The rate sums there are.</summary>
public static class RateListDocument
{
    private const int Left = 2,
        ExampleLeft = 4;

    /// <summary>Every group with its sums.</summary>
    public static Document Of(IEnumerable<RateGroup> groups) =>
        new(
            "What can be worked out:",
            [
                .. groups.SelectMany(OfGroup),
                new Blank(),
                new Paragraph(
                    "'weedadvisor rate GROUP' shows an example of each sum, '--help' after a sum all that it takes."
                ),
            ]
        );

    /// <summary>The sums of one group, each with an example that can be pasted.</summary>
    /// <param name="group">The group.</param>
    /// <param name="width">Columns after which an example goes on below.</param>
    public static Document Of(RateGroup group, int width) =>
        new(group.Title, [.. group.Forms.SelectMany(form => OfForm(form, width - ExampleLeft))]);

    private static IEnumerable<Block> OfGroup(RateGroup group) =>
        [
            new Blank(),
            new Paragraph($"{group.Id}: {group.Title}"),
            new FieldList(
                [.. group.Forms.Select(form => new FieldEntry(form.Id, [form.Title]))],
                group.Forms.Max(form => form.Id.Length)
            ).At(Left),
        ];

    private static IEnumerable<Block> OfForm(RateForm form, int width) =>
        [
            new Blank(),
            new Paragraph($"{form.Id}: {form.Title}"),
            new Paragraph(form.About).At(Left),
            new Verbatim([.. RateCommandLine.Example(form, width)]).At(ExampleLeft),
        ];
}
