using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Reads the answer to one question and holds it against what the question allows.</summary>
internal sealed class AnswerReader(ReadContext context, DateOnly visitDate)
{
    private static readonly Answer s_notKnown = new Answer.NotKnown();

    /// <summary>The answer, or a problem and null.</summary>
    public Answer? Read(Question question, Entry entry)
    {
        Node node = entry.Value;
        if (node is ScalarNode { Text: VisitReader.NotKnown })
            return s_notKnown;
        return question.Kind switch
        {
            QuestionKind.OneOf => Words(node, $"answers:{question.Id}", most: 1),
            QuestionKind.Region => Words(node, "regions", most: 1),
            QuestionKind.AnyOf => Words(node, $"answers:{question.Id}", most: int.MaxValue),
            QuestionKind.Crops => Words(node, "crops", most: int.MaxValue),
            QuestionKind.Number => Number(question, node),
            QuestionKind.Date => Date(question, node),
            QuestionKind.Name => Name(node),
            QuestionKind.Chemicals => Chemicals(node),
            _ => Elsewhere(question, entry),
        };
    }

    private Answer.Words? Words(Node node, string notation, int most)
    {
        ValidWords? valid = context.Lexicon.Of(notation);
        string expected = valid?.Expected ?? "a word";
        if (node is not (ScalarNode { IsNothing: false } or SequenceNode) || (most == 1 && node is SequenceNode))
        {
            context.Report(node, node.Described, expected);
            return null;
        }

        IReadOnlyList<Node> items = node is SequenceNode list ? list.Items : [node];
        foreach (Node item in items)
        {
            if (item is ScalarNode scalar)
                context.CheckWord(scalar, scalar.Text, valid);
            else
                context.Report(item, item.Described, expected);
        }

        return new Answer.Words(WordSet.Of(items.OfType<ScalarNode>().Select(item => item.Text)));
    }

    private Answer.Number? Number(Question question, Node node)
    {
        if (node is not ScalarNode scalar || !ScalarGrammar.TryNumber(scalar.Text, out decimal number))
        {
            context.Report(node, node.Described, $"a number, in {question.Unit}");
            return null;
        }

        if (question.Between is { } range && (number < range.Low || number > range.High))
            context.Report(node, scalar.Text, $"{ScalarGrammar.Between(range.Low, range.High)}, in {question.Unit}");
        return new Answer.Number(number);
    }

    private Answer.Date? Date(Question question, Node node)
    {
        if (node is not ScalarNode scalar || !ScalarGrammar.TryDate(scalar.Text, out DateOnly date))
        {
            context.Report(node, node.Described, CalendarDay.ExpectedInsteadOf((node as ScalarNode)?.Text ?? ""));
            return null;
        }

        if (question.PastOnly && date > visitDate)
            context.Report(node, scalar.Text, $"a day not after the visit ({ScalarGrammar.Write(visitDate)})");
        return new Answer.Date(date);
    }

    private Answer.Words? Name(Node node)
    {
        if (node is ScalarNode scalar && ScalarGrammar.IsId(scalar.Text))
            return new Answer.Words(WordSet.Of([scalar.Text]));
        context.Report(node, node.Described, "a name: lower-case words joined by hyphens, such as house-2");
        return null;
    }

    // Any word is taken: what nobody knows is answered on the page, and stops no visit.
    private Answer.Words? Chemicals(Node node)
    {
        IReadOnlyList<Node> items = node is SequenceNode list ? list.Items : [node];
        List<string> words = [];
        foreach (Node item in items)
        {
            if (item is ScalarNode { IsNothing: false } scalar && ChemicalWords.Of(scalar.Text) is { } word)
                words.Add(word);
            else
                context.Report(
                    item,
                    item.Described,
                    $"the name of a chemical, at most {ChemicalWords.LongestName} letters, or [] for none"
                );
        }

        return new Answer.Words(WordSet.Of(words));
    }

    private Answer? Elsewhere(Question question, Entry entry)
    {
        string key = question.Kind == QuestionKind.Weeds ? "weeds" : "past";
        context.Report(
            entry.Key,
            $"'{question.Id}' among the answers",
            $"the key '{key}' of the area, beside 'answers'"
        );
        return null;
    }
}
