namespace WeedAdvisor.Commands;

/// <summary>
/// One line of a terminal that tells how far some work is, written over again and again, from any thread. Where errors
/// do not go to a terminal nothing is told.
/// </summary>
/// <param name="surroundings">Where it is told, if that is a terminal.</param>
internal sealed class ProgressLine(Surroundings surroundings)
{
    // One less than the narrowest terminal has, so that the line does not wrap.
    private const int MostColumns = 79;

    private readonly TextWriter? _told = surroundings.IsErrorTerminal ? surroundings.Error : null;
    private readonly Lock _line = new();
    private int _length;

    /// <summary>Writes the line anew; nothing takes it away.</summary>
    public void Write(string line)
    {
        if (_told is null)
            return;
        lock (_line)
        {
            line = line[..Math.Min(line.Length, MostColumns)];
            _told.Write("\r" + line.PadRight(_length) + (line.Length == 0 ? "\r" : ""));
            _told.Flush();
            _length = line.Length;
        }
    }
}
