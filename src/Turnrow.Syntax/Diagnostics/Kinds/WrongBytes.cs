using System.Text;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>Bytes that are no text.</summary>
public static class WrongBytes
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "wrong-bytes",
        "TR0117",
        Severity.Error,
        """
        A pattern is plain text in the encoding UTF-8, which every editor of today can save. Letters such as ä or é from an older encoding come out wrong.
        Open the file where it was written and save it as UTF-8.
        """,
        Coaster.With("row 2: dc across  # b\uFFFDte, saved in an older encoding"),
        Coaster.With("row 2: dc across  # bête, saved as UTF-8"))
    {
        BadFile = static () => Encoding.Latin1.GetBytes(Coaster.With("row 2: dc across  # bête, saved in an older encoding")),
    };

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "the bytes here are no text in UTF-8") { Help = "save the file as UTF-8" };
}
