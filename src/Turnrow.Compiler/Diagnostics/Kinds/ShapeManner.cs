using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A way to decrease that does not go with where it is to be.</summary>
public static class ShapeManner
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "shape-manner",
        "TR0366",
        Severity.Error,
        """
        Decreases by skipping pass over a stitch between others, so at least one stitch stands between the edge and the one that is skipped;
        the outermost can only be left. Decreases by slipping over are slip stitches at the very edge where a row begins and stitches left
        where it ends, so they can't be some stitches in. Say another way, `by working together`, or another place. What is spread `evenly` over a row lies at no
        edge: it is increases or decreases, worked in the stitches themselves.
        """,
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              row 1 RS: dc across
              shape 8 rows: dec 1 at left edge every 2 rows, by skipping, 0 stitches in
            """),
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              row 1 RS: dc across
              shape 8 rows: dec 1 at left edge every 2 rows, by skipping, 1 stitch in
            """));

    internal static Diagnostic Skipping(TextSpan inside) =>
        new(Kind, inside, "the outermost stitch can't be skipped: one has to stand before it")
        {
            Help = "say `1 stitch in`, or leave it out; to leave stitches at the edge, decrease `by slipping over`",
        };

    internal static Diagnostic EvenlyStep(TextSpan stage) =>
        new(Kind, stage, "stitches are left and chains are added at an edge, and can't be spread evenly")
        {
            Help = "say at which edge, or spread increases or decreases: `dec 6 evenly every 2 rounds`",
        };

    internal static Diagnostic EvenlyEdge(TextSpan said) =>
        new(Kind, said, "what is spread evenly lies at no edge")
        {
            Help = "leave this out, or say at which edge instead of `evenly`",
        };

    internal static Diagnostic SlippingOver(TextSpan inside) =>
        new(Kind, inside, "slip stitches lie at the very edge, so such decreases can't be some stitches in")
        {
            Help = "leave the place out, or decrease `by working together`",
        };
}
