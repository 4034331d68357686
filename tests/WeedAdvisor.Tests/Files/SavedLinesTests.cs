using System.Text;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.Tests.Interview.Session;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Files;

public sealed class SavedLinesTests
{
    [Fact]
    public void Whatever_is_done_in_an_interview_its_file_keeps_its_lines_and_undoing_all_keeps_its_bytes() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, int.MaxValue].Array[99])
            .Sample(
                (at, tape) =>
                {
                    string[] shipped = Shipped();
                    string file = shipped[at % shipped.Length];
                    byte[] bytes = File.ReadAllBytes(file);
                    VisitDocument document = VisitDocument.Of(bytes, file, ShippedRules.Knowledge).Value!;
                    var session = new InterviewSession(ShippedRules.Knowledge, new FakeAdvice(), document.Visit);
                    var edits = new RandomEdits(session, tape);
                    while (session.EditsDone < 8)
                        edits.Edit();

                    VisitWriting written = document.With(session.Visit);
                    string saved = Encoding.UTF8.GetString([.. written.Bytes]);
                    Assert.True(written.KeepsLines, file);

                    // An interview may hold what a file may not: an application after the day of a visit that was
                    // moved.
                    bool isReadable = VisitFile.Parse(VisitText.Of(session.Visit), file, ShippedRules.Knowledge).IsGood;
                    VisitDocument? again = VisitDocument.Of([.. written.Bytes], file, ShippedRules.Knowledge).Value;
                    Assert.Equal(
                        isReadable ? VisitText.Of(session.Visit) : null,
                        again is null ? null : VisitText.Of(again.Visit)
                    );
                    string told = Encoding.UTF8.GetString(bytes);
                    Assert.StartsWith(told.Split('\n')[0] + "\n", saved, StringComparison.Ordinal);
                    int expected = told.IndexOf("\nexpect:", StringComparison.Ordinal);
                    Assert.EndsWith(expected < 0 ? "" : told[expected..], saved, StringComparison.Ordinal);

                    while (session.Undo() is not null) { }

                    Assert.Equal(bytes, document.With(session.Visit).Bytes);
                },
                iter: Sizes.Of(60, 3000),
                threads: 1
            );

    private static string[] Shipped() => Directory.GetFiles(Path.Combine(Repository.Rules, "visits"), "*.yaml");
}
