using Terminal.Gui.Drawing;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Reports.Season;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace WeedAdvisor.Screens;

/// <summary>How the screens look: every way in which something can be drawn, in colour or without any.</summary>
internal sealed record Look
{
    public required Attribute Normal { get; init; }

    public required Attribute Heading { get; init; }

    public required Attribute Warning { get; init; }

    public required Attribute Quiet { get; init; }

    /// <summary>A week in which a weed comes up and is not held.</summary>
    public required Attribute Open { get; init; }

    /// <summary>The line under the cursor, where the keys go.</summary>
    public required Attribute Cursor { get; init; }

    /// <summary>The line under the cursor of a list while the keys go elsewhere.</summary>
    public required Attribute Rest { get; init; }

    /// <summary>The bars at the top and the bottom.</summary>
    public required Attribute Bar { get; init; }

    /// <summary>A field to type in.</summary>
    public required Attribute Field { get; init; }

    /// <summary>Quiet greens on a dark ground; every pair has a contrast of at least 6 to 1.</summary>
    public static Look Calm { get; } =
        new()
        {
            Normal = Pair("#dbe2d6", "#18211c"),
            Heading = Pair("#a9d18e", "#18211c", TextStyle.Bold),
            Warning = Pair("#f0c674", "#18211c"),
            Quiet = Pair("#9aaba0", "#18211c"),
            Open = Pair("#ff9d8a", "#18211c"),
            Cursor = Pair("#10170f", "#a9d18e"),
            Rest = Pair("#ffffff", "#3a4a40"),
            Bar = Pair("#dbe2d6", "#2c3a31"),
            Field = Pair("#ffffff", "#3a4a40"),
        };

    /// <summary>The terminal's own two colours; what stands out is bold, underlined or reversed.</summary>
    public static Look Plain { get; } =
        new()
        {
            Normal = Bare(TextStyle.None),
            Heading = Bare(TextStyle.Bold),
            Warning = Bare(TextStyle.Bold),
            Quiet = Bare(TextStyle.None),
            Open = Bare(TextStyle.Bold),
            Cursor = Bare(TextStyle.Reverse),
            Rest = Bare(TextStyle.Underline),
            Bar = Bare(TextStyle.Reverse),
            Field = Bare(TextStyle.Underline),
        };

    public Attribute Of(LineTone tone) =>
        tone switch
        {
            LineTone.Heading => Heading,
            LineTone.Warning => Warning,
            LineTone.Quiet => Quiet,
            _ => Normal,
        };

    public Attribute Of(Cover cover) =>
        cover switch
        {
            Cover.Held => Heading,
            Cover.Partly => Warning,
            Cover.Open => Open,
            _ => Quiet,
        };

    /// <summary>The look as a scheme in which every role is set, so that none is derived.</summary>
    public Scheme Scheme => Roles(Normal, Cursor);

    /// <summary>The look of a field to type in.</summary>
    public Scheme FieldScheme => Roles(Field, Field);

    private Scheme Roles(Attribute normal, Attribute focus) =>
        new()
        {
            Normal = normal,
            HotNormal = normal,
            Focus = focus,
            HotFocus = focus,
            Active = focus,
            HotActive = focus,
            Highlight = Cursor,
            Editable = normal,
            ReadOnly = normal,
            Disabled = Quiet,
            Code = normal,
            CodeComment = normal,
            CodeKeyword = normal,
            CodeString = normal,
            CodeNumber = normal,
            CodeOperator = normal,
            CodeType = normal,
            CodePreprocessor = normal,
            CodeIdentifier = normal,
            CodeConstant = normal,
            CodePunctuation = normal,
            CodeFunctionName = normal,
            CodeAttribute = normal,
        };

    private static Attribute Pair(string ink, string ground, TextStyle style = TextStyle.None) =>
        new(new Color(ink), new Color(ground), style);

    private static Attribute Bare(TextStyle style) => new(Color.None, Color.None, style);
}
