using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Holds what the finished sample measures against its rows, once all pieces are known: the lines may stand anywhere.</summary>
internal sealed class MadeBinder(Context context, PieceBook book)
{
    private readonly List<MadeStatement> _lines = [];
    private readonly Dictionary<(PieceState Piece, int Size), TextSpan> _said = [];

    public void Note(MadeStatement statement) => _lines.Add(statement);

    /// <summary>What could be held against rows that are known.</summary>
    public IReadOnlyList<MadePiece> Bind()
    {
        var made = new List<MadePiece>();
        foreach (var line in _lines)
        {
            if (Bind(line) is { } piece) made.Add(piece);
        }

        return made;
    }

    private MadePiece? Bind(MadeStatement line)
    {
        var size = SizeOf(line.Size);
        if (book.Bind(line.Piece) is not { } piece || size < 0) return null;
        if (!_said.TryAdd((piece, size), line.Span))
        {
            context.Findings.Add(MadeTwice.At(line.Span, line, _said[(piece, size)]));
            return null;
        }

        var (wide, high) = (PartOf(line, true), PartOf(line, false));
        if (piece.Unread || piece.Builders[size].RowsInDoubt || piece.Builders[size].Rows is not { Count: > 0 } rows) return null;
        var measured = new MadePiece(piece.Name, size, wide is null ? null : Width(line, wide, rows), high is null ? null : Height(line, high, rows));
        return measured is { Width: null, Height: null } ? null : measured;
    }

    private int SizeOf(NameSyntax name)
    {
        for (var i = 0; i < context.Sizes; i++)
        {
            if (string.Equals(context.Findings.SizeNames[i], name.Text, StringComparison.OrdinalIgnoreCase)) return i;
        }

        if (!context.SizesInDoubt) context.Findings.Add(MadeSize.At(name, context.Findings.SizeNames));
        return -1;
    }

    private MadePartSyntax? PartOf(MadeStatement line, bool wide)
    {
        MadePartSyntax? found = null;
        foreach (var part in line.Parts)
        {
            if (part.Wide != wide) continue;
            if (found is not null) context.Findings.Add(MadeTwice.At(part.Span, part, found.Span));
            else found = part;
        }

        return found;
    }

    private MadeLength? Width(MadeStatement line, MadePartSyntax part, IReadOnlyList<Row> rows)
    {
        if (LengthOf(part) is not { } measured || !HaveGauges(line, part, GaugeBook.WidthFabricsOf(rows))) return null;
        return context.Gauges.WidestOf(rows) is { } widest
            ? Told(line, part, new MadeLength(measured, widest.Width, GaugeBook.WidthFabricsOf([widest.Row])))
            : null;
    }

    private MadeLength? Height(MadeStatement line, MadePartSyntax part, IReadOnlyList<Row> rows)
    {
        if (LengthOf(part) is not { } measured || !HaveGauges(line, part, GaugeBook.FabricsOf(rows))) return null;
        return context.Gauges.HeightOf(rows) is { } planned
            ? Told(line, part, new MadeLength(measured, planned, GaugeBook.FabricsOf(rows)))
            : null;
    }

    private MadeLength Told(MadeStatement line, MadePartSyntax part, MadeLength length)
    {
        if (Tolerance.IsPassed(length.Measured, length.Planned)) context.Findings.Add(MadeOff.At(context, line, part, length));
        return length;
    }

    private Rational? LengthOf(MadePartSyntax part)
    {
        if (Rational.Of(part.Number.Numerator, part.Number.Denominator) is { } number && number * Units.Centimetres(part.Unit.Unit) is { } length
            && length > Rational.Zero && length <= MadeLengthWrong.Most) return length;
        context.Findings.Add(MadeLengthWrong.At(part));
        return null;
    }

    private bool HaveGauges(MadeStatement line, MadePartSyntax part, IReadOnlyList<(Stitch Stitch, int Rows)> fabrics)
    {
        foreach (var (stitch, _) in fabrics)
        {
            if (context.Gauges.Of(stitch) is not null) continue;
            if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.Sample(part.Span, line.Piece.Text, context.Word(stitch)));
            return false;
        }

        return true;
    }
}
