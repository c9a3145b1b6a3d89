using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Reads a <c>turn</c> line, in the header or in a piece.</summary>
internal static class TurnBinder
{
    private const int LongestChain = 50;

    /// <summary>Hands the rule over if it can be understood.</summary>
    public static void Bind(Context context, TurnStatement statement, Action<Stitch, TurnRule> use)
    {
        if (context.StitchOf(statement.Stitch) is not { } stitch) return;
        if (Whole(context, statement.Chains) is not { } chains)
        {
            // Custom is taken, as if it had been said: that it is not said would be a second fault of one cause.
            use(stitch, TurnRule.CustomOf(stitch));
            return;
        }

        var counts = statement.Counts ?? stitch.TurningChainCounts ?? true;
        var first = TurnRule.Of(chains, counts).FirstStitchIn;
        if (statement.FirstStitchIn is { } said)
        {
            if (Whole(context, said) is not { } k || k < 1) return;
            first = k;
        }

        use(stitch, new TurnRule(chains, counts, statement.NotInFoundation ? !counts : counts, first));
    }

    private static int? Whole(Context context, NumberSyntax number)
    {
        if (number.Denominator == 1 && number.Numerator is >= 0 and <= LongestChain) return (int)number.Numerator;
        context.Findings.Add(TurnChainLength.At(number.Span, LongestChain));
        return null;
    }
}
