namespace WeedAdvisor.Knowledge.Problems;

/// <summary>A place in a text file.</summary>
/// <param name="File">The file's path as it was given, with forward slashes; relative to the knowledge folder where
/// there is one.</param>
/// <param name="Line">Line, from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column, from 1; 0 when the whole file is meant.</param>
public readonly record struct Place(string File, int Line, int Column)
{
    /// <summary>The file as a whole.</summary>
    public static Place Whole(string file) => new(file, 0, 0);

    /// <summary><c>file:line:column</c>, as editors understand it.</summary>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}
