using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>A list of words and where it stands.</summary>
internal sealed record PlacedList(WordList List, Place Where);

/// <summary>Reads lists of words: a map from list to a map from word to plain text.</summary>
internal static class VocabularyReader
{
    /// <summary>All lists of the file.</summary>
    public static IEnumerable<PlacedList> Read(Node root, ReadContext context)
    {
        if (MappingReader.Of(root, context, "lists of words by id") is not { Node: MappingNode lists })
            yield break;
        foreach (Entry list in lists.Entries)
        {
            if (
                MappingReader.Of(list.Value, context, "a list of words with their plain text")
                is not { Node: MappingNode words } reader
            )
                continue;
            yield return new PlacedList(
                new WordList(
                    list.Key.Text,
                    [.. words.Entries.Select(word => KeyValuePair.Create(word.Key.Text, reader.Text(word.Key.Text)))]
                ),
                context.At(list.Key)
            );
        }
    }
}
