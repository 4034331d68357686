using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Interview.Desks;

/// <summary>Fields that are typed one by one.</summary>
public interface IFieldDesk
{
    /// <summary>The names of its fields, in order; the others take their number in it, from 0.</summary>
    public ImmutableArray<string> Fields { get; }

    /// <summary>What is typed in a field.</summary>
    public string TextOf(int field);

    /// <summary>Types in a field.</summary>
    public void Type(int field, string text);

    /// <summary>What is wrong with what is typed in a field; null when nothing is.</summary>
    public string? ProblemOf(int field);

    /// <summary>What stands beside a field: what is wrong with it, else what may be written.</summary>
    public AdviceLine Beside(int field);

    /// <summary>The same where there are only so many columns: what matters less gives way.</summary>
    public AdviceLine Beside(int field, int columns) => Beside(field);

    /// <summary>What is told of the field that is being filled in.</summary>
    public AdviceLine About(int field);
}
