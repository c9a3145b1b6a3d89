using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More sizes than a pattern can have.</summary>
public static class SizesTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-too-many",
        "TR0211",
        Severity.Error,
        """
        A pattern can have 60 sizes. More would not fit on any page that a maker could read. Mostly sizes were copied twice, or numbers of
        the body stand where the sizes' names should. Take some out, or make two patterns of it: one for children, one for adults.
        """,
        Socks(61),
        Socks(60));

    private static string Socks(int sizes) => SmallPattern.With("Socks",
        $"""
        sizes {string.Join(", ", Enumerable.Range(1, sizes))}

        piece cuff
          begin with 40 stitches
          row 1 RS: dc across
        """);

    internal static Diagnostic At(TextSpan span, int most) =>
        new(Kind, span, Invariant($"this size is one too many: a pattern can have {most}"))
        {
            Help = "take some out, or make two patterns of it",
        };
}
