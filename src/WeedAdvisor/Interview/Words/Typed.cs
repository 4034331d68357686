namespace WeedAdvisor.Interview.Words;

/// <summary>What a typed text was read as: a value, or one line that says what is wrong with it.</summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <param name="Value">The value; its default when there is an error.</param>
/// <param name="Error">The error in one line; null when there is a value.</param>
public readonly record struct Typed<T>(T? Value, string? Error)
{
    /// <summary>A text that was understood.</summary>
    public static Typed<T> As(T value) => new(value, null);

    /// <summary>A text that was not understood.</summary>
    public static Typed<T> Wrong(string error) => new(default, error);
}
