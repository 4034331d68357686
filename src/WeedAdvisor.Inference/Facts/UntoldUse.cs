using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Whether something may have been put on lately of which nobody has told yet, here or under the same roof. Once
/// somebody has said yes or no, what was used is told among the earlier applications or is waited for there.
/// </summary>
internal static class UntoldUse
{
    private const string Past = QuestionIds.Past;
    private static readonly WordSet s_flags = WordSet.Of(["true", "false"]);

    /// <summary>The reading: false, or not known with the questions that settle it.</summary>
    public static Reading Of(KnowledgeBase knowledge, AreaCase looked, Dictionary<string, Reading> readings)
    {
        if (knowledge.QuestionOf(PutOnLately.Question) is null)
            return Reading.Of(false);
        bool isOpenHere = readings[PutOnLately.Question] is Reading.Open;
        // Who says no speaks for the whole house; who says yes tells of this area, and another may have had its own
        // use.
        VisitArea[] open =
        [
            .. isOpenHere ? [looked.Area] : (VisitArea[])[],
            .. isOpenHere || PutOnLately.SaysYes(looked.Area, looked.Date)
                ? looked.Others.Where(other =>
                    !PutOnLately.IsSettled(other, looked.Date)
                    && Roof.Of(looked.Area, other, knowledge).Shared != Truth.No
                )
                : [],
        ];
        if (open.Length == 0)
            return Reading.Of(false);
        // While the earlier applications are not listed either, the list may be what tells.
        Need[] needs =
        [
            .. open.Any(area => area.Past is null) ? [Need.Question(Past)] : (Need[])[],
            Need.Question(PutOnLately.Question),
        ];
        return new Reading.Open([.. needs.Order()], s_flags);
    }
}
