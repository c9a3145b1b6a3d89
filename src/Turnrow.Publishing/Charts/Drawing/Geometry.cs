using System.Globalization;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>A point in pixels from the upper left.</summary>
internal readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(Point a, double factor) => new(a.X * factor, a.Y * factor);

    /// <summary>Its distance from the origin. A square root is exact to the last bit on every machine.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The point a part of the way to another.</summary>
    public Point Towards(Point other, double part) => this + ((other - this) * part);

    /// <summary>The same direction, 1 long; straight up for a point without one.</summary>
    public Point Unit()
    {
        var length = Length;
        return length < 1e-6 ? new Point(0, -1) : this * (1 / length);
    }

    /// <summary>Turned by a right angle, clockwise as it is seen.</summary>
    public Point Across() => new(-Y, X);
}

/// <summary>Where a stitch stands, and which way is up there.</summary>
/// <param name="At">The point round which what is drawn is turned.</param>
/// <param name="Up">The direction that is up, 1 long.</param>
internal readonly record struct Stand(Point At, Point Up)
{
    /// <summary>Straight up is up on the sheet.</summary>
    public static Point Upright => new(0, -1);

    /// <summary>Where a point that is drawn as if straight up were up comes to lie on the sheet.</summary>
    public Point OnSheet(Point drawn) => Up == Upright ? drawn : At + Turned(drawn - At, Up.X);

    /// <summary>Where a point of the sheet has to be drawn.</summary>
    public Point FromSheet(Point point) => Up == Upright ? point : At + Turned(point - At, -Up.X);

    private Point Turned(Point by, double sine) => new((by.X * -Up.Y) - (by.Y * sine), (by.X * sine) - (by.Y * Up.Y));
}

/// <summary>Writes numbers with a fixed number of decimals, so that the same drawing has the same bytes on every machine.</summary>
internal static class Decimals
{
    /// <summary>A number in tenths of a pixel.</summary>
    public static string Of(double value)
    {
        var tenths = (long)Math.Round(value * 10, MidpointRounding.AwayFromZero);
        var sign = tenths < 0 ? "-" : string.Empty;
        tenths = Math.Abs(tenths);
        var whole = (tenths / 10).ToString(CultureInfo.InvariantCulture);
        return tenths % 10 == 0 ? sign + whole : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}.{tenths % 10}");
    }
}
