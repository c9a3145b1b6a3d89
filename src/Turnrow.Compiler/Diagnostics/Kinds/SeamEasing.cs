using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>An eased seam whose edges differ by more or less than is meant.</summary>
public static class SeamEasing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-easing",
        "TR0354",
        Severity.Error,
        """
        The seam says by how much its first edge is longer than its second, and the pieces as made differ by something else. Both edges are
        measured by the gauge along their slopes, steps stitch by stitch. An edge that is much longer puckers when it is eased in; one that is
        shorter pulls. Change the pieces (for a cap that is too short: more rows, or a wider top), change what is meant, or take the other edge
        first if that is the longer one.
        """,
        SmallPattern.With("Cushion",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 7 rows

            seam front right edge with back left edge, easing 0 to 2 cm
            """),
        SmallPattern.With("Cushion",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece front
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 8 rows

            seam front right edge with back left edge, easing 0 to 2 cm
            """));

    internal static Diagnostic At(
        Context context, SeamStatement statement, EasingSyntax easing, int[] sizes, Func<int, SeamLengths> lengths, Rational?[] least, Rational?[] most)
    {
        var size = sizes[0];
        var (first, second) = (Pieces(statement.First), Pieces(statement.Second));
        return new(Kind, easing.Span, $"along this seam {first} comes to {context.Length(lengths(size).First)} and {second} to {context.Length(lengths(size).Second)}{context.Findings.InSize(size)}: {Differ(context, lengths(size))}, where {context.Length(least[size] ?? Rational.Zero)} to {context.Length(most[size] ?? Rational.Zero)} longer is meant")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => $"{context.Length(lengths(i).First)} to {context.Length(lengths(i).Second)}, {Differ(context, lengths(i))}")] : [],
            Help = "change the pieces, or how much is to be eased in; the edge named first is the longer one",
        };
    }

    private static string Pieces(IReadOnlyList<WalkSyntax> edge) =>
        string.Join(" with ", edge.Select(static w => w.Words[0].Text).Distinct(StringComparer.OrdinalIgnoreCase));

    private static string Differ(Context context, SeamLengths lengths) => lengths.First - lengths.Second is { } more
        ? more < Rational.Zero ? $"{context.Length(Rational.Zero - more ?? more)} shorter" : $"{context.Length(more)} longer"
        : "too far apart to say";
}
