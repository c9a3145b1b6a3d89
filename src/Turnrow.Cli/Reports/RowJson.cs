using System.Text.Json;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Cli.Reports;

/// <summary>Rows as records of <c>rows --json</c>. Their fields are a promise; the README of the command lists them.</summary>
internal static class RowJson
{
    /// <summary>Writes the rows of one piece in one size.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="pattern">The pattern, for its terms and gauges.</param>
    /// <param name="lineOf">The line of the source that made a row.</param>
    /// <param name="piece">The piece in this size.</param>
    /// <param name="size">The size's name.</param>
    public static void Write(JsonRecords records, Pattern pattern, Func<Row, int> lineOf, Piece piece, string size)
    {
        var names = new EdgeNames(piece);
        Rational? height = Rational.Zero;
        foreach (var row in piece.Rows)
        {
            height = height is { } below && HeightOf(row, pattern.Gauges) is { } own ? below + own : null;
            var soFar = height;
            records.Add(json =>
            {
                json.WriteString("piece"u8, piece.Name);
                json.WriteString("size"u8, size);
                json.WriteNumber("row"u8, row.Number);
                json.WriteString("side"u8, row.RightSide ? "RS"u8 : "WS"u8);
                WriteCounts(json, row.Work, pattern.Terms);
                json.WriteString("start"u8, names.StartOf(row));
                json.WriteString("end"u8, names.EndOf(row));
                WriteLength(json, "width_cm", pattern.Gauges.WidthOf(row));
                WriteLength(json, "height_cm", soFar);
                json.WriteNumber("line"u8, lineOf(row));
            });
        }
    }

    private static Rational? HeightOf(Row row, GaugeBook gauges) =>
        GaugeBook.TallestOf(row) is { } stitch ? gauges.Of(stitch)?.HeightOf(1) : null;

    private static void WriteCounts(Utf8JsonWriter json, RowWork? work, Terms terms)
    {
        if (work is null)
        {
            json.WriteNull("stitches"u8);
            json.WriteNull("counts"u8);
            return;
        }

        json.WriteNumber("stitches"u8, work.Stitches);
        json.WriteStartObject("counts"u8);
        foreach (var (kind, count) in Kinds(work.Tops, terms)) json.WriteNumber(kind, count);
        json.WriteEndObject();
    }

    // The top of a turning chain that counts is counted as the stitch that it stands for.
    private static List<(string Kind, int Count)> Kinds(PlaceSequence tops, Terms terms)
    {
        var kinds = new List<(string Kind, int Count)>();
        foreach (var run in tops.Kinds())
        {
            var kind = NameOf(run.Place, terms);
            var at = kinds.FindIndex(known => known.Kind == kind);
            if (at < 0) kinds.Add((kind, run.Count));
            else kinds[at] = (kind, kinds[at].Count + run.Count);
        }

        return kinds;
    }

    private static string NameOf(Place place, Terms terms) => place.Kind switch
    {
        PlaceKind.Space => $"ch-{place.Chains} sp",
        _ => (place.Stitch ?? StitchBook.Chain).In(terms).Abbreviation,
    };

    private static void WriteLength(Utf8JsonWriter json, string field, Rational? length)
    {
        if (length is not { } known)
        {
            json.WriteNull(field);
            return;
        }

        json.WritePropertyName(field);
        json.WriteRawValue(Centimetres.Of(known));
    }
}
