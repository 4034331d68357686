using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>
/// One topic, written once: what it says, without a medium. A topic is a pure function from what was reckoned to this;
/// <see cref="DocumentText"/>, <see cref="DocumentHtml"/>, <see cref="DocumentMarkdown"/> and
/// <see cref="DocumentScreen"/> make of it what a reader sees.
/// </summary>
/// <param name="Title">What it is about.</param>
/// <param name="Blocks">What it says, in the order of reading.</param>
public sealed record Document(Line Title, ImmutableArray<Block> Blocks);
