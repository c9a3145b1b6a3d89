using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A picture of yarns that does not say its stitch.</summary>
public static class PictureStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "picture-stitch",
        "TR0499",
        Severity.Error,
        """
        A letter that is a yarn, `key "x" is navy`, is one plain stitch of this yarn. Which stitch that is the heading says:
        `stitch pattern tile from picture in sc, over multiple of 4`. Where a letter is more than that, write it out: `key "x" is (with navy, dc 3)`.
        """,
        SmallPattern.With("Tile",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            stitch pattern tile from picture, over multiple of 4
              key "x" is navy
              key "." is cream
              | . . x x |
              | x x . . |

            piece cloth
              begin with 20 stitches
              straight 8 rows, in tile
            """),
        SmallPattern.With("Tile",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            stitch pattern tile from picture in sc, over multiple of 4
              key "x" is navy
              key "." is cream
              | . . x x |
              | x x . . |

            piece cloth
              begin with 20 stitches
              straight 8 rows, in tile
            """));

    internal static Diagnostic At(TextSpan span) => new(Kind, span, "the heading does not say in which stitch these yarns are worked")
    {
        Help = "write `from picture in sc` there, or write the letter out: `(with navy, sc)`",
    };
}
