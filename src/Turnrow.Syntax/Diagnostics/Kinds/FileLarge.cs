using System.Globalization;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A file too large to be read.</summary>
public static class FileLarge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "file-large",
        "TR0116",
        Severity.Error,
        """
        A pattern has at most 1,000,000 characters; a garment in seven sizes needs two or three thousand. Most likely this is no pattern but
        another file, a picture perhaps.
        """,
        Coaster.With("row 2: dc across                                          # … and so on for more than 1,000,000 characters"),
        Coaster.With("row 2: dc across"))
    {
        BadFile = static () => Encode.Utf8(Coaster.With("row 2: dc across") + string.Concat(Enumerable.Repeat("# a coaster\n", 90_000))),
    };

    internal static Diagnostic At(SourceText source, int largest)
    {
        var first = source.LineSpan(1);
        return new Diagnostic(
            Kind,
            new TextSpan(0, Math.Min(first.Length, 40)),
            string.Create(CultureInfo.InvariantCulture, $"this file has {source.Text.Length:N0} characters; more than {largest:N0} are not read"))
        {
            Help = "look whether it is a pattern at all",
        };
    }
}
