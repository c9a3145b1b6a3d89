using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches held, or a bridge, at the very beginning or end of a row or round.</summary>
public static class HoldAtEdge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "hold-at-edge",
        "TR0339",
        Severity.Error,
        """
        Held stitches and a bridge lie between stitches: the bridge is a chain from the stitch before to the stitch behind. At the beginning of
        a row there is nothing yet for it to start from, and the chain that the row begins with would stand on a held stitch. At an edge in
        rows write `leave` and `add`; in a round, begin the round somewhere else, a stitch or more before what is held.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              round 1: dc around
              round 2: hold 10 for sleeve, bridge 4, dc around

            piece sleeve picked up around yoke sleeve: 1 dc in each st
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              round 1: dc around
              round 2: dc 5, hold 10 for sleeve, bridge 4, dc around

            piece sleeve picked up around yoke sleeve: 1 dc in each st
            """));

    internal static Diagnostic At(TextSpan span, bool bridge, bool atEnd) =>
        new(Kind, span, $"{(bridge ? "a bridge of chains can't be" : "stitches can't be held")} at the {(atEnd ? "end" : "beginning")} of a row or round")
        {
            Help = atEnd
                ? "work a stitch or more behind it; at an edge in rows, write `leave 4 at left edge` before the next row"
                : "work a stitch or more before it; at an edge in rows, write `leave 4 at right edge` before this row",
        };
}
