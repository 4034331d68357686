using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads crops. What a crop is-a further up is filled in when all crops are known.</summary>
internal static class CropReader
{
    /// <summary>A crop.</summary>
    public static Crop Read(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = map.Text("name"),
            Parents = map.WordSet("is-a", "crops"),
            IsA = WordSet.Empty,
            Traits = map.WordSet("traits", "list:crop-trait"),
            Notes = map.Texts("notes"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Crop),
        };
}
