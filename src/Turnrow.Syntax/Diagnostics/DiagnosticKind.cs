namespace Turnrow.Syntax.Diagnostics;

/// <summary>
/// A diagnostic's name, code, severity and page. There is one small file for each, which also holds the method that makes it.
/// </summary>
/// <param name="Name">Short name in the trade's words, with hyphens: <c>row-count</c>. Names come first for the user.</param>
/// <param name="Code">Stable code: <c>TR0301</c>.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Page">What it means and how to mend it, in Markdown, in a crocheter's words.</param>
/// <param name="Bad">A whole small pattern that gives this diagnostic and no other.</param>
/// <param name="Good">The same pattern mended: it gives none.</param>
public sealed record DiagnosticKind(string Name, string Code, Severity Severity, string Page, string Bad, string Good)
{
    /// <summary>
    /// Makes the bad example where it is too large to be printed, or no text; <see cref="Bad"/> then only sketches it. Null
    /// for all others, whose bad example is <see cref="Bad"/> itself.
    /// </summary>
    public Func<byte[]>? BadFile { get; init; }
}
