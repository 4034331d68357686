using System.Diagnostics;

namespace WeedAdvisor.Tests.Commands;

/// <summary>The same visit and the same knowledge give the same bytes.</summary>
public sealed class SameBytesTests
{
    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    public void The_order_in_which_files_were_written_changes_nothing(string format)
    {
        using var forwards = new RulesCopy();
        using var backwards = new RulesCopy(backwards: true);
        Assert.Equal(Advice(forwards), Advice(backwards));

        string Advice(RulesCopy rules)
        {
            CommandRun run = CommandRun.Of([.. Args(format), "--knowledge", rules.Folder]);
            Assert.Equal("", run.Error);
            return run.Out;
        }
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    public async Task Another_process_in_another_country_changes_nothing(string format)
    {
        string[] args = [.. Args(format), "--knowledge", CommandRun.SmallRules];
        byte[] here = await BytesOf("C", "America/Los_Angeles", args);
        byte[] there = await BytesOf("de_DE.UTF-8", "Pacific/Auckland", args);
        Assert.NotEmpty(here);
        Assert.Equal(here, there);
    }

    private static string[] Args(string format) =>
        ["advise", CommandRun.SmallVisit, "--full", "--sources", "--format", format];

    private static async Task<byte[]> BytesOf(string language, string zone, string[] args)
    {
        string host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        string program = Path.Combine(AppContext.BaseDirectory, "weedadvisor.dll");
        var start = new ProcessStartInfo(host, [program, .. args]) { RedirectStandardOutput = true };
        start.Environment["LANG"] = language;
        start.Environment["LC_ALL"] = language;
        start.Environment["TZ"] = zone;
        using Process process = Process.Start(start)!;
        using var bytes = new MemoryStream();
        await process.StandardOutput.BaseStream.CopyToAsync(bytes, TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, process.ExitCode);
        return bytes.ToArray();
    }
}
