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
        US and UK patterns use the same words for different stitches: a UK dc is a US sc, and there is no sc in UK terms. A fabric worked
        in the wrong one comes out nearly half or twice as high, so the file says at its top which it means (`terms US` or `terms UK`),
        and a word that those terms do not have is stopped here. If only this word slipped in, write the one that the message names. If
        the whole pattern is thought out in the other terms, change the `terms` line instead: the instructions can be printed in both all
        the same.
        """,
        SmallPattern.With("Dishcloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: sc across
            """, "UK"),
        SmallPattern.With("Dishcloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: dc across
            """, "UK"));

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
