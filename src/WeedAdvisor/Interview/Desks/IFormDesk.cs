using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Interview.Desks;

/// <summary>A form being filled in: its fields, and what follows from them at once.</summary>
public interface IFormDesk : IFieldDesk
{
    /// <summary>What the form is.</summary>
    public string Title { get; }

    /// <summary>What it is for.</summary>
    public string Purpose { get; }

    /// <summary>What may be written in a field, and what happens when nothing is.</summary>
    public string Hint(int field);

    /// <summary>Whether a field takes a word, so that a blank in it can stand for the next one.</summary>
    public bool TakesWord(int field);

    /// <summary>Puts the next of the words that fit into a field that takes one.</summary>
    public void NextWord(int field);

    /// <summary>What follows, or what stands in its way, in lines that fit.</summary>
    /// <param name="width">Columns.</param>
    public ImmutableArray<AdviceLine> Lines(int width);
}
