using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A multiple of a stitch pattern with stitches added to it.</summary>
public static class PatternPlus
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-plus",
        "TR0465",
        Severity.Error,
        """
        `multiple of shells` takes from the stitch pattern both what a repeat takes and what is beside the repeats. A `+ 1` behind it would count those
        stitches twice.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is stitches for 45 cm, multiple of shells + 1

            piece scarf
              begin with hem stitches
              straight 8 rows, in shells
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3
            gauge dc: 18 stitches and 9 rows to 10 cm
            count hem is stitches for 45 cm, multiple of shells

            piece scarf
              begin with hem stitches
              straight 8 rows, in shells
            """));

    internal static Diagnostic At(TextSpan span, string name) => new(Kind, span, $"{name} itself says how many stitches are beside its repeats")
    {
        Help = $"write `multiple of {name}` alone",
    };
}
