namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>The small patterns that the examples of the pages are.</summary>
internal static class SmallPattern
{
    /// <summary>A whole pattern: the lines that all of them have, and one's own.</summary>
    /// <param name="title">What is made.</param>
    /// <param name="lines">The lines behind the hook's.</param>
    /// <param name="terms">US or UK.</param>
    public static string With(string title, string lines, string terms = "US") =>
        $"""
        notation 1
        pattern "{title}"
        terms {terms}
        hook 4 mm

        {lines}

        """;
}
