using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview.Pages;

/// <summary>What things of an advice are called on the screen, where room is short.</summary>
/// <param name="Knowledge">Where the names come from.</param>
public sealed record AdviceWords(KnowledgeBase Knowledge)
{
    private readonly Names _names = new(Knowledge);

    /// <summary>An action's name.</summary>
    public string Name(string action) => Knowledge.ActionOf(action)?.Name ?? action;

    /// <summary>Whether the action is a chemical use.</summary>
    public bool IsChemical(string action) => Knowledge.Treatments.ContainsKey(action);

    /// <summary>What has to be found out, in words.</summary>
    public string Need(Need need)
    {
        if (need.Kind == NeedKind.Question)
            return Knowledge.QuestionOf(need.Id)?.Ask ?? need.Id;
        int dot = need.Id.IndexOf('.', StringComparison.Ordinal);
        string field = (dot < 0 ? need.Id : need.Id[(dot + 1)..]).Replace('-', ' ');
        return $"the label's \"{field}\" (the record leaves it open)";
    }

    /// <summary>The numbers behind a rank, in one line.</summary>
    public string Figures(ClearAction action, AreaReading reading)
    {
        string cost = _names.Cost(action.Action, reading) is { } known ? $"; {Costs.InShort(known)}" : "";
        return $"{EffectWords.Of(action)}{cost}";
    }

    /// <summary>A rule's id as the sentence it is.</summary>
    public static string Sentence(string judgement)
    {
        string words = judgement.Replace('-', ' ');
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
