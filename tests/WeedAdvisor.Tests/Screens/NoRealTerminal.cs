using System.Runtime.CompilerServices;

namespace WeedAdvisor.Tests.Screens;

/// <summary>Keeps the terminal library off the real terminal before any test runs.</summary>
internal static class NoRealTerminal
{
    [ModuleInitializer]
    internal static void Set() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
