namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>A way of finding what rules conclude from a case. It is made once and takes case after case.</summary>
internal interface IWay
{
    /// <summary>What it is called in the table.</summary>
    public string Name { get; }

    /// <summary>Concludes from one of the cases it was made with and gives how many conclusions there are.</summary>
    public int Conclude(int place);

    /// <summary>The last conclusions, each as a text, in no order.</summary>
    public IEnumerable<string> Keys();
}
