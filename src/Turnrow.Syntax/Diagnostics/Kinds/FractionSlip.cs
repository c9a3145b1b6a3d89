using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A fraction that is none.</summary>
public static class FractionSlip
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fraction",
        "TR0109",
        Severity.Error,
        """
        Fractions are written `1/2`, `7 1/2` or `7½`: a whole number, a space, and a part that is less than one. A decimal has no fraction behind it, there
        is no hyphen between number and part, and nothing can be divided by nothing.
        """,
        Coaster.With("straight for 7-1/2 in"),
        Coaster.With("straight for 7 1/2 in"));

    internal static Diagnostic OverNothing(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` divides by nothing") { Help = "the number below the stroke has to be 1 or more" };

    internal static Diagnostic OverOne(TextSpan span, string part) =>
        new(Kind, span, $"behind a whole number the part has to be less than one, and `{Quote.Short(part)}` is not")
        {
            Help = "write the whole as one number, or put a comma between if they are two",
        };

    internal static Diagnostic OfDecimal(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` is both a decimal and a fraction") { Help = "write 7.5 or 7 1/2" };

    internal static Diagnostic Hyphen(TextSpan sign, string whole, string part) =>
        new(Kind, sign, "no hyphen between a number and its fraction")
        {
            Help = $"write `{Quote.Short(whole)} {Quote.Short(part)}`; a difference is written with spaces, `{Quote.Short(whole)} - {Quote.Short(part)}`",
            Mends = [new Mend($"write `{whole} {part}`", sign, " "), new Mend("make it a difference", sign, " - ")],
        };
}
