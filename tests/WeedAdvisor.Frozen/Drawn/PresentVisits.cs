using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>
/// Draws visits in the second format, with earlier uses told in full, houses shared by areas, answers at the head and
/// label books beside them. Half of them lie near a worked visit, so that chemicals that are clear occur; the others
/// hold anything.
/// </summary>
internal sealed class PresentVisits
{
    private const int OnAShelf = 20;
    private const ulong FirstSeed = 1_000_000;
    private static readonly DateOnly s_first = new(2026, 1, 5);

    // Asked once for the whole nursery.
    private static readonly string[] s_ofNursery = ["licensed", "equipment", "region", "labour-rate", "organic"];
    private readonly KnowledgeBase _knowledge;
    private readonly UsesDrawn _uses;
    private readonly NearVisits _near;
    private readonly string[] _weeds;
    private readonly string[] _stages;

    private PresentVisits(KnowledgeBase knowledge, Visit[] worked)
    {
        _knowledge = knowledge;
        _uses = new UsesDrawn(knowledge);
        _near = new NearVisits(knowledge, worked);
        _weeds = [.. knowledge.Weeds.Keys];
        _stages = [.. knowledge.Vocabulary["stage"].Words.Select(word => word.Key)];
    }

    /// <summary>Writes visits into a folder, a label book beside every twenty, the same every time.</summary>
    /// <param name="rules">The knowledge folder, with its worked visits.</param>
    /// <param name="folder">Where to write.</param>
    /// <param name="count">How many.</param>
    /// <param name="page">Where to name the visits that the program would refuse.</param>
    /// <returns>0; 1 when a visit is refused.</returns>
    public static int Write(string rules, string folder, int count, TextWriter page)
    {
        KnowledgeBase knowledge = KnowledgeFolder.Load(rules).Value!;
        string[] files = [.. Directory.GetFiles(Path.Combine(rules, "visits"), "*.yaml").Order(StringComparer.Ordinal)];
        var drawer = new PresentVisits(knowledge, [.. files.Select(file => VisitFile.Read(file, knowledge).Value!)]);
        int refused = 0;
        for (int number = 1; number <= count; number++)
        {
            string place = ((number - 1) / OnAShelf).ToString("000", CultureInfo.InvariantCulture);
            string shelf = Path.Combine(folder, "shelf-" + place);
            var tape = new Tape(FirstSeed + (ulong)number);
            Directory.CreateDirectory(shelf);
            if ((number - 1) % OnAShelf == 0 && !tape.OnceIn(4))
                AtomicFile.Write(Path.Combine(shelf, "labels.yaml"), LabelsDrawn.Book(knowledge, tape));
            string id = "drawn-" + number.ToString("0000", CultureInfo.InvariantCulture);
            string text = drawer.Visit(tape).Text(id);
            AtomicFile.Write(Path.Combine(shelf, id + ".yaml"), text);
            if (VisitFile.Parse(text, id, knowledge).Value is not null)
                continue;
            page.WriteLine($"refused: {id}");
            refused++;
        }

        return refused == 0 ? 0 : 1;
    }

    private VisitSketch Visit(Tape tape)
    {
        VisitSketch visit = tape.OnceIn(2) ? _near.Visit(tape, _uses) : Anything(tape);
        ToTheHead(visit, tape);
        return visit;
    }

    private VisitSketch Anything(Tape tape)
    {
        var visit = new VisitSketch(s_first.AddDays(tape.Below(360)));
        for (int number = 1 + tape.Below(4); number > 0; number--)
            visit.Areas.Add(Area(visit, tape));
        return visit;
    }

    private AreaSketch Area(VisitSketch visit, Tape tape)
    {
        var area = new AreaSketch(string.Create(CultureInfo.InvariantCulture, $"area-{visit.Areas.Count + 1}"));
        foreach (Question question in _knowledge.Questions)
        {
            // One question in five stays open, or is said not to be known; the place is always said.
            bool isSaid = question.Id == "place" || !tape.OnceIn(5);
            if (AnswersDrawn.Answer(_knowledge, question, visit.Date, tape) is { } answer && (isSaid || tape.OnceIn(3)))
                area.Answers[question.Id] = isSaid ? answer : "not-known";
        }

        if (!tape.OnceIn(8))
            area.Weeds = [.. tape.Some(_weeds, 4).Select(weed => Seen(weed, tape))];
        if (tape.OnceIn(6))
            return area;
        area.Past = [];
        for (int uses = tape.Below(5); uses > 0; uses--)
            area.Tell(_uses.Use(visit.Date, tape));
        return area;
    }

    private string Seen(string weed, Tape tape)
    {
        string stage = tape.OnceIn(5) ? "" : $", stage: {tape.Of(_stages)}";
        string cover = tape.OnceIn(3) ? "" : FormattableString.Invariant($", cover-percent: {tape.Below(40)}");
        return $"{{ weed: {weed}{stage}{cover} }}";
    }

    // What holds for the whole nursery is said once, and otherwise by an area now and then.
    private static void ToTheHead(VisitSketch visit, Tape tape)
    {
        foreach (string question in s_ofNursery.Where(_ => tape.OnceIn(2)))
        {
            if (visit.Areas[0].Answers.TryGetValue(question, out string? answer))
                visit.Head[question] = answer;
            foreach (AreaSketch area in visit.Areas.Where(_ => !tape.OnceIn(8)))
                area.Answers.Remove(question);
        }
    }
}
