namespace WeedAdvisor.Knowledge.Folder;

/// <summary>
/// Spreads many small pieces of work over the processors. Does no more than that: the generic machinery of
/// <see cref="Parallel"/> takes longer to start than a knowledge folder takes to read.
/// </summary>
internal static class Work
{
    /// <summary>Runs the step for every number below the count, in no order, and returns when all are done.</summary>
    public static void ForEach(int count, Action<int> step)
    {
        int last = -1;
        void Run()
        {
            for (int i = Interlocked.Increment(ref last); i < count; i = Interlocked.Increment(ref last))
                step(i);
        }

        var others = new Task[Math.Min(Environment.ProcessorCount, count / 2)];
        for (int i = 0; i < others.Length; i++)
            others[i] = Task.Run(Run);
        Run();
        Task.WaitAll(others);
    }
}
