namespace WeedAdvisor.Tests.Commands;

public sealed class FaultTests
{
    [Fact]
    public void A_fault_of_the_program_ends_with_code_70_and_one_line_without_a_stack_trace()
    {
        using var input = new BrokenReader(new InvalidOperationException("first\nsecond"));
        CommandRun run = CommandRun.In(input, "advise", "-");
        Assert.Equal(ExitCode.Internal, run.Code);
        string complaint = Assert.Single(run.Complaints);
        Assert.Contains("InvalidOperationException: first second", complaint, StringComparison.Ordinal);
        Assert.Contains("Please report it", complaint, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopping_ends_with_code_130_and_silence()
    {
        using var input = new BrokenReader(new OperationCanceledException());
        CommandRun run = CommandRun.In(input, "advise", "-");
        Assert.Equal(ExitCode.Stopped, run.Code);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Input_that_cannot_be_read_ends_with_code_4()
    {
        using var input = new BrokenReader(new IOException("the cable is out"));
        CommandRun run = CommandRun.In(input, "advise", "-");
        Assert.Equal(ExitCode.InputOutput, run.Code);
        Assert.Contains("the cable is out", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void Output_that_cannot_be_written_ends_with_code_4()
    {
        using var output = new FullWriter();
        CommandRun run = CommandRun.With(s => s with { Out = output }, "demo");
        Assert.Equal(ExitCode.InputOutput, run.Code);
        Assert.Contains("no space left", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    private sealed class BrokenReader(Exception fault) : TextReader
    {
        public override int ReadBlock(char[] buffer, int index, int count) => throw fault;

        public override int ReadBlock(Span<char> buffer) => throw fault;

        public override int Read(char[] buffer, int index, int count) => throw fault;
    }

    private sealed class FullWriter : StringWriter
    {
        public override void Flush() => throw new IOException("no space left");
    }
}
