namespace Turnrow.Fabric.Solids;

/// <summary>
/// The line along which a body worked in rounds is made, from its foot to its top: at each point how far it is from the axis. Lengths are
/// centimetres.
/// </summary>
public sealed class Meridian
{
    private readonly (double Along, double Radius)[] _points;

    private Meridian((double Along, double Radius)[] points) => _points = points;

    /// <summary>Its length.</summary>
    public double Length => _points[^1].Along;

    /// <summary>A line through points given by their distance from the axis and their height, joined straight.</summary>
    public static Meridian Through(IReadOnlyList<(double Radius, double Height)> points)
    {
        var line = new (double, double)[points.Count];
        var along = 0.0;
        for (var i = 0; i < line.Length; i++)
        {
            if (i > 0) along += Math.Sqrt(Square(points[i].Radius - points[i - 1].Radius) + Square(points[i].Height - points[i - 1].Height));
            line[i] = (along, points[i].Radius);
        }

        return new Meridian(line);
    }

    /// <summary>The same line from its top to its foot.</summary>
    public Meridian Reversed()
    {
        var line = new (double, double)[_points.Length];
        for (var i = 0; i < line.Length; i++) line[i] = (Length - _points[^(i + 1)].Along, _points[^(i + 1)].Radius);
        return new Meridian(line);
    }

    /// <summary>The distance from the axis at a length along the line.</summary>
    public double RadiusAt(double along)
    {
        var next = Array.FindIndex(_points, point => point.Along >= along);
        if (next <= 0) return _points[next < 0 ? ^1 : 0].Radius;
        var (before, after) = (_points[next - 1], _points[next]);
        return before.Radius + ((after.Radius - before.Radius) * (along - before.Along) / (after.Along - before.Along));
    }

    private static double Square(double x) => x * x;
}
