using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Something that can't be worked in one place with the rest of a bracket.</summary>
public static class NotInOnePlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-in-one-place",
        "TR0232",
        Severity.Error,
        """
        All that stands in this bracket goes into one place, as a shell does. There only stitches, chains and so many times of them make sense: to skip or leave
        a stitch, to work two together or to go on into the next place would lead out of it again. Put that behind the bracket.
        """,
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 21 stitches
              row 1 RS: dc across
              row 2: ((2 dc, ch 1, 2 dc, skip 2) in next) across
            """),
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 21 stitches
              row 1 RS: dc across
              row 2: ((2 dc, ch 1, 2 dc) in next, skip 2) across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this can't be worked in one place together with the rest of the bracket")
        {
            Help = "write it behind the bracket; in it stand stitches and chains, as in `(2 dc, ch 2, 2 dc) in next sp`",
        };

    internal static Diagnostic Yarn(TextSpan span, string yarn) =>
        new(Kind, span, "another yarn can't be taken up within a bracket that goes into one place")
        {
            Help = $"say it one by one: `2 dc in next, with {yarn}, dc in same, dc in same`",
        };

    internal static Diagnostic TooMany(TextSpan span, int most) =>
        new(Kind, span, Invariant($"this is more than {most} stitches and chains in one place")) { Help = "look at the number of times" };
}
