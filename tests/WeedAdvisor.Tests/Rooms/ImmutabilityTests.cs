using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Tests.Rooms;

/// <summary>
/// What is handed from room to room never changes: public records hold no state that moves, and no delegate.
/// </summary>
public sealed class ImmutabilityTests
{
    private static readonly Assembly[] s_layers =
    [
        typeof(KnowledgeBase).Assembly,
        typeof(Advisor).Assembly,
        typeof(Wage).Assembly,
        typeof(Safety).Assembly,
    ];

    // What is described here is a function without a state of its own: the sum of a form, what a record of the
    // catalogue says, where a figure stands in a year.
    private static readonly Type[] s_functions =
    [
        typeof(Knowledge.Judgements.TestableOfTreatment),
        typeof(Planning.Rates.Forms.RateForm),
        typeof(Reports.Catalogue.CatalogueEntry),
        typeof(Planning.Robust.MovedFigure),
    ];

    [Fact]
    public void No_field_of_a_public_record_can_be_set_again() =>
        Assert.Empty(
            from type in Records()
            from field in FieldsOf(type)
            where !field.IsInitOnly && !IsOfInitProperty(field, type)
            select $"{type}.{field.Name}"
        );

    [Fact]
    public void No_public_record_holds_a_delegate_or_a_collection_that_can_change() =>
        Assert.Empty(
            from type in Records().Except(s_functions)
            from field in FieldsOf(type)
            where typeof(Delegate).IsAssignableFrom(field.FieldType) || CanChange(field.FieldType)
            select $"{type}.{field.Name}: {field.FieldType.Name}"
        );

    private static IEnumerable<Type> Records() =>
        s_layers
            .SelectMany(layer => layer.GetExportedTypes())
            .Where(type =>
                type.GetMethod("<Clone>$") is not null
                || (type.Namespace == typeof(Inference.Advice.Reason).Namespace && type.IsClass)
            );

    private static FieldInfo[] FieldsOf(Type type) =>
        type.GetFields(
            BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly
        );

    // The field behind an init property can be set by its maker only.
    private static bool IsOfInitProperty(FieldInfo field, Type type) =>
        field.GetCustomAttribute<CompilerGeneratedAttribute>() is not null
        && type.GetProperties(
                BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly
            )
            .Where(property => field.Name == $"<{property.Name}>k__BackingField")
            .All(property =>
                property.SetMethod is not { } set
                || set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
            );

    private static bool CanChange(Type type) =>
        type.IsArray
        || (
            type.IsGenericType
            && type.GetGenericTypeDefinition() is { } open
            && (
                open == typeof(List<>)
                || open == typeof(Dictionary<,>)
                || open == typeof(HashSet<>)
                || open == typeof(SortedSet<>)
                || open == typeof(IList<>)
                || open == typeof(IDictionary<,>)
            )
        )
        || (typeof(IList).IsAssignableFrom(type) && !IsImmutable(type));

    private static bool IsImmutable(Type type) =>
        type.Namespace == typeof(ImmutableArray).Namespace || type.Name.StartsWith("WordSet", StringComparison.Ordinal);
}
