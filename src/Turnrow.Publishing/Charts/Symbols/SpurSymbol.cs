using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>A spur: its chain stands up, and the stitches along it lie beside it, each at the chain that it goes into, the first at the tip.</summary>
internal static class SpurSymbol
{
    private const double PerChain = 5.4;
    private const double Tallest = 64;
    private const double Foot = 2;
    private const double Nearest = 2.2;
    private const double PerHeight = 1.9;
    private const double Slant = 2;
    private const double Bar = 1.6;

    /// <summary>How high it stands.</summary>
    public static double HeightOf(StitchForm form) => Foot + (Step(form) * form.Parts[0].Count);

    /// <summary>How high the highest of those in a row stands above it; 0 if there are none.</summary>
    public static double RoomFor(IReadOnlyList<Word> words)
    {
        var highest = 0.0;
        for (var i = 0; i < words.Count; i++)
        {
            highest = Math.Max(highest, words[i] switch
            {
                Work { Stitch: { Making: StitchMaking.Spur, Form: { } form } } => HeightOf(form),
                Work { Stitch: { IsOne: false, Form: { } special } } => RoomFor(special.Words()),
                Group group => RoomFor(group.Words),
                Repeat repeat => RoomFor(repeat.Words),
                _ => 0,
            });
        }

        return highest;
    }

    /// <summary>Draws it over the stitch that it stands on.</summary>
    public static void Draw(Ink ink, Point foot, StitchForm form)
    {
        var (chains, step) = (form.Parts[0].Count, Step(form));
        var height = form.Parts[1].Stitch!.Height;
        for (var i = 0; i < chains; i++) ink.Oval(At(i), new Point(0, 1), (step / 2) - 0.4, 1.9);
        foreach (var part in form.Parts.Skip(1))
        {
            var chain = chains - 1 - height - part.Place;
            for (var i = 0; i < part.Count; i++) Beside(ink, At(chain + ((i - ((part.Count - 1) / 2.0)) * 0.7)), part.Stitch!);
        }

        Point At(double chain) => foot - new Point(0, Foot + (step * (chain + 0.5)));
    }

    private static double Step(StitchForm form) => Math.Min(PerChain, Tallest / form.Parts[0].Count);

    private static void Beside(Ink ink, Point at, Stitch stitch)
    {
        var (from, to) = (at + new Point(Nearest, 0), at + new Point(Nearest + 1 + (PerHeight * stitch.Height), -Slant));
        ink.Line(from, to);
        var across = new Point(Bar, -Bar);
        var bars = Math.Max(1, stitch.Symbol.Bars);
        for (var bar = 0; bar < bars; bar++)
        {
            var middle = from.Towards(to, (bar + 1.0) / (bars + 1));
            if (stitch.Symbol.Shape == SymbolShape.Cross || stitch.Symbol.Bars > 0) ink.Line(middle - new Point(across.Y, across.X), middle + new Point(across.Y, across.X));
        }

        if (stitch.Symbol.Shape != SymbolShape.Cross) ink.Line(to - new Point(0.4, Bar), to + new Point(0.4, Bar));
    }
}
