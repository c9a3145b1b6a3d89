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
    /// <param name="before">The value before it, or null if none is there.</param>
    /// <param name="after">The value behind it, or null.</param>
    /// <param name="isRange">True if it most likely stands for <c>to</c>.</param>
    internal static Diagnostic At(TextSpan sign, string text, TextSpan gap, string? before, string? after, bool isRange)
    {
        var spaced = new Mend($"put spaces round `{text}`", gap, $" {text} ");
        var sum = before is null || after is null ? null : $"{Quote.Short(before)} {text} {Quote.Short(after)}";
        return new Diagnostic(Kind, sign, $"`{text}` needs a space on both sides")
        {
            Help = sum is null ? "such a sign stands between two values, as in `hem - 2`; there is no number below nothing"
                : isRange ? $"write `{before} to {after}` for rows, `{sum}` for a difference"
                : $"write `{sum}`",
            Mends = sum is null ? [] : isRange ? [new Mend("write `to`", gap, " to "), spaced] : [spaced],
        };
    }
}
