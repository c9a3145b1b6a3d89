using System.Globalization;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws what the first row stands on, and where work starts.</summary>
internal sealed class BasePainter(Sheet sheet)
{
    private const double LineBelow = 2;
    private const double TickDown = 5;
    private const double ChainsBelow = 5;
    private const double CaptionBelow = 27;
    private const double CaptionSize = 12;
    private const double FromEdge = 6;

    /// <summary>Room that it needs below the first row.</summary>
    public const double Room = 36;

    /// <summary>Draws it.</summary>
    public void Draw(RowBand first)
    {
        var ink = new Ink();
        var row = first.Row;
        if (row.Row.Begins is not (RowBegins.Foundation or RowBegins.Ring or RowBegins.FoundationStitches)) DrawEdge(row, ink);
        DrawStart(row, ink);
        sheet.Svg.Open("g").With("class", "base");
        ink.WriteTo(sheet.Svg);
        sheet.WriteLine(sheet.X(row.Below.To), sheet.Y(-CaptionBelow), CaptionSize, Caption(sheet.Layout.Piece, row, sheet.Terms));
        sheet.Svg.Close();
    }

    /// <summary>What the piece begins from, in words.</summary>
    public static string Caption(Piece piece, RowLayout row, Fabric.Stitches.Terms terms)
    {
        var culture = CultureInfo.InvariantCulture;
        if (row.Row.Number > 1) return string.Create(culture, $"on {Names.Row(piece.Rows[row.Row.Number - 2])} {row.Row.Number - 1}");
        switch (piece.Start)
        {
            case PartStart part:
                return string.Create(culture, $"on {part.Count} stitches of the last row of {Names.Words(part.Base.Name)}, {(part.Joined ? "yarn joined anew" : "the yarn goes on")}");
            case AcrossStart across:
                return $"over the last rows of {string.Join(", ", across.Parts.Select(p => Names.Words(p.Base.Name)))}, {(across.Joined ? "yarn joined anew" : "the yarn goes on")}";
            case PickUpStart pickUp:
                var names = pickUp.Walk.Select(leg => Names.Words(leg.Piece.Name)).Distinct();
                return $"picked up {(pickUp.Around ? "around" : "along")} {string.Join(", ", names)}, {(pickUp.RightSide ? "right" : "wrong")} side facing";
        }

        if (piece.Start is RingStart { Chains: var ofRing }) return ofRing == 0 ? "an adjustable ring" : string.Create(culture, $"a ring of {ofRing} chains");
        if (row.Row is { Begins: RowBegins.Ring, Work.Below.Count: var ring }) return string.Create(culture, $"chain {ring}, joined into a ring");
        if (piece.Start is FoundationStart { AtOnce: { } atOnce }) return string.Create(culture, $"{row.BelowScale.Count} foundation {atOnce.In(terms).Abbreviation}, each on a chain of its own");
        if (row.Row.Work?.Opening is not { } opening || opening.Chains == 0) return "chain";
        var into = FirstFromHook.Of(piece) is { } first
            ? string.Create(culture, $", first {first.Stitch.In(terms).Abbreviation} in the {Ordinal(first.Nth)} chain from the hook")
            : string.Empty;
        return string.Create(culture, $"chain {opening.Chains}{into}");
    }

    private static string Ordinal(int number)
    {
        var end = (number % 100) is >= 11 and <= 13 ? "th" : (number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" };
        return number.ToString(CultureInfo.InvariantCulture) + end;
    }

    private void DrawEdge(RowLayout row, Ink ink)
    {
        var y = sheet.Y(-LineBelow);
        ink.Line(new Point(sheet.X(row.Below.To), y), new Point(sheet.X(row.Below.From), y));
        foreach (var open in sheet.Layout.Axis.Open(row.Below))
        {
            for (var column = Math.Ceiling(open.From - row.Below.From - 0.01) + row.Below.From + 0.5; column < open.To; column++)
                ink.Line(new Point(sheet.X(column), y), new Point(sheet.X(column), y + TickDown));
        }

        sheet.Legend.Add(LegendSign.Base);
    }

    private void DrawStart(RowLayout row, Ink ink)
    {
        var fromRight = row.Direction > 0;
        if (row.Row.Begins == RowBegins.Foundation)
        {
            // The chain is made towards the first row's start: the arrow stands at its other end.
            var end = fromRight ? sheet.X(row.Below.To) - FromEdge : sheet.X(row.Below.From) + FromEdge;
            Marks.Arrow(ink, new Point(end, sheet.Y(-ChainsBelow)), towardsRight: fromRight);
            sheet.Legend.Add(LegendSign.Start);
            return;
        }

        var start = fromRight ? sheet.X(row.Below.From) + FromEdge : sheet.X(row.Below.To) - FromEdge;
        var tip = new Point(start, sheet.Y(-ChainsBelow - 2));
        var joined = row.Row.Begins is RowBegins.Joined or RowBegins.PickedUpJoined;
        if (joined) Marks.Join(ink, tip, towardsRight: !fromRight);
        else Marks.Arrow(ink, tip, towardsRight: !fromRight);
        sheet.Legend.Add(joined ? LegendSign.Join : LegendSign.Start);
    }
}
