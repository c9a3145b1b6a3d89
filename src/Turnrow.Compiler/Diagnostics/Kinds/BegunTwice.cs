using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that begins twice.</summary>
public static class BegunTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "begun-twice",
        "TR0316",
        Severity.Error,
        """
        A piece begins once. This line begins it again, and the rows before it would be left hanging. If you meant a second piece, open it
        with a line `piece` and its name. If you gave the stitches and the chains both, keep one: `begin with 20 stitches` finds the
        chains by the turning chain, `chain 22` finds the stitches. To add chains at an edge further up, write `add 6 at right edge`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              chain 22
              row 1 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              chain 22
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} has begun already")
        {
            Help = "take this line out; or, if another piece begins here, put its line `piece` above this one",
        };
}
