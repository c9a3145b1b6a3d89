using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is opened further down.</summary>
public static class PieceBelow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "piece-below",
        "TR0205",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span, string name, TextSpan later) =>
        new(Kind, span, span == later ? $"`{name}` can't begin from itself" : $"`{name}` is opened further down")
        {
            Help = "a piece can only begin from, or be joined to, one that stands above it; move the lines, or begin one of them with chains of its own",
            Related = span == later ? [] : [new Related(later, $"`{name}` is opened here")],
        };
}
