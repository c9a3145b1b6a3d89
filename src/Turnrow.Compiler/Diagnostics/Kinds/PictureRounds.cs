using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A picture that can be worked in rows, and not in the rounds that are here.</summary>
public static class PictureRounds
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "picture-rounds",
        "TR0385",
        Severity.Error,
        """
        A picture is worked in rounds as well as in rows: each line is read from right to left, since the right side always faces, and the first and
        last stitches that its key gives to a row are left out, since a round has no ends. Where rounds are turned at the join, the stitch at the join
        comes first again, and the line is read from its other end only behind it. So each letter must be one stitch wide there. Join the rounds without
        turning, or draw the picture in letters of one stitch.
        """,
        SmallPattern.With("Bag",
            """
            stitch pattern net from picture, over multiple of 6
              key "." is (sc, ch 1, skip 1)
              key "x" is (sc 2)
              | . . x |
              | x . . |

            piece bag
              rounds are joined and turned
              begin with 24 stitches
              round 1: sc around
              round 2: sc around
              straight 4 rounds, in net
            """),
        SmallPattern.With("Bag",
            """
            stitch pattern net from picture, over multiple of 6
              key "." is (sc, ch 1, skip 1)
              key "x" is (sc 2)
              | . . x |
              | x . . |

            piece bag
              begin with 24 stitches
              round 1: sc around
              round 2: sc around
              straight 4 rounds, in net
            """));

    internal static Diagnostic Wide(TextSpan span, string pattern, string letter, int stitches) =>
        new(Kind, span, Invariant($"\"{letter}\" of {pattern} is {stitches} stitches wide, and would lie across the join of rounds that are turned"));

    internal static Diagnostic Begun(TextSpan span, StitchPattern pattern)
    {
        var (before, here) = pattern.Way == RoundWay.Turned ? ("turned at the join", "not") : ("not turned", "turned at the join");
        return new(Kind, span, $"{pattern.Name} was begun in rounds that are {before}, and these are {here}: its lines are read another way")
        {
            Help = $"begin it anew from its first line: name it, `in {pattern.Name}`",
        };
    }

    internal static Diagnostic At(TextSpan span, string pattern, Diagnostic? against) =>
        new(Kind, span, $"{pattern} can't be worked in the rounds that are here{(against is null ? string.Empty : $": {against.Message}")}")
        {
            Help = "join the rounds without turning, or draw it in letters of one stitch",
        };
}
