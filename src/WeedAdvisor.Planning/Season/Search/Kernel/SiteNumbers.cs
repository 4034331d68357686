namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>Sites of action as numbers, and how often in a row each came before the plan begins.</summary>
internal sealed class SiteNumbers
{
    /// <summary>Numbers the sites of candidates; sites that only the past knows cannot matter.</summary>
    public SiteNumbers(SeasonProblem problem)
    {
        string[] names =
        [
            .. problem
                .Candidates.SelectMany(one => one.Sites)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        Of = [.. problem.Candidates.Select(one => NumbersOf(one, names))];
        RunsBefore = new byte[names.Length];
        foreach (PastUse past in problem.History)
        {
            int[] sites = NumbersOf(past.Used, names);
            for (int site = 0; site < names.Length; site++)
                RunsBefore[site] = (byte)(sites.Contains(site) ? Math.Min(RunsBefore[site] + 1, byte.MaxValue - 1) : 0);
        }
    }

    /// <summary>Each candidate's sites.</summary>
    public int[][] Of { get; }

    /// <summary>The running applications of each site before week 0.</summary>
    public byte[] RunsBefore { get; }

    private static int[] NumbersOf(SeasonCandidate candidate, string[] names) =>
        [.. candidate.Sites.Select(site => Array.IndexOf(names, site)).Where(site => site >= 0)];
}
