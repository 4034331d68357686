namespace WeedAdvisor.Inference.Advice;

/// <summary>When an action can be done, in the order in which a year of work brings it.</summary>
public enum Horizon
{
    /// <summary>Today: every day it is left makes more of it.</summary>
    Today,

    /// <summary>In the days to come.</summary>
    ThisWeek,

    /// <summary>In the weeks and months to come.</summary>
    ThisSeason,

    /// <summary>When pots are filled and potted next.</summary>
    AtPotting,

    /// <summary>Before the next batch of cuttings or seed.</summary>
    NextBatch,

    /// <summary>When no stock stands there.</summary>
    WhenEmpty,

    /// <summary>Always: a habit of the nursery, wherever the area is.</summary>
    Habit,
}

/// <summary>The words for each horizon.</summary>
public static class Horizons
{
    /// <summary>The word of a horizon, such as <c>this-week</c>, as JSON writes it.</summary>
    public static string Word(Horizon horizon) =>
        horizon switch
        {
            Horizon.Today => "today",
            Horizon.ThisWeek => "this-week",
            Horizon.ThisSeason => "this-season",
            Horizon.AtPotting => "at-potting",
            Horizon.NextBatch => "next-batch",
            Horizon.WhenEmpty => "when-empty",
            Horizon.Habit => "habit",
            _ => throw new ArgumentOutOfRangeException(nameof(horizon), horizon, "not a horizon"),
        };

    /// <summary>The horizon before a list of what is to be done in it.</summary>
    public static string InBrief(Horizon horizon) => horizon == Horizon.ThisWeek ? "This week" : Title(horizon);

    /// <summary>The horizon as the heading of what is to be done in it.</summary>
    public static string Title(Horizon horizon) =>
        horizon switch
        {
            Horizon.Today => "Today",
            Horizon.ThisWeek => "This week, in this order",
            Horizon.ThisSeason => "This season",
            Horizon.AtPotting => "At the next potting",
            Horizon.NextBatch => "Before the next batch",
            Horizon.WhenEmpty => "When it is next empty",
            Horizon.Habit => "Habits of the nursery",
            _ => throw new ArgumentOutOfRangeException(nameof(horizon), horizon, "not a horizon"),
        };
}
