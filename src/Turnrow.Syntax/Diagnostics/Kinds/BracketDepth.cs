using System.Globalization;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>Too many brackets inside each other.</summary>
public static class BracketDepth
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "bracket-depth",
        "TR0105",
        Severity.Error,
        """
        A bracket may stand in a bracket, but no more than sixteen deep: no maker could follow such a row. Most likely a bracket was
        typed again and again by a key that stuck.
        """,
        Coaster.With("row 2: " + new string('(', 17) + "dc across" + new string(')', 17)),
        Coaster.With("row 2: (dc 4) 5 times"));

    internal static Diagnostic At(TextSpan span, int deepest) =>
        new(Kind, span, string.Create(CultureInfo.InvariantCulture, $"more than {deepest} brackets inside each other"))
        {
            Help = "write the row with fewer brackets, or in parts",
        };
}
