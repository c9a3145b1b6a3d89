using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn that is carried over many stitches.</summary>
public static class FloatLong
{
    /// <summary>The most stitches that a yarn is carried over, where the pattern does not say; common practice.</summary>
    public const int Customary = Fabric.Patterns.Pattern.CustomaryFloat;

    private const int MostPlaces = 6;

    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "float-long",
        "TR0498",
        Severity.Warning,
        """
        In a row of several yarns the one that rests is carried along behind the stitches of the others. Over more than about 5 stitches, as is
        common practice, the loop that hangs there catches on fingers and buttons. Let the yarn be used again in between, lay it in and work over it,
        or say how far it may go in your fabric: `floats at most 8 stitches`. Round a tube it is carried over the join into the next round, and those
        stitches count as well. Where it is meant so, `accept float-long of bag: "worked over"`.
        """,
        SmallPattern.With("Bag",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece bag
              begin with 24 stitches
              row 1 RS: sc across
              row 2: sc 8, with cream, sc 8, with navy, sc 8
            """),
        SmallPattern.With("Bag",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece bag
              begin with 24 stitches
              row 1 RS: sc across
              row 2: sc 10, with cream, sc 4, with navy, sc 10
            """));

    internal static Diagnostic At(TextSpan span, string piece, string yarn, List<(Row Row, Float Float)> floats, int most)
    {
        var (row, first) = floats[0];
        var more = floats.Count > 1 ? Invariant($", and in {floats.Count - 1} more of its rows") : string.Empty;
        return new(Kind, span, Invariant($"{yarn} is carried over {first.Stitches} stitches {(IsOverJoin(first) ? "over the join into" : "in")} {Name(row)} of {piece}{more}"))
        {
            Ledger = [.. floats.Take(MostPlaces).Select(static f => Place(f.Row, f.Float)), .. floats.Count > MostPlaces ? ["…"] : Array.Empty<string>()],
            Help = Invariant($"up to {most} are usual here: use {yarn} in between, or say `floats at most {floats.Max(static f => f.Float.Stitches)} stitches`; or accept it with the reason, accept {Kind.Name}: \"…\""),
        };
    }

    // Within a row nothing is carried before its first stitch.
    private static bool IsOverJoin(Float carried) => carried.From == 1;

    private static string Place(Row row, Float carried) => !IsOverJoin(carried) ? Invariant($"{Name(row)}: over stitches {carried.From} to {carried.To}, {carried.Stitches} of them")
        : carried.To == 0 ? Invariant($"{Name(row)}: over the last {carried.BeforeJoin} stitches of the round before")
        : carried.BeforeJoin == 0 ? Invariant($"{Name(row)}: from the join over the first {carried.To} stitches")
        : Invariant($"{Name(row)}: over the last {carried.BeforeJoin} stitches of the round before and the first {carried.To} of this one, {carried.Stitches} in all");

    private static string Name(Row row) => Invariant($"{(row.IsRound ? "round" : "row")} {row.Number}");
}
