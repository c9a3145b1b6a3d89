using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>First, last, same, slip over or leave where it can't be.</summary>
public static class PlaceInRow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "place-in-row",
        "TR0306",
        Severity.Error,
        """
        Some words belong to one end of the row. `in first` is where the row starts, and `slip over` gets you past its first stitches; `in
        last` and `leave` are at its end; `in same` needs a stitch before it. Here such a word stands where it can't be meant. Move it to
        its end of the row, or use the word for the middle: `in next`, `skip 3`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 5, 2 dc in first, dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: 2 dc in first, dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFaultKind kind, string word, int there) =>
        new(Kind, span, Message(kind, word, there) + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = kind switch
            {
                RowFaultKind.NotFirst => "put it at the beginning of the row, or write `in next`",
                RowFaultKind.NotLast when there > 1 => $"work up to the last place before it, `dc until 1 remains`, pass over what comes before, `skip {Counted.Plain(there - 1)}`, or write `in next`",
                RowFaultKind.NotLast => "write `in next`",
                RowFaultKind.NothingBefore => "write `in next`",
                RowFaultKind.SlipOverInside => "slip over stitches at the beginning of a row; further on write `skip`",
                _ when word.StartsWith("leave", StringComparison.Ordinal) => "say in one `leave` at the end of the row how many are left",
                _ => "put `leave` at the end of the row",
            },
        };

    private static string Message(RowFaultKind kind, string word, int there) => kind switch
    {
        RowFaultKind.NotFirst => $"`{word}` means the first place of the row, which is worked already",
        RowFaultKind.NotLast when there == 0 => $"`{word}` means the last place of the row, which is worked already",
        RowFaultKind.NotLast => $"`{word}` means the last place of the row, and {Counted.Places(there - 1)} {(there == 2 ? "comes" : "come")} before it",
        RowFaultKind.NothingBefore => $"`{word}` means the place of the stitch before, and none has been worked yet",
        RowFaultKind.SlipOverInside => $"`{word}` stands further on in the row, where stitches have been worked already",
        _ => $"`{word}` comes after stitches that are left unworked",
    };
}
