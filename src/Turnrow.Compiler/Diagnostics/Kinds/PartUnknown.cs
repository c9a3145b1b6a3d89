using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that `divide` did not name.</summary>
public static class PartUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-unknown",
        "TR0343",
        Severity.Error,
        """
        A piece is to go on from a part of a divided row, and the `divide` line gives no part that name. Look for a slip of spelling; the
        parts' names stand behind `for` in that line. Between two pieces that one row goes `across` stands a comma. If the row is not divided by a `divide` line, say how many stitches and at which
        edge instead: `piece sleeve from yoke: 12 stitches at right edge`.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, skip 6, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: frnt
              row 1: dc across
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, skip 6, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: front
              row 1: dc across
            """));

    internal static Diagnostic Comma(NameSyntax next) =>
        new(Kind, next.Span, $"`{next.Text}` begins another piece of the row, and no comma stands before it")
        {
            Help = "put a comma between two pieces that one row goes over",
            Mends = [new Mend("put a comma", new TextSpan(next.Span.Start, 0), ", ")],
        };

    internal static Diagnostic At(TextSpan span, string name, string piece, IEnumerable<string> known)
    {
        var parts = known.ToList();
        var near = Spelling.Nearest(name, parts);
        return new(Kind, span, $"{piece} has no part `{name}`")
        {
            Help = near is not null ? $"did you mean `{near}`?" : parts.Count > 0 ? $"its parts are {Findings.Join(parts)}" : $"name it in {piece}: `divide: 22 for {name}, …`",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
