using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.RuleReaders;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the questions, in order: a question can only depend on answers to those before it.</summary>
internal sealed class QuestionReader
{
    private readonly List<Question> _asked = [];

    /// <summary>The next question.</summary>
    public Question Read(MappingReader map)
    {
        QuestionKind kind = Kind(map);
        bool isNumber = kind == QuestionKind.Number;
        var question = new Question
        {
            Order = _asked.Count,
            Id = map.Id(),
            Group = map.Word("group", "list:question-group"),
            Ask = map.Text("ask"),
            InBrief = map.OptionalText("in-brief"),
            Why = map.Text("why"),
            Kind = kind,
            Choices = kind is QuestionKind.OneOf or QuestionKind.AnyOf ? Choices(map) : [],
            Unit = isNumber ? map.Text("unit") : null,
            Between = isNumber ? map.Range("between", -1_000_000, 1_000_000) : null,
            Sizes = isNumber ? Sizes(map) : [],
            IsOfNursery = map.OptionalFlag("whole-nursery"),
            Guards = map.OptionalFlag("guards"),
            ChangedBy = Changed(map),
            PastOnly = kind == QuestionKind.Date && map.OptionalFlag("past-only"),
            AskedWhen = Conditions(map, "asked-when", withDerived: false),
            LastWhen = Conditions(map, "last-when", withDerived: true),
            Sources = map.Sources(),
            Where = map.Where,
            Memory = map.FinishWithMemory(),
        };
        if (AttributeSchema.DerivedSite.Any(derived => derived.Name == question.Id))
            map.Context.Report(
                map.Node,
                $"a question '{question.Id}'",
                "an id that is not worked out from the answers"
            );
        _asked.Add(question);
        return question;
    }

    private static ChangedBy Changed(MappingReader map) =>
        map.OptionalWord("changed-by", "words:hand|time") switch
        {
            "hand" => ChangedBy.Hand,
            "time" => ChangedBy.Time,
            _ => ChangedBy.Nobody,
        };

    private static QuestionKind Kind(MappingReader map) =>
        map.Word("kind", "words:one-of|any-of|number|date|crops|region|weeds|past|name|chemicals") switch
        {
            "any-of" => QuestionKind.AnyOf,
            "number" => QuestionKind.Number,
            "date" => QuestionKind.Date,
            "crops" => QuestionKind.Crops,
            "region" => QuestionKind.Region,
            "weeds" => QuestionKind.Weeds,
            "past" => QuestionKind.Past,
            "name" => QuestionKind.Name,
            "chemicals" => QuestionKind.Chemicals,
            _ => QuestionKind.OneOf,
        };

    private static ImmutableArray<AnswerChoice> Choices(MappingReader map)
    {
        ImmutableArray<AnswerChoice> choices = map.Each("answers", "an answer", Choice);
        if (choices.Length < 2)
            map.Context.Report(map.Node, $"a question with {choices.Length} answers", "at least two under 'answers'");
        foreach (IGrouping<string, AnswerChoice> same in choices.GroupBy(choice => choice.Id))
        {
            if (same.Count() > 1)
                map.Context.Report(map.Node, $"the answer '{same.Key}' a second time", "each answer once");
        }

        return choices;
    }

    private static ImmutableArray<NamedSize> Sizes(MappingReader map)
    {
        ImmutableArray<NamedSize> sizes = map.Each("sizes", "a size", Size);
        foreach (IGrouping<string?, NamedSize> same in sizes.GroupBy(size => NamedSize.Plain(size.Name)))
        {
            string name = same.First().Name;
            if (same.Key is null)
                map.Context.Report(
                    map.Node,
                    $"the size '{name}'",
                    "a class such as '#3', or a volume such as '2 litre'"
                );
            else if (same.Count() > 1)
                map.Context.Report(map.Node, $"the size '{name}' a second time", "each size once");
        }

        return sizes;
    }

    private static NamedSize Size(MappingReader map)
    {
        var size = new NamedSize(map.Text("name"), map.Number("is", 0, 1_000_000));
        map.Finish();
        return size;
    }

    private static AnswerChoice Choice(MappingReader map)
    {
        var choice = new AnswerChoice(map.Id(), map.Text("text"));
        map.Finish();
        return choice;
    }

    private ImmutableArray<AttributeCondition> Conditions(MappingReader map, string key, bool withDerived)
    {
        if (map.OptionalMap(key, "tests on earlier answers") is not { Node: MappingNode tests })
            return [];
        TestableSet earlier = TestableSet.OfSite(_asked, withDerived);
        return new TestReader(map.Context, variables: null).ReadAll(tests, earlier);
    }
}
