using System.Linq.Expressions;
using NRules.Extensibility;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// Has conditions interpreted instead of compiled to machine code: compiling is most of a cold start, and one visit
/// evaluates each condition only a few times (measured in docs/performance.md).
/// </summary>
internal sealed class InterpretedExpressions : IExpressionCompiler
{
    /// <inheritdoc/>
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate => expression.Compile(preferInterpretation: true);
}
