using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>The answers on what the grower has, asks about or used last, as JSON.</summary>
internal static class HeldJson
{
    public static void Write(Utf8JsonWriter json, AreaAdvice area, Names names, DateOnly day) =>
        json.WriteList("inHand", HeldAnswers.Of(names, area, day), held =>
        {
            json.WriteText("word", held.Word);
            json.WriteString("name", held.Name);
            json.WriteString("from", FromWord(held.From));
            json.WriteString("answer", held.VerdictWord);
            json.WriteText("action", held.Action);
            json.WriteTexts("otherUses", held.Others);
            json.WriteString("text", Figures.Sentence(held.Says));
            json.WriteText("mind", held.Mind.Length == 0 ? null : held.Mind);
        });

    private static string FromWord(HeldFrom from) =>
        from switch
        {
            HeldFrom.InHand => "asked",
            HeldFrom.Used => "used",
            _ => "label-book",
        };
}
