using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch with a number of places and a place.</summary>
public static class StitchBoth
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-both",
        "TR0233",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this says at once how many go into one place and how many places there are")
        {
            Help = "`3 dc in next` puts three in one place, `dc 3` one in each of three; for both write a repeat: (2 dc in next) 3 times",
        };
}
