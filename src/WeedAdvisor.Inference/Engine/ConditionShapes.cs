using System.Linq.Expressions;
using System.Runtime.CompilerServices;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The lambdas that conditions come in, one for each number of facts that they look at. Their types are put together
/// while rules are compiled; a native program can do that only from shapes that it has seen, so each is named here.
/// </summary>
internal static class ConditionShapes
{
    /// <summary>
    /// The most facts that one condition looks at: the one it is about, and those that bound its variables.
    /// </summary>
    public const int MostFacts = 8;

    private static readonly Delegate[] s_delegates =
    [
        new Func<object, bool>(_ => true),
        new Func<object, object, bool>((_, _) => true),
        new Func<object, object, object, bool>((_, _, _) => true),
        new Func<object, object, object, object, bool>((_, _, _, _) => true),
        new Func<object, object, object, object, object, bool>((_, _, _, _, _) => true),
        new Func<object, object, object, object, object, object, bool>((_, _, _, _, _, _) => true),
        new Func<object, object, object, object, object, object, object, bool>((_, _, _, _, _, _, _) => true),
        new Func<object, object, object, object, object, object, object, object, bool>(
            (_, _, _, _, _, _, _, _) => true
        ),
    ];

    private static readonly Type[] s_lambdas =
    [
        typeof(Expression<Func<object, bool>>),
        typeof(Expression<Func<object, object, bool>>),
        typeof(Expression<Func<object, object, object, bool>>),
        typeof(Expression<Func<object, object, object, object, bool>>),
        typeof(Expression<Func<object, object, object, object, object, bool>>),
        typeof(Expression<Func<object, object, object, object, object, object, bool>>),
        typeof(Expression<Func<object, object, object, object, object, object, object, bool>>),
        typeof(Expression<Func<object, object, object, object, object, object, object, object, bool>>),
    ];

    /// <summary>Names them, so that the native compiler keeps them.</summary>
    /// <returns>Whether there are as many as are spoken of.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static bool AreKept() => s_delegates.Length == MostFacts && s_lambdas.Length == MostFacts;
}
