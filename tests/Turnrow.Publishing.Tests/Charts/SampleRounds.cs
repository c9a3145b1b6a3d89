using Turnrow.Compiler;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

/// <summary>Pieces that begin in the middle, as a designer writes them.</summary>
internal static class SampleRounds
{
    /// <summary>A circle of sc with six increases a round.</summary>
    public const string Circle = """
          begin with ring
          round 1: 6 sc in ring
          shape 7 rounds: inc 6 evenly every round
          fasten off
        """;

    /// <summary>The same until it is a blanket.</summary>
    public const string Blanket = """
          begin with ring
          round 1: 12 dc in ring
          shape 199 rounds: inc 12 evenly every round
        """;

    /// <summary>A square whose rounds begin in the middle of a side.</summary>
    public const string Square = """
          begin with ring of 4 chains
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around
          round 3: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around, dc around
          fasten off
        """;

    /// <summary>A square whose rounds begin in a corner.</summary>
    public const string FromCorner = """
          begin with ring of 4 chains
          round 1: (3 dc, ch 2, mark corner) 4 times in ring
          round 2: ((2 dc, ch 2, 2 dc) in corner, dc to corner) around
          round 3: ((2 dc, ch 2, 2 dc) in corner, dc to corner) around
        """;

    /// <summary>A hexagon.</summary>
    public const string Hexagon = """
          begin with ring
          round 1: (2 dc, ch 1, mark corner) 6 times in ring
          round 2: (dc to corner, (dc, ch 1, dc) in corner) around
          round 3: (dc to corner, (dc, ch 1, dc) in corner) around, dc around
        """;

    /// <summary>An oval round a chain.</summary>
    public const string Oval = """
          begin with both sides of 10 stitches
          round 1: (3 sc in corner, sc to corner) around
          round 2: (sc to corner, 3 sc in corner) around, sc around
          round 3: (sc to corner, 3 sc in corner) around, sc around
          fasten off
        """;

    /// <summary>An oval whose rounds begin in the corner, each a stitch farther on.</summary>
    public const string OvalFromCorner = """
          begin with both sides of 10 stitches
          round 1: (3 sc in corner, sc to corner) around
          round 2: (3 sc in corner, sc to corner) around
          round 3: (3 sc in corner, sc to corner) around
        """;

    /// <summary>Rounds that go there and back.</summary>
    public const string Turned = """
          rounds are joined and turned
          begin with ring
          round 1: 12 dc in ring
          shape 3 rounds: inc 12 evenly every round
          fasten off
        """;

    /// <summary>A crown and the sides of a hat in a spiral.</summary>
    public const string Hat = """
          rounds are spiral
          begin with ring
          round 1: 6 sc in ring
          shape 4 rounds: inc 6 evenly every round
          straight 13 rounds
          fasten off
        """;

    /// <summary>Lace on a ring of chains that is worked into: spaces, shells, stitches round posts and a spike.</summary>
    public const string Doily = """
          begin with 12 stitches
          round 1: dc around
          round 2: (dc, ch 1) around
          round 3: (dc in next dc, ch 3, skip 1) around
          round 4: (5 dc in next sp) around
          round 5: (sc, ch 5, skip 4) around
          round 6: (7 dc in next sp) around
          round 7: (front-post dc, back-loop sc, spike sc) around
          fasten off
        """;

    /// <summary>A circle that becomes a square.</summary>
    public const string CircleToSquare = """
          begin with ring
          round 1: 16 dc in ring
          round 2: (2 dc in next, ch 1) around
          round 3: ((3 tr, ch 2, mark corner, 3 tr) in next sp, (3 dc in next sp) 3 times) around
          round 4: (dc to corner, (2 dc, ch 2, 2 dc) in corner) around, dc around
          fasten off
        """;

    /// <summary>A mat that is too wide to be drawn whole: its widest round is not its last, but it lies flat to its rim.</summary>
    public const string WideLace = """
          begin with ring of 6 chains
          round 1: 16 dc in ring
          round 2: (dc, ch 2) around
          round 3: (3 dc in next sp, ch 1) around
          round 4: (lace-shell in next ch-1 sp, ch 5, sc in next ch-1 sp, ch 5) around
          round 5: (lace-shell in next lace-shell, ch 3, 9 tr in next sc, ch 3) around
          round 6: (lace-shell in next lace-shell, ch 2, (tr in next tr, ch 1) 8 times, tr in next tr, ch 2) around
          round 7: (lace-shell in next lace-shell, ch 4, skip 3, sc in next ch-1 sp, (ch 4, sc in next ch-1 sp) 7 times, ch 4, skip 2) around
          round 8: (lace-shell in next lace-shell, ch 4, skip 3, sc in next ch-4 sp, (ch 4, sc in next ch-4 sp) 6 times, ch 4, skip 2) around
          round 9: (lace-shell in next lace-shell, ch 5, skip 3, sc in next ch-4 sp, (ch 4, sc in next ch-4 sp) 5 times, ch 5, skip 2) around
          round 10: (lace-shell in next lace-shell, ch 6, skip 3, sc in next ch-4 sp, (ch 4, sc in next ch-4 sp) 4 times, ch 6, skip 2) around
          fasten off
        """;

    /// <summary>A wide circle whose rounds go there and back.</summary>
    public const string WideTurned = """
          rounds are joined and turned
          begin with ring
          round 1: 12 dc in ring
          shape 12 rounds: inc 12 evenly every round
          fasten off
        """;

    /// <summary>A piece of these lines.</summary>
    /// <param name="lines">The piece's lines.</param>
    /// <param name="yarns">Lines that name yarns.</param>
    public static Piece Piece(string lines, string yarns = "")
    {
        var text = "notation 1\npattern \"Rounds\"\nterms US\nhook 4 mm\n" + yarns + "turn dc: ch 3 counts\nturn sc: ch 1 does not count\nstitch lace-shell \"Sh\" is (2 dc, ch 2, 2 dc) in one place\npiece motif\n" + lines + "\n";
        var pattern = Compilation.Of(new SourceText("rounds.turnrow", text)).Pattern;
        Assert.Equal(0, pattern.Errors);
        return Assert.Single(pattern.Pieces).InSizes[0];
    }
}
