using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A comma between digits without a space.</summary>
public static class NumberComma
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "number-comma",
        "TR0107",
        Severity.Error,
        """
        `12,5` could be twelve and a half, or the two numbers 12 and 5. Decimals are written with a point, as in `12.5`, and thousands without any sign;
        between the numbers of a list in sizes there is a space behind each comma, as in `5 (6, 7, 8)`.
        """,
        Coaster.With("straight for 12,5 cm"),
        Coaster.With("straight for 12.5 cm"));

    /// <param name="span">The digits and commas.</param>
    /// <param name="text">The same, as text.</param>
    /// <param name="inList">True in a list, where the comma most likely parts two numbers.</param>
    internal static Diagnostic At(TextSpan span, string text, bool inList)
    {
        var listed = text.Replace(",", ", ", StringComparison.Ordinal);
        var point = text.Replace(',', '.');
        var asList = new Mend($"write `{Quote.Short(listed)}`", span, listed);
        if (text.IndexOf(',', StringComparison.Ordinal) != text.LastIndexOf(','))
            return new Diagnostic(Kind, span, $"`{Quote.Short(text)}` lacks the spaces behind its commas")
            {
                Help = $"write `{Quote.Short(listed)}`; thousands have no sign at all",
                Mends = [asList],
            };
        var asDecimal = new Mend($"write `{Quote.Short(point)}`", span, point);
        return new Diagnostic(Kind, span, $"`{Quote.Short(text)}` can be read in two ways")
        {
            Help = $"write `{Quote.Short(point)}` for a decimal, `{Quote.Short(listed)}` for two numbers",
            Mends = inList ? [asList, asDecimal] : [asDecimal, asList],
        };
    }
}
