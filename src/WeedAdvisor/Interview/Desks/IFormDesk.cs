using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Interview.Desks;

/// <summary>A form being filled in: fields that are typed one by one, and what follows from them at once.</summary>
public interface IFormDesk
{
    /// <summary>What the form is.</summary>
    public string Title { get; }

    /// <summary>What it is for.</summary>
    public string Purpose { get; }

    /// <summary>The names of its fields, in order; the others take their number in it, from 0.</summary>
    public ImmutableArray<string> Fields { get; }

    /// <summary>What is typed in a field.</summary>
    public string TextOf(int field);

    /// <summary>Types in a field.</summary>
    public void Type(int field, string text);

    /// <summary>What is wrong with what is typed in a field; null when nothing is.</summary>
    public string? ProblemOf(int field);

    /// <summary>What may be written in a field, and what happens when nothing is.</summary>
    public string Hint(int field);

    /// <summary>What stands beside a field: what is wrong with it, else what may be written.</summary>
    public AdviceLine Beside(int field);

    /// <summary>What is told of the field that is being filled in.</summary>
    public AdviceLine About(int field);

    /// <summary>Whether a field takes a word, so that a blank in it can stand for the next one.</summary>
    public bool TakesWord(int field);

    /// <summary>Puts the next of the words that fit into a field that takes one.</summary>
    public void NextWord(int field);

    /// <summary>What follows, or what stands in its way, in lines that fit.</summary>
    /// <param name="width">Columns.</param>
    public ImmutableArray<AdviceLine> Lines(int width);
}
