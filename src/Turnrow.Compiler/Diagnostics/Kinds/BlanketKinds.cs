using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Kinds of motif that can't take turns in a blanket.</summary>
public static class BlanketKinds
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "blanket-kinds",
        "TR0587",
        Severity.Error,
        """
        Several kinds of motif take turns in a blanket, so each has to lie where another could: their last rounds have the same stitches and spaces along each
        side, place for place. What differs is their yarn, and what they are like inside. Each kind comes up at least once.
        """,
        SmallPattern.With("Blanket",
            """
            piece pale
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece dark
              begin with ring
              round 1: (4 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of pale and dark: 4 across, 5 down, join in each corner
            """),
        SmallPattern.With("Blanket",
            """
            piece pale
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece dark
              begin with ring of 4 chains
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of pale and dark: 4 across, 5 down, join in each corner
            """));

    internal static Diagnostic Unlike(Context context, TextSpan span, int[] sizes, (string Name, Piece Made) first, (string Name, Piece Made) other, int side)
    {
        var (one, two) = (BlanketMotif.Of(first.Made, side), BlanketMotif.Of(other.Made, side));
        var what = one == two ? $"the {MotifSides.Names[side]} sides of {first.Name} and {other.Name} have {one} each, and not the same ones in the same order"
            : $"the {MotifSides.Names[side]} side of {first.Name} has {one}, and that of {other.Name} has {two}";
        return new(Kind, span, $"{what}{context.Findings.InSizes(sizes)}, and each lies in the blanket where the other could")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "make their last rounds alike; they may differ in yarn and in the rounds before",
        };
    }

    internal static Diagnostic Missing(Context context, TextSpan span, int[] sizes, string motif, int kinds) =>
        new(Kind, span, Invariant($"{kinds} kinds take turns, and there are too few motifs for {motif} to come up{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write more motifs across or down, or fewer kinds",
        };

    internal static Diagnostic Twice(TextSpan span, string motif) => new(Kind, span, $"{motif} stands here already")
    {
        Help = "name each kind once; they take turns along each row",
    };
}
