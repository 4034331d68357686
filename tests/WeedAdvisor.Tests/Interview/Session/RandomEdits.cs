using System.Globalization;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview.Session;

/// <summary>
/// Does to an interview, at random, what a grower can do: answers, lists, areas, and the ways between the questions.
/// </summary>
/// <param name="session">The interview.</param>
/// <param name="tape">The numbers drawn, used over and over.</param>
internal sealed class RandomEdits(InterviewSession session, int[] tape)
{
    private int _named;
    private int _at;

    /// <summary>One edit; before it, now and then, a walk to another page, which is no edit.</summary>
    public void Edit()
    {
        if (Next(3) == 0)
            Walk();
        Question question = One(session.Knowledge.Questions);
        switch (Next(13))
        {
            case 0:
                // Of these two nothing but a note is left.
                session.SayNotKnown(
                    Next(2) == 0
                        ? question
                        : One(
                            session.Knowledge.Questions.Where(one =>
                                one.Kind is QuestionKind.Weeds or QuestionKind.Past
                            )
                        )
                );
                break;
            case 1:
                session.Clear(question);
                break;
            case 2:
                session.Change(
                    session.Area.WithWeed(
                        new WeedSeen(One(session.Knowledge.Weeds.Keys), One("young", "mature"), Next(101))
                    )
                );
                break;
            case 3 when session.Area.Weeds is { IsEmpty: false } weeds:
                session.Change(session.Area.WithoutWeed(One(weeds).Weed));
                break;
            case 4:
                session.Change(session.Area with { Weeds = [] });
                break;
            case 5:
                session.Change(session.Area.WithPast(Past()));
                break;
            case 6 when session.Area.Past is { IsEmpty: false } past:
                session.Change(session.Area.WithoutPastAt(Next(past.Length)));
                break;
            case 7:
                session.AddArea(One("", "Mist house", "Yard"));
                break;
            case 8:
                session.RemoveArea(Next(session.Visit.Areas.Length));
                break;
            case 9:
                session.RenameArea(
                    Next(session.Visit.Areas.Length),
                    "Place " + (_named++).ToString(CultureInfo.InvariantCulture)
                );
                break;
            case 10:
                session.Describe(
                    session.Visit.Date.AddDays(Next(11) - 5),
                    One("", "A round"),
                    One("", "Nursery (invented)"),
                    Next(4) is var units and < 3 ? (UnitsWanted)units : null
                );
                break;
            case 11:
                // To answer for an area alone is no edit yet; to go back to the whole nursery is one.
                Question ofNursery = One(session.Knowledge.Questions.Where(one => one.IsOfNursery));
                bool isForAll = Next(2) == 0;
                session.AnswerForAll(ofNursery, isForAll);
                if (!isForAll)
                    Say(ofNursery);
                break;
            default:
                Say(question);
                break;
        }
    }

    private void Walk()
    {
        switch (Next(5))
        {
            case 0:
                session.Next();
                break;
            case 1:
                session.Back();
                break;
            case 2:
                session.GoTo(One(session.Questions).Question);
                break;
            case 3:
                session.AskAgain();
                break;
            default:
                session.GoToArea(Next(session.Visit.Areas.Length));
                break;
        }
    }

    private void Say(Question question)
    {
        Answer? answer = question.Kind switch
        {
            QuestionKind.Weeds or QuestionKind.Past => null,
            QuestionKind.Number => new Answer.Number(question.Between?.Low ?? 1),
            QuestionKind.Chemicals => new Answer.Words(WordSet.Of(One("vinegar", "glyphosate", "2-4-d"))),
            QuestionKind.Name => new Answer.Words(WordSet.Of(One("north-house", "south-house"))),
            QuestionKind.Date => new Answer.Date(session.Visit.Date.AddDays(-Next(200))),
            _ => new Answer.Words(WordSet.Of(One(Answering.ChoicesOf(session.Knowledge, question)).Id)),
        };
        if (answer is not null)
            session.Say(question.Id, answer);
    }

    private PastApplication Past()
    {
        bool isListed = Next(3) > 0;
        return new PastApplication(
            isListed ? One(session.Knowledge.Treatments.Keys) : null,
            session.Visit.Date.AddDays(-Next(300)),
            One(null, "clean", "escapes"),
            WordSet.Empty
        )
        {
            Groups = isListed ? WordSet.Empty : WordSet.Of("3"),
            Hour = One<TimeOnly?>(null, new TimeOnly(7, 30)),
            Method = One(null, "granules"),
            PartOnly = One<bool?>(null, true, false),
            WateredIn = One<bool?>(null, true, false),
            SeasonsRunning = One<int?>(null, 2),
        };
    }

    private int Next(int below) => tape[_at++ % tape.Length] % below;

    private T One<T>(params IEnumerable<T> of)
    {
        T[] all = [.. of];
        return all[Next(all.Length)];
    }
}
