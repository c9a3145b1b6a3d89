using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A sign of calculation without white space round it.</summary>
public static class OperatorSpace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sign-space",
        "TR0108",
        Severity.Error,
        """
        The signs `+`, `-`, `x` and `/` have a space on both sides, since names may hold hyphens (`side-seam`) and fractions a
        stroke (`1/2`): `hem - 2` is a difference, `hem-2` a name. From one row to another is written `2 to 5`.
        """,
        Coaster.With("row 2: dc 18+ 2"),
        Coaster.With("row 2: dc 18 + 2"));

    /// <param name="sign">The sign.</param>
    /// <param name="text">The same, as text.</param>
    /// <param name="gap">From the word before it to the one behind it.</param>
    /// <param name="isRange">True if it most likely stands for <c>to</c>.</param>
    internal static Diagnostic At(TextSpan sign, string text, TextSpan gap, bool isRange)
    {
        var spaced = new Mend($"put spaces round `{text}`", gap, $" {text} ");
        return new Diagnostic(Kind, sign, $"`{text}` needs a space on both sides")
        {
            Help = isRange
                ? "from one row to another is written `2 to 5`; a difference is written `5 - 2`"
                : text == "-" ? "a difference is written `hem - 2`; a number can't be less than nothing" : $"write `hem {text} 2`",
            Mends = isRange ? [new Mend("write `to`", gap, " to "), spaced] : [spaced],
        };
    }
}
