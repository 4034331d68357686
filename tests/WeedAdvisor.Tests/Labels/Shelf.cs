using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Labels;

/// <summary>An interview of the demo's container yard with a label book in a folder of its own.</summary>
internal sealed class Shelf : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("weedadvisor-").FullName;

    public Shelf(string? book = null)
    {
        if (book is not null)
            AtomicFile.Write(Book, book);
        Session = DemoInterview.At("container-yard");
        Labels = new LabelShelf(
            Session,
            ShippedRules.Knowledge,
            _ => File.Exists(Book) ? LabelShelf.BesideVisit : null,
            path => Path.GetFullPath(path, _folder),
            Session.Visit.Date
        );
        Trouble = Labels.Turn(null);
    }

    public string Book => Path.Combine(_folder, LabelShelf.BesideVisit);

    public string? Trouble { get; }

    public string Text => File.ReadAllText(Book);

    public InterviewSession Session { get; }

    public LabelShelf Labels { get; }

    /// <summary>A desk on which fields are typed, by the names they have in the book.</summary>
    public LabelDesk Typed(string treatment, params (string Key, string Text)[] fields)
    {
        var desk = new LabelDesk(Labels, treatment);
        foreach ((string key, string text) in fields)
            desk.Type(LabelField.All.Select((field, at) => (field, at)).Single(one => one.field.Key == key).at, text);
        return desk;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
