using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>The draft of a visit, with the file it belongs to.</summary>
/// <param name="Visit">The visit as it stood.</param>
/// <param name="File">The whole path of its file; null when it stands in none.</param>
/// <param name="Stamp">What that file held when it was read; null when that is not known.</param>
public sealed record Draft(Visit Visit, string? File, FileStamp? Stamp)
{
    private const string FileKey = "# file: ",
        StampKey = "# held: ";

    private static readonly PathJson s_json = new(new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>How much was said: areas, answers, weeds and earlier applications.</summary>
    public static int Said(Visit visit) =>
        visit.Areas.Sum(area => 1 + area.Answers.Count + (area.Weeds?.Length ?? 0) + (area.Past?.Length ?? 0));

    /// <summary>The draft as a visit file; what it belongs to stands in comments at its head.</summary>
    public string Text() =>
        "# Kept by the program until the visit is saved.\n"
        + (File is null ? "" : $"{FileKey}{JsonSerializer.Serialize(File, s_json.String)}\n")
        + (Stamp is null ? "" : $"{StampKey}{Stamp}\n")
        + VisitText.Of(Visit);

    /// <summary>Reads a draft, of this or an earlier program; null when it can't be read with this knowledge.</summary>
    public static Draft? Read(string path, KnowledgeBase knowledge)
    {
        if (FileKinds.Of(path) != FileKind.Regular)
            return null;
        try
        {
            Visit? visit = VisitFile.Read(path, knowledge).Value
                ?? VisitFile.Recover(System.IO.File.ReadAllText(path), knowledge);
            return visit is null ? null : Headed(path, new Draft(visit, null, null));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static Draft Headed(string path, Draft draft)
    {
        try
        {
            foreach (string line in System.IO.File.ReadLines(path).TakeWhile(line => line.StartsWith('#')))
            {
                if (line.StartsWith(FileKey, StringComparison.Ordinal))
                    draft = draft with { File = JsonSerializer.Deserialize(line[FileKey.Length..], s_json.String) };
                else if (line.StartsWith(StampKey, StringComparison.Ordinal))
                    draft = draft with { Stamp = FileStamp.Parse(line[StampKey.Length..]) };
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            // The answers matter more than where they belong.
        }

        return draft;
    }
}

/// <summary>Writes a path in quotes without reflection, which the native program does without.</summary>
[JsonSerializable(typeof(string))]
internal sealed partial class PathJson : JsonSerializerContext;
