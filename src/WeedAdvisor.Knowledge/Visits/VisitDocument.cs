using System.Collections.Immutable;
using System.Text;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>The bytes that a file is to hold.</summary>
/// <param name="Bytes">The bytes.</param>
/// <param name="KeepsLines">
/// Whether they are the lines of the document with no more than the edits in them; false when the visit had to be
/// written anew, without its comments.
/// </param>
public sealed record VisitWriting(ImmutableArray<byte> Bytes, bool KeepsLines);

/// <summary>
/// A visit together with the text it was read from, so that saving it changes no more than was edited: comments, blank
/// lines, the order of keys and parts that a visit does not use, such as <c>expect</c>, stay.
/// </summary>
public sealed class VisitDocument
{
    private static readonly UTF8Encoding s_utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly KnowledgeBase _knowledge;
    private readonly string _text;

    private VisitDocument(byte[] bytes, string text, Visit visit, KnowledgeBase knowledge)
    {
        Bytes = [.. bytes];
        Stamp = FileStamp.Of(bytes);
        Visit = visit;
        _text = text;
        _knowledge = knowledge;
    }

    /// <summary>The bytes as they were read.</summary>
    public ImmutableArray<byte> Bytes { get; }

    /// <summary>Tells whether the file still holds them.</summary>
    public FileStamp Stamp { get; }

    /// <summary>The visit as it was read.</summary>
    public Visit Visit { get; }

    /// <summary>Reads a file once, from its beginning to its end, so that it may be a pipe.</summary>
    /// <param name="path">The file; at most 4 MB.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Outcome<VisitDocument, Problem> Read(string path, KnowledgeBase knowledge)
    {
        string name = path.Replace('\\', '/');
        byte[]? bytes = FileBytes.Read(path, name, SourceText.VisitFileLimit, out Problem? problem);
        return bytes is null ? Outcome<VisitDocument, Problem>.Bad([problem!]) : Of(bytes, name, knowledge);
    }

    /// <summary>The same of bytes at hand.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="name">What to call them in problems.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Outcome<VisitDocument, Problem> Of(byte[] bytes, string name, KnowledgeBase knowledge)
    {
        string? text = SourceText.Decode(name, bytes, out Problem? problem);
        if (text is null)
            return Outcome<VisitDocument, Problem>.Bad([problem!]);
        Outcome<Visit, Problem> visit = VisitFile.Parse(text, name, knowledge);
        return visit.IsGood
            ? Outcome<VisitDocument, Problem>.Good(new VisitDocument(bytes, text, visit.Value, knowledge))
            : Outcome<VisitDocument, Problem>.Bad(visit.Refusals);
    }

    /// <summary>A visit that stands in no file yet.</summary>
    public static VisitWriting Begin(Visit visit) => new([.. s_utf8.GetBytes(VisitText.Of(visit))], KeepsLines: true);

    /// <summary>
    /// The bytes with the edits of a visit in them; the very same bytes when nothing was edited. What comes out is read
    /// again: when it is not the visit that was wanted, the visit is written anew.
    /// </summary>
    public VisitWriting With(Visit edited)
    {
        string wanted = VisitText.Of(edited);
        if (wanted == VisitText.Of(Visit))
            return new VisitWriting(Bytes, KeepsLines: true);
        string? patched = VisitPatch.Of(_text, Visit, edited);
        return patched is not null && Holds(patched, wanted)
            ? new VisitWriting([.. Mark(), .. s_utf8.GetBytes(patched)], KeepsLines: true)
            : new VisitWriting([.. s_utf8.GetBytes(wanted)], KeepsLines: false);
    }

    private bool Holds(string text, string wanted)
    {
        (Visit? read, ImmutableArray<Problem> problems) = VisitFile.AsFarAsItGoes(text, _knowledge);
        if (read is null || text.Length > SourceText.VisitFileLimit)
            return false;
        (Visit? visit, ImmutableArray<Problem> known) = VisitFile.AsFarAsItGoes(wanted, _knowledge);
        return visit is not null
            && VisitText.Of(read) == VisitText.Of(visit)
            && problems.Length == known.Length
            && (!known.IsEmpty || VisitText.Of(read) == wanted);
    }

    private byte[] Mark() => Bytes.AsSpan().StartsWith("\uFEFF"u8) ? [.. "\uFEFF"u8] : [];
}
