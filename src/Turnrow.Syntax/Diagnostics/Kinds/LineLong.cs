using System.Globalization;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A line too long to be read.</summary>
public static class LineLong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "line-long",
        "TR0115",
        Severity.Error,
        """
        A line has at most 20,000 characters. A row that needs more can go on in the next line after a comma, and in as many lines as it likes.
        """,
        Coaster.With("row 2: dc 1, dc 1, dc 1, dc 1, dc 1                    # … and so on for more than 20,000 characters"),
        Coaster.With("row 2: dc across"))
    {
        BadFile = static () => Encode.Utf8(Coaster.With("row 2: dc 1" + string.Concat(Enumerable.Repeat(", dc 1", 5_000)))),
    };

    internal static Diagnostic At(TextSpan line, int longest) =>
        new(Kind, line, string.Create(CultureInfo.InvariantCulture, $"this line has {line.Length:N0} characters; more than {longest:N0} are not read"))
        {
            Help = "break it after a comma",
        };
}
