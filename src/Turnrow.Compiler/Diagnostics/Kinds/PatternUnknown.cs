using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch pattern that is not there.</summary>
public static class PatternUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-unknown",
        "TR0455",
        Severity.Error,
        """
        This line works in a stitch pattern, and the file has none of that name above it. A stitch pattern is defined above its use: a line
        `stitch pattern lattice over multiple of 6 + 1` and its rows below it, or a line `use "stitches.turnrow"` for those of another file.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              straight 8 rows, in shels
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              straight 8 rows, in shells
            """));

    internal static Diagnostic At(TextSpan span, string name, bool isStitch, IEnumerable<string> known, TextSpan? later)
    {
        if (isStitch && later is null)
            return new(Kind, span, $"`{name}` is a stitch, and `in` goes on in a stitch pattern") { Help = $"work one row of it, `row: {name} across`; `straight` then goes on in the stitch of the last row" };
        var near = Spelling.Nearest(name, known);
        return new(Kind, span, later is null ? $"there is no stitch pattern called `{name}`" : $"the stitch pattern `{name}` is defined further down")
        {
            Help = later is not null ? "move its lines above this one, or this line below them: a file is read from the top"
                : near is not null ? $"did you mean `{near}`?"
                : $"define it above with a line `stitch pattern {name} over multiple of 6 + 1` and its rows, or take it from another file with `use`",
            Mends = near is null || later is not null ? [] : [new Mend($"write {near}", span, near)],
            Related = later is { } there ? [new Related(there, "here")] : [],
        };
    }
}
