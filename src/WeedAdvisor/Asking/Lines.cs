using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Asking;

/// <summary>
/// Asks and hears one line at a time. No colour and no cursor movement, so that it suits pipes and screen readers.
/// </summary>
/// <param name="input">What is heard.</param>
/// <param name="output">What is said.</param>
/// <param name="echo">Whether to write down what was heard; a terminal does so by itself, a pipe does not.</param>
public sealed class Lines(TextReader input, TextWriter output, bool echo)
{
    private const int Width = 78;

    private string? _first;

    /// <summary>Whether the input has ended.</summary>
    public bool Ended { get; private set; }

    /// <summary>Says one line, broken where it is too long.</summary>
    public void Say(string text = "", string indent = "")
    {
        foreach (string line in Wrapping.Lines(text, Width, indent, new string(' ', indent.Length)))
            output.WriteLine(line.TrimEnd());
    }

    /// <summary>Says a line that is laid out already.</summary>
    public void SayAsIs(string line) => output.WriteLine(line);

    /// <summary>Gives back a line, to be heard again before all others.</summary>
    public void HearFirst(string line) => _first = line;

    /// <summary>
    /// Asks whether to do something. A line that is neither yes nor no means no and is heard again as the next line, so
    /// that a script that knows nothing of the question loses nothing.
    /// </summary>
    public bool Agrees(string question)
    {
        Say(question, "  ");
        switch (Hear("yes or no")?.ToLowerInvariant())
        {
            case "yes" or "y":
                return true;
            case null or "" or "no" or "n":
                return false;
            case string other:
                HearFirst(other);
                return false;
        }
    }

    /// <summary>Asks for a line; null when the input has ended.</summary>
    public string? Hear(string prompt)
    {
        output.Write(prompt + "> ");
        output.Flush();
        string? line = Ended ? null : _first ?? input.ReadLine();
        _first = null;
        if (line is null)
        {
            Ended = true;
            output.WriteLine();
            return null;
        }

        if (echo)
            output.WriteLine(line);
        return line.Trim();
    }
}
