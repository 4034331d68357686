using System.Text;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Whatever the bytes, reading ends in a value or in problems; nothing else comes out.</summary>
public sealed class HostileInputTests : IDisposable
{
    // What has meaning in YAML or in UTF-8, so that most changes hurt.
    private static readonly byte[] s_sharp =
    [
        .. "\n\r\t :-?,[]{}#&*!|>'\"%@`$<~=0"u8,
        0x00,
        0x1B,
        0x7F,
        0x85,
        0xC2,
        0xE2,
        0xEF,
        0xBB,
        0xBF,
        0xF0,
        0xFF,
    ];

    private static readonly Gen<(int Kind, double At, byte Value, int Length)> s_change = Gen.Select(
        Gen.Int[0, 3],
        Gen.Double[0, 1],
        Gen.OneOf(Gen.OneOf(s_sharp), Gen.Byte),
        Gen.Int[1, 40]
    );

    private readonly TempFolder _folder = new();

    [Fact]
    public void A_visit_of_changed_bytes_is_read_or_refused()
    {
        byte[] good = Encoding.UTF8.GetBytes(FixtureFiles.All["visits/wet-house.yaml"]);
        int file = 0;
        s_change
            .Array[1, 12]
            .Sample(
                changes =>
                {
                    string path = _folder.Write($"{Interlocked.Increment(ref file)}.yaml", Changed(good, changes));
                    AssertTotal(VisitFile.Read(path, FixtureKnowledge.Good));
                    File.Delete(path);
                },
                iter: Sizes.Of(few: 1000, many: 20_000)
            );
    }

    [Fact]
    public void A_folder_with_changed_bytes_is_read_or_refused() =>
        Gen.Select(Gen.OneOf(new FixtureKnowledge().Paths.ToArray()), s_change.Array[1, 6])
            .Sample(
                (path, changes) =>
                {
                    var fixture = new FixtureKnowledge();
                    AssertTotal(fixture.With(path, Changed(fixture[path], changes)).Load());
                },
                iter: Sizes.Of(few: 100, many: 3000)
            );

    [Fact]
    public void Any_text_at_all_is_read_or_refused() =>
        Gen.String.Sample(text => AssertTotal(VisitFile.Parse(text, "visit.yaml", FixtureKnowledge.Good)), iter: 2000);

    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("a: ")]
    [InlineData("a:\n")]
    [InlineData("\n")]
    [InlineData("'")]
    [InlineData("\"\\x")]
    [InlineData("&a ")]
    [InlineData("*a ")]
    [InlineData("!<")]
    [InlineData("|\n ")]
    [InlineData("%a\n")]
    [InlineData("---\n")]
    [InlineData("a, ")]
    [InlineData("- {a: b}\n")]
    [InlineData("word ")]
    public void The_same_thing_over_and_over_is_refused_in_the_end(string part)
    {
        string text = string.Concat(Enumerable.Repeat(part, 3_000_000 / part.Length));

        Assert.False(VisitFile.Parse(text, "visit.yaml", FixtureKnowledge.Good).IsGood);
        Assert.False(VisitFile.Parse("visit: " + text, "visit.yaml", FixtureKnowledge.Good).IsGood);
    }

    public void Dispose() => _folder.Dispose();

    private static void AssertTotal<T>(Outcome<T, Problem> outcome)
        where T : class
    {
        Assert.Equal(outcome.IsGood, outcome.Refusals.IsEmpty);
        Assert.All(outcome.Refusals, problem => Assert.False(string.IsNullOrEmpty(problem.ToString())));
    }

    private static byte[] Changed(byte[] bytes, IEnumerable<(int Kind, double At, byte Value, int Length)> changes)
    {
        foreach ((int kind, double share, byte value, int length) in changes)
        {
            int at = Math.Min((int)(share * bytes.Length), Math.Max(0, bytes.Length - 1));
            int end = Math.Min(at + length, bytes.Length);
            bytes = kind switch
            {
                0 => [.. bytes[..at], value, .. bytes[Math.Min(at + 1, bytes.Length)..]],
                1 => [.. bytes[..at], value, .. bytes[at..]],
                2 => [.. bytes[..at], .. bytes[end..]],
                _ => [.. bytes[..end], .. bytes[at..]],
            };
        }

        return bytes;
    }
}
