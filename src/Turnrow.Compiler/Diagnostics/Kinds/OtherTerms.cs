using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch word of the other terms.</summary>
public static class OtherTerms
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "other-terms",
        "TR0203",
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

    internal static Diagnostic At(TextSpan span, string word, Stitch stitch, Terms terms)
    {
        var right = stitch.In(terms).Abbreviation;
        var other = terms == Terms.US ? Terms.UK : Terms.US;
        return new(Kind, span, $"{terms} terms have no `{word}`: that is the {other} word for {right}")
        {
            Help = $"write {right}, or say `terms {other}` at the top if the whole file is written in {other} terms",
            Mends = [new Mend($"write {right}", span, right)],
        };
    }
}
