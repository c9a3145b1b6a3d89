using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

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
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, RowFaultKind kind, string word, int there) =>
        new(Kind, span, Message(kind, word, there) + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = kind switch
            {
                RowFaultKind.NotFirst => "put it at the beginning of the row, or write `in next`",
                RowFaultKind.NotLast => "work up to the last stitch before it: dc until 1 remain",
                RowFaultKind.NothingBefore => "write `in next`",
                RowFaultKind.SlipOverInside => "slip over stitches at the beginning of a row; further on, `skip` them",
                _ => "put `leave` at the end of the row",
            },
        };

    private static string Message(RowFaultKind kind, string word, int there) => kind switch
    {
        RowFaultKind.NotFirst => $"`{word}` means the first place of the row, and that is behind already",
        RowFaultKind.NotLast => Invariant($"`{word}` means the last place of the row, and {there} places come before its end"),
        RowFaultKind.NothingBefore => $"`{word}`: nothing has been worked yet",
        RowFaultKind.SlipOverInside => $"`{word}` does not stand at the beginning of the row",
        _ => $"`{word}` comes after stitches that are left",
    };
}
