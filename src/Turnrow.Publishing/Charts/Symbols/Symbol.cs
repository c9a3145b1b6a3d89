using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>
/// How one shape of stitch is drawn: a leg from the place worked into to the place made, and a head over the leg or legs. One leg
/// and one head are a stitch; legs that spread from one foot an increase; legs that meet under one head a decrease.
/// </summary>
internal abstract class Symbol
{
    /// <summary>A leg from foot to head.</summary>
    public abstract void Leg(Ink ink, Point foot, Point head, int bars);

    /// <summary>What joins legs at the top; most shapes have nothing there.</summary>
    /// <param name="ink">Where it is drawn.</param>
    /// <param name="head">The top.</param>
    /// <param name="pitch">1, or less where stitches stand closer than a column.</param>
    public virtual void Head(Ink ink, Point head, double pitch = 1)
    {
    }

    /// <summary>The symbol of a shape.</summary>
    public static Symbol Of(StitchSymbol symbol) => symbol.Shape switch
    {
        SymbolShape.Cluster => new ClusterSymbol(symbol.Legs, ClusterTop.Bar),
        SymbolShape.Puff => new ClusterSymbol(symbol.Legs, ClusterTop.None),
        SymbolShape.Popcorn => new ClusterSymbol(symbol.Legs, ClusterTop.Oval),
        SymbolShape.Extended => new VariantSymbol(Of(new StitchSymbol(symbol.Of, symbol.Bars)), VariantMark.Loop),
        SymbolShape.Linked => new VariantSymbol(Of(new StitchSymbol(symbol.Of, symbol.Bars)), VariantMark.Link),
        SymbolShape.Reversed => new VariantSymbol(Of(new StitchSymbol(symbol.Of, symbol.Bars)), VariantMark.Wave),
        SymbolShape.Picot => new PicotSymbol(symbol.Legs),
        SymbolShape.Oval => OvalSymbol.Instance,
        SymbolShape.Dot => DotSymbol.Instance,
        SymbolShape.Cross => CrossSymbol.Instance,
        _ => StemSymbol.Instance,
    };
}
