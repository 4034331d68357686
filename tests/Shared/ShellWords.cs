namespace WeedAdvisor.Golden;

/// <summary>Splits a command as a shell does: at blanks, keeping what stands in double quotes together.</summary>
internal static class ShellWords
{
    /// <summary>The words of one command; a backslash at the end of a line joins the next to it.</summary>
    public static string[] Of(string command)
    {
        var words = new List<string>();
        var word = new System.Text.StringBuilder();
        bool inQuotes = false,
            inWord = false;
        string joined = command.Replace("\\\n", " ", StringComparison.Ordinal);
        foreach (char c in joined)
        {
            if (c == '"')
            {
                (inQuotes, inWord) = (!inQuotes, true);
            }
            else if (!inQuotes && char.IsWhiteSpace(c))
            {
                if (inWord)
                    words.Add(word.ToString());
                word.Clear();
                inWord = false;
            }
            else
            {
                word.Append(c);
                inWord = true;
            }
        }

        Assert.False(inQuotes, $"a quote is open: {command}");
        if (inWord)
            words.Add(word.ToString());
        return [.. words];
    }
}
