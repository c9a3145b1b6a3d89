using System.Globalization;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A number with too many digits.</summary>
public static class NumberLarge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "number-large",
        "TR0113",
        Severity.Error,
        """
        Numbers have up to nine digits. No garment needs more, and calculations stay exact with them.
        """,
        Coaster.With("straight 20000000000 rows"),
        Coaster.With("straight 20 rows"));

    internal static Diagnostic At(TextSpan span, int digits) =>
        new(Kind, span, string.Create(CultureInfo.InvariantCulture, $"this number has more than {digits} digits"))
        {
            Help = "look whether a key was pressed too long",
        };
}
