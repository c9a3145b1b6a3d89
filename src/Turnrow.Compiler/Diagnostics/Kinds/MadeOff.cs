using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A finished sample that does not measure what its stitches and rows are by the gauge.</summary>
public static class MadeOff
{
    private static readonly Rational Inch = Rational.Of(254, 100)!.Value;
    private static readonly Rational NearlyAlike = Rational.Of(1, 10)!.Value;

    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "made-off",
        "TR0423",
        Severity.Warning,
        """
        The finished sample has as many stitches and rows as the pattern says, and yet it is not as wide or as high as they are by the `gauge`
        line: the difference is more than 2 in 100, and more than half a centimetre (a fifth of an inch). The sample was worked more
        loosely or more tightly than the swatch, and so every size will come out differently; `turnrow check` says below its summary what
        the true gauge was and what each size will measure.

        Measure once more, with the piece flat and washed. Then put the true gauge into the `gauge` line, so that all counts
        follow, or work the sample anew. If it is meant, accept it: `accept made-off: "…"` with the reason.
        """,
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 22 cm wide, 120 cm high
            """),
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 20.3 cm wide, 121 cm high
            """));

    internal static Diagnostic At(Context context, MadeStatement line, MadePartSyntax part, MadeLength length)
    {
        var off = length.Difference!.Value;
        var (way, less, more) = part.Wide ? ("wide", "narrower", "wider") : ("high", "shorter", "taller");
        return new(Kind, part.Span, $"the sample's {line.Piece.Text} is {context.Length(length.Measured)} {way} in {line.Size.Text}, {context.Length(off.Magnitude())} {(off < Rational.Zero ? less : more)} than the {context.Length(length.Planned)} by the gauge")
        {
            Sizes = context.Sizes > 1 ? [line.Size.Text] : [],
            Ledger = [TrueGauge(context, part, length)],
            Help = WrongUnit(length)
                ? "it looks as if the number were in the other unit: look whether `cm` or `in` is meant"
                : "measure it once more, flat and washed; then write the true gauge into the `gauge` line, so that the counts follow",
        };
    }

    private static string TrueGauge(Context context, MadePartSyntax part, MadeLength length)
    {
        if (length.Fabric is not { } stitch || context.Gauges.Of(stitch) is not { } gauge)
            return $"the piece is worked in {Findings.Join([.. length.Fabrics.Select(f => context.Word(f.Stitch))])}: how far each of them is off can't be told of one height";
        var (said, over, what) = part.Wide ? (gauge.Stitches, gauge.StitchesOver, "stitches") : (gauge.Rows, gauge.RowsOver, "rows");
        var real = said * length.Planned is { } x && x / length.Measured is { } count ? count.ToTenths() : "?";
        return $"so the sample has {real} {what} of {context.Word(stitch)} to {context.Length(over)}, where the gauge line says {said.ToTenths()}";
    }

    // 18 in for 18 cm, or the other way round.
    private static bool WrongUnit(MadeLength length) =>
        length.Measured / length.Planned is { } ratio && (IsNear(ratio / Inch) || IsNear(ratio * Inch));

    private static bool IsNear(Rational? ratio) => ratio is { } r && r - Rational.One is { } off && off.Magnitude() < NearlyAlike;
}
