using Turnrow.Fabric.Stitches;

namespace Turnrow.Publishing.Trade;

/// <summary>
/// The words other than stitch names that differ between US and UK print. Each is looked up once, from the meaning, so that
/// nothing is ever translated twice.
/// </summary>
/// <param name="Called">What these terms are called.</param>
/// <param name="Skip">To pass over stitches.</param>
/// <param name="Gauge">Stitches and rows to a length.</param>
/// <param name="YarnOver">To lay the yarn over the hook.</param>
/// <param name="Centre">The middle.</param>
internal sealed record TradeTerms(string Called, string Skip, string Gauge, string YarnOver, string Centre)
{
    private static readonly TradeTerms Us = new("US", "skip", "Gauge", "yarn over", "center");

    private static readonly TradeTerms Uk = new("UK", "miss", "Tension", "yarn over hook", "centre");

    /// <summary>The words of these terms.</summary>
    public static TradeTerms Of(Terms terms) => terms == Terms.US ? Us : Uk;

    /// <summary><c>skipped</c> or <c>missed</c>.</summary>
    public string Skipped => Skip == "skip" ? "skipped" : "missed";
}
