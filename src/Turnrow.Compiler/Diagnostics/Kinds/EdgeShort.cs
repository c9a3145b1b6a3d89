using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More stitches left than there are.</summary>
public static class EdgeShort
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-short",
        "TR0322",
        Severity.Error,
        """
        So many stitches are left unworked at the edge that no stitch remains for the next row. At `both edges` the number is taken twice,
        once on each side. Leave fewer, or have more stitches before; if it happens in some sizes only, give each size its own number:
        `leave 4 (6, 8) at both edges`.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              leave 10 at both edges
              row 2: dc across
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across
              leave 5 at both edges
              row 2: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, int?[] counts, Func<int, int> there, int edges)
    {
        var (count, have) = (counts[sizes[0]]!.Value, there(sizes[0]));
        return new(Kind, span, Invariant($"{count}{(edges == 1 ? string.Empty : Invariant($" at each edge, {2L * count} in all,"))} can't be left of {Counted.Stitches(have)}{context.Findings.InSize(sizes[0])}: at least 1 has to remain"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{counts[i]}{(edges == 1 ? string.Empty : " at each edge")} of {there(i)}"))] : [],
            Help = Invariant($"leave {(have - 1) / edges} or fewer{(edges == 1 ? string.Empty : " at each edge")}{context.Findings.InSize(sizes[0])}{(piece.Builders[sizes[0]].InRounds ? ", and go on in rows: a round has no edge to leave them at" : string.Empty)}"),
        };
    }
}
