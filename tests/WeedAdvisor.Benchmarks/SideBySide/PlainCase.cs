namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>A case in plain records, from which each way makes what it works on. All of it is known.</summary>
public sealed record PlainCase(PlainSite Site, IReadOnlyList<PlainWeed> Weeds);

/// <summary>The one site of a case.</summary>
public sealed record PlainSite(string Cover, string Stock);

/// <summary>One of the weeds of a case.</summary>
public sealed record PlainWeed(string Id, string Kind, string Stage, int Percent);

/// <summary>A record of the catalogue.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Controls">The kinds of weeds that it controls.</param>
/// <param name="Under">The covers under which it may be used.</param>
/// <param name="Form">Its form.</param>
public sealed record PlainAction(string Id, string[] Controls, string[] Under, string Form);

/// <summary>A rule in plain words: a site and a weed, and perhaps an action that fits both.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Stocks">The stock of the site is one of these.</param>
/// <param name="Kinds">The kind of the weed is one of these.</param>
/// <param name="Stages">The stage of the weed is one of these.</param>
/// <param name="LeastPercent">The weed covers at least so much.</param>
/// <param name="Forms">
/// The form of an action, which controls the kind of the weed and may be used under the cover of the site, is one of
/// these; null for a rule on the case alone.
/// </param>
public sealed record PlainRule(
    string Id,
    string[] Stocks,
    string[] Kinds,
    string[] Stages,
    int LeastPercent,
    string[]? Forms
);

/// <summary>What a rule concludes: of the area by a weed, or of an action by a weed.</summary>
public readonly record struct Concluded(string Rule, string Weed, string? Action)
{
    /// <summary>The same as one text, by which the ways are compared.</summary>
    public string Key => $"{Rule}(site,weed/{Weed}{(Action is null ? "" : $",action/{Action}")})";
}
