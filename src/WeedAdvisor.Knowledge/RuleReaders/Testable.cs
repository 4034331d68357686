using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>An attribute that a pattern can test.</summary>
/// <param name="Definition">Its name, shape and words.</param>
/// <param name="Between">The range of its numbers, where one is known.</param>
internal sealed record Testable(AttributeDefinition Definition, Span? Between);
