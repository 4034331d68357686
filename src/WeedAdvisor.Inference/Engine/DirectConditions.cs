using System.Linq.Expressions;
using System.Reflection;
using NRules.Extensibility;
using NRules.RuleModel;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// Gives the engine the delegates of its conditions without compiling or interpreting anything: an expression whose
/// last step calls a <see cref="CaseMatcher"/> becomes a delegate of that matcher, an action that does nothing a
/// delegate that does nothing. Whatever else the engine may hand over is interpreted, which is right, only slower.
/// </summary>
/// <remarks>
/// The engine's facts and tuples are internal types; a delegate may take a base type of its parameter instead.
/// </remarks>
internal sealed class DirectConditions : IExpressionCompiler
{
    private static readonly MethodInfo s_nothing = typeof(DirectConditions).GetMethod(
        nameof(Nothing),
        BindingFlags.Static | BindingFlags.NonPublic
    )!;

    /// <summary>How many expressions were not recognised.</summary>
    public int Interpreted { get; private set; }

    /// <inheritdoc/>
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate
    {
        if (Direct(typeof(TDelegate), expression) is TDelegate direct)
            return direct;
        Interpreted++;
        return expression.Compile(preferInterpretation: true);
    }

    private static Delegate? Direct(Type type, LambdaExpression expression)
    {
        Expression last = expression.Body is BlockExpression block ? block.Expressions[^1] : expression.Body;
        return (last, expression.Parameters.Count) switch
        {
            (MethodCallExpression { Object: ConstantExpression { Value: CaseMatcher matcher } }, 1) =>
                Delegate.CreateDelegate(type, matcher, CaseMatcher.OnFactOfEngine, throwOnBindFailure: false),
            (MethodCallExpression { Object: ConstantExpression { Value: CaseMatcher matcher } }, 2) =>
                Delegate.CreateDelegate(type, matcher, CaseMatcher.OnTupleOfEngine, throwOnBindFailure: false),
            (DefaultExpression, 2) => Delegate.CreateDelegate(type, s_nothing, throwOnBindFailure: false),
            _ => null,
        };
    }

    private static void Nothing(IContext _, ITuple __) { }
}
