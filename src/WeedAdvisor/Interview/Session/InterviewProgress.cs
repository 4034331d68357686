namespace WeedAdvisor.Interview.Session;

/// <summary>How far the interview of an area has got.</summary>
/// <param name="Answered">Questions answered.</param>
/// <param name="NotKnown">Questions to which the grower said that they do not know.</param>
/// <param name="Total">Those, and the ones that could still change the advice.</param>
/// <param name="Skipped">Questions passed over that could still change the advice.</param>
/// <param name="WorthAgain">Questions not known whose answer could still change the advice.</param>
public readonly record struct InterviewProgress(int Answered, int NotKnown, int Total, int Skipped, int WorthAgain)
{
    /// <summary>The progress in words.</summary>
    public override string ToString() =>
        $"{Answered} of {Total} answered"
        + (NotKnown == 0 ? "" : $", {NotKnown} not known")
        + (Skipped == 0 ? "" : $", {Skipped} skipped");

    /// <summary>What is left to ask once there is no question left that was not put, in a sentence or two.</summary>
    public string Left
    {
        get
        {
            string skipped = Skipped switch
            {
                0 => "",
                1 => "One question was passed over. ",
                _ => $"{Skipped} questions were passed over. ",
            };
            string notKnown = (NotKnown, WorthAgain) switch
            {
                (0, _) => "",
                (_, 0) => $"{Questions(NotKnown)} not known; no rule needs {(NotKnown == 1 ? "it" : "them")} here. ",
                (1, _) => "One question is not known; its answer could still change the advice. ",
                _ when NotKnown == WorthAgain =>
                    $"{NotKnown} questions are not known; each answer could still change the advice. ",
                (_, 1) => $"{Questions(NotKnown)} not known; the answer to one of them could still change the advice. ",
                _ => $"{Questions(NotKnown)} not known; the answers to {WorthAgain} of them could still change the "
                    + $"advice. ",
            };
            string none = Skipped == 0 && WorthAgain == 0 ? "No open answer would change the advice." : "";
            return (skipped + notKnown + none).TrimEnd();
        }
    }

    private static string Questions(int count) => count == 1 ? "One question is" : $"{count} questions are";
}
