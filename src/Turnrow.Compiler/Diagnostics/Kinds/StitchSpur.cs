using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A chain that is worked back along, and what goes along it does not come out over its chains.</summary>
public static class StitchSpur
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-spur",
        "TR0387",
        Severity.Error,
        """
        A spur is a chain that stands on the stitch before it, and stitches back along it: the tip of a leaf, a petal, a spoke. The first stitch goes into
        the chain that its height asks for, sc into the 2nd from the hook, hdc into the 3rd, dc into the 4th; from there each chain down to the
        foot is worked into or skipped. So `ch 6, turn back` is followed by what takes 5 chains if it begins with sc.
        """,
        SmallPattern.With("Leaf edging",
            """
            stitch tip is ch 6, turn back, sc, hdc, dc 4

            piece edging
              begin with 19 stitches
              row 1 RS: sc across
              row 2: (sc 3, tip) 6 times, sc
            """),
        SmallPattern.With("Leaf edging",
            """
            stitch tip is ch 6, turn back, sc, hdc, dc 3

            piece edging
              begin with 19 stitches
              row 1 RS: sc across
              row 2: (sc 3, tip) 6 times, sc
            """));

    internal static Diagnostic At(Context context, TextSpan span, Stitch first, int chains, int there, int taken)
    {
        var word = context.Word(first);
        var fits = there > 0 ? Invariant($"write {there} along them, or `ch {taken + first.Height}`") : Invariant($"{word} needs at least `ch {first.Height + 1}`");
        return new(Kind, span, Invariant($"of ch {chains}, {Math.Max(0, there)} can be worked into when {word} comes first, and these take {taken}")) { Help = fits };
    }

    internal static Diagnostic NoChain(TextSpan span) =>
        new(Kind, span, "`turn back` goes back along a chain, and none is made before it") { Help = "such words read: ch 6, turn back, sc, hdc, dc 3" };

    internal static Diagnostic ChainAlong(TextSpan span) =>
        new(Kind, span, "along a chain there are stitches alone, and no more chains") { Help = "such words read: ch 6, turn back, sc, hdc, dc 3" };
}
