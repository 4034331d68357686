namespace WeedAdvisor.Interview;

/// <summary>How far the interview of an area has got.</summary>
/// <param name="Settled">Questions answered, or said to be not known.</param>
/// <param name="Total">Those, and the ones that could still change the advice.</param>
/// <param name="Skipped">Questions passed over that could still change the advice.</param>
public readonly record struct InterviewProgress(int Settled, int Total, int Skipped)
{
    /// <summary>The progress in words.</summary>
    public override string ToString() =>
        $"{Settled} of {Total} answered" + (Skipped == 0 ? "" : $", {Skipped} skipped");
}
