using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A number in front of a stitch, without a place.</summary>
public static class StitchNumber
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-number",
        "TR0111",
        Severity.Error,
        """
        Print uses `5 dc` for two things: five stitches one after another, and five in one place. Here they are told apart. A number *behind* the stitch puts one in each
        of the next places: `dc 5`. A number *in front* of it puts them all in one, and says in which: `5 dc in next`, `5 dc in next sp`. Only in
        a group that goes into one place, `(2 dc, ch 2, 2 dc) in next sp`, it may stand without.
        """,
        Coaster.With("row 2: 5 dc, dc across"),
        Coaster.With("row 2: dc 5, dc across"));

    /// <param name="span">The number and the stitch.</param>
    /// <param name="number">The number, as text.</param>
    /// <param name="words">The words of the stitch.</param>
    internal static Diagnostic At(TextSpan span, string number, IReadOnlyList<NameSyntax> words)
    {
        var stitch = string.Join(' ', words.Select(word => word.Text));
        var each = $"{stitch} {number}";
        var one = $"{number} {stitch} in next";
        var mends = new List<Mend> { new($"write `{Quote.Short(each)}`: one in each of the next {Quote.Short(number)}", span, each) };
        // Chains go over the work, into no place.
        if (stitch != "ch") mends.Add(new Mend($"write `{Quote.Short(one)}`: all in one place", span, one));
        return new Diagnostic(Kind, span, $"`{Quote.Short(number)} {Quote.Short(stitch)}` can be meant in two ways")
        {
            Help = stitch == "ch"
                ? $"write `{Quote.Short(each)}`"
                : $"write `{Quote.Short(each)}` for one in each of the next, `{Quote.Short(one)}` for all in one place, `{Quote.Short($"{number} {stitch} in ring")}` where the piece begins with a ring",
            Mends = mends,
        };
    }
}
