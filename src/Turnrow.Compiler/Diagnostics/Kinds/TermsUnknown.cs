using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Terms that are neither US nor UK.</summary>
public static class TermsUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "terms-unknown",
        "TR0222",
        Severity.Error,
        """
        There are two sets of stitch words, US and UK, and the same word means different stitches in them: a US dc is a UK tr. So the file
        says which one it uses, as `terms US` or `terms UK`. US terms are meant for now. If your dc has one yarn-over before the hook goes
        in, yours are US terms; if it has none, UK.
        """,
        """
        notation 1
        pattern "Coaster"
        terms American
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

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"there are US terms and UK terms, not `{word}`")
        {
            Help = "write `US` if your dc begins with a yarn-over, `UK` if it does not",
            Mends = [new Mend("write US", span, "US"), new Mend("write UK", span, "UK")],
        };
}
