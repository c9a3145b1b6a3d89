using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics;

/// <summary>How grave a finding is.</summary>
public enum Severity
{
    /// <summary>The pattern is wrong, or can't be read.</summary>
    Error,

    /// <summary>The pattern may be meant so; a look is worth it.</summary>
    Warning,
}

/// <summary>One thing found in a pattern.</summary>
/// <param name="Kind">Which diagnostic: its name, code and page.</param>
/// <param name="Span">The words to underline.</param>
/// <param name="Message">One sentence: the fault, with its numbers.</param>
public sealed record Diagnostic(DiagnosticKind Kind, TextSpan Span, string Message)
{
    /// <summary>Lines that lay out the arithmetic, to be shown under the underlined source; may be empty.</summary>
    public IReadOnlyList<string> Ledger { get; init; } = [];

    /// <summary>The sizes it concerns, in the pattern's order; empty if it concerns all of them or none in particular.</summary>
    public IReadOnlyList<string> Sizes { get; init; } = [];

    /// <summary>What to do, in one or two sentences; null if there is nothing to say.</summary>
    public string? Help { get; init; }

    /// <summary>Texts that can be put in place of a span to mend the fault, best first.</summary>
    public IReadOnlyList<Mend> Mends { get; init; } = [];

    /// <summary>Other places that have to do with it.</summary>
    public IReadOnlyList<Related> Related { get; init; } = [];
}

/// <summary>A text to put in place of a span.</summary>
public sealed record Mend(string Title, TextSpan Span, string NewText);

/// <summary>A second place that explains the first: "the 77 comes from here".</summary>
public sealed record Related(TextSpan Span, string Message);
