using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The part of a question page where the answer is given.</summary>
internal abstract class QuestionBody(Look look) : Pane(look)
{
    /// <summary>How to answer, in a line.</summary>
    public abstract string HowTo { get; }

    /// <summary>The answer under the cursor, which need not be the one given; null where there is none.</summary>
    public virtual Answer? Pointed => null;

    /// <summary>The body that fits a question.</summary>
    public static QuestionBody For(
        Look look,
        InterviewSession session,
        Question question,
        Ways way,
        Action<string?> tell
    ) =>
        question.Kind switch
        {
            QuestionKind.Weeds => new WeedsBody(look, session, way),
            QuestionKind.Past => new PastBody(look, session, way),
            QuestionKind.Number or QuestionKind.Date or QuestionKind.Name or QuestionKind.Chemicals => new TypedBody(
                look,
                session,
                question,
                way,
                tell
            ),
            _ => new ChoiceBody(look, session, question, way),
        };
}
