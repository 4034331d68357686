using System.Diagnostics;

namespace WeedAdvisor.Tests;

/// <summary>Makes pipes that have a name.</summary>
internal static class Pipes
{
    public static void Make(string path)
    {
        using Process made = Process.Start("mkfifo", [path]);
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
