using System.Text;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Gathers lines and filled marks, so that a row becomes two paths instead of thousands of elements.</summary>
internal sealed class Ink
{
    // A quarter of an ellipse by one cubic curve: the common constant.
    private const double Quarter = 0.5523;

    private readonly StringBuilder _strokes = new();
    private readonly StringBuilder _fills = new();

    /// <summary>Where what is drawn stands: it is turned so that its up is up there.</summary>
    public Stand Stand { get; set; } = new(default, Stand.Upright);

    public void Line(Point from, Point to)
    {
        Move(_strokes, from);
        LineTo(_strokes, to);
    }

    public void Lines(params ReadOnlySpan<Point> points)
    {
        Move(_strokes, points[0]);
        foreach (var point in points[1..]) LineTo(_strokes, point);
    }

    /// <summary>A curve from one point to another, drawn towards a third.</summary>
    public void Curve(Point from, Point towards, Point to)
    {
        Move(_strokes, from);
        _strokes.Append('Q');
        Append(_strokes, towards);
        _strokes.Append(' ');
        Append(_strokes, to);
    }

    /// <summary>An open oval whose long axis has a direction.</summary>
    public void Oval(Point middle, Point direction, double along, double across)
    {
        var a = direction.Unit() * along;
        var b = direction.Unit().Across() * across;
        Move(_strokes, middle + a);
        for (var i = 0; i < 4; i++)
        {
            _strokes.Append('C');
            Append(_strokes, middle + a + (b * Quarter));
            _strokes.Append(' ');
            Append(_strokes, middle + b + (a * Quarter));
            _strokes.Append(' ');
            Append(_strokes, middle + b);
            (a, b) = (b, a * -1);
        }

        _strokes.Append('Z');
    }

    /// <summary>A filled dot.</summary>
    public void Dot(Point middle, double radius)
    {
        var r = Decimals.Of(radius);
        var across = Decimals.Of(2 * radius);
        _fills.Append('M');
        AppendOnSheet(_fills, Stand.OnSheet(middle) - new Point(radius, 0));
        _fills.Append('a').Append(r).Append(' ').Append(r).Append(" 0 1 0 ").Append(across).Append(" 0a")
            .Append(r).Append(' ').Append(r).Append(" 0 1 0 -").Append(across).Append(" 0Z");
    }

    /// <summary>A triangle, filled or open.</summary>
    public void Triangle(Point a, Point b, Point c, bool filled)
    {
        var path = filled ? _fills : _strokes;
        Move(path, a);
        LineTo(path, b);
        LineTo(path, c);
        path.Append('Z');
    }

    /// <summary>Writes what was gathered.</summary>
    public void WriteTo(SvgWriter svg)
    {
        if (_strokes.Length > 0) svg.Open("path").With("d", _strokes.ToString()).With("fill", "none").With("stroke", "currentColor").Close();
        if (_fills.Length > 0) svg.Open("path").With("d", _fills.ToString()).Close();
    }

    private void Move(StringBuilder path, Point to)
    {
        path.Append('M');
        Append(path, to);
    }

    private void LineTo(StringBuilder path, Point to)
    {
        path.Append('L');
        Append(path, to);
    }

    private void Append(StringBuilder path, Point point) => AppendOnSheet(path, Stand.OnSheet(point));

    private static void AppendOnSheet(StringBuilder path, Point point) =>
        path.Append(Decimals.Of(point.X)).Append(' ').Append(Decimals.Of(point.Y));
}
