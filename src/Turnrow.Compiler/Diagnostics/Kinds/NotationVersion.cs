using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A notation that this program does not know.</summary>
public static class NotationVersion
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "notation-version",
        "TR0221",
        Severity.Error,
        """
        The first line says in which notation the file is written, so that old patterns can still be read when the notation grows one day.
        This program reads `notation 1`. If you did not mean to change it, write 1 again; if the file comes from somebody with a newer
        program, yours needs to be renewed.
        """,
        """
        notation 2
        pattern "Coaster"
        terms US
        hook 4 mm

        piece coaster
          begin with 20 stitches
          row 1 RS: dc across

        """,
        """
        notation 1
        pattern "Coaster"
        terms US
        hook 4 mm

        piece coaster
          begin with 20 stitches
          row 1 RS: dc across

        """);

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this program reads notation 1 and no other")
        {
            Help = "write `notation 1`; if the file is really in a later notation, take a newer turnrow",
            Mends = [new Mend("write `notation 1`", span, "1")],
        };
}
