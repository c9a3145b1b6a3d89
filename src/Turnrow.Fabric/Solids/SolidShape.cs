namespace Turnrow.Fabric.Solids;

/// <summary>The second measure of a body, beside how wide it is.</summary>
public enum SolidMeasure : byte
{
    /// <summary>It has none: its width says all.</summary>
    None,

    /// <summary>How high it stands.</summary>
    High,

    /// <summary>How thick it is.</summary>
    Thick,
}

/// <summary>A body of revolution that can be worked round by round.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Measure">The measure that it needs beside its width.</param>
/// <param name="FromPole">True if it begins at a point on the axis, false if its first round has a width.</param>
/// <param name="Between">What the second measure may be for a width of 1: at least, and at most.</param>
/// <param name="Points">Points of its meridian for a width and a second measure.</param>
public sealed record SolidShape(
    string Name,
    SolidMeasure Measure,
    bool FromPole,
    (double Least, double Most) Between,
    Func<double, double, IReadOnlyList<(double Radius, double Height)>> Points)
{
    // So fine that no count of any size a person makes is another one.
    private const int Steps = 720;

    /// <summary>The bodies there are.</summary>
    public static IReadOnlyList<SolidShape> All { get; } =
    [
        new("sphere", SolidMeasure.None, true, default, static (across, _) => Arc(across / 2, across / 2, 0, Math.PI)),
        new("dome", SolidMeasure.None, true, default, static (across, _) => Arc(across / 2, across / 2, 0, Math.PI / 2)),
        new("egg", SolidMeasure.High, true, (1, double.PositiveInfinity), static (across, high) =>
            [.. Arc(across / 2, across / 2, 0, Math.PI / 2), .. Arc(across / 2, high - (across / 2), Math.PI / 2, Math.PI).Skip(1)]),
        new("cone", SolidMeasure.High, true, (0, double.PositiveInfinity), static (across, high) => [(0, 0), (across / 2, high)]),
        new("cylinder", SolidMeasure.High, true, (0, double.PositiveInfinity), static (across, high) => [(0, 0), (across / 2, 0), (across / 2, high)]),
        new("ring", SolidMeasure.Thick, false, (0, 0.5), static (across, thick) => Tube(across, thick)),
    ];

    /// <summary>The body that has this name; null for none.</summary>
    public static SolidShape? Find(string name)
    {
        foreach (var shape in All)
        {
            if (string.Equals(shape.Name, name, StringComparison.OrdinalIgnoreCase)) return shape;
        }

        return null;
    }

    /// <summary>Its meridian.</summary>
    /// <param name="across">Its width in centimetres, where it is widest.</param>
    /// <param name="other">Its height or thickness; without meaning where it has none.</param>
    /// <param name="closed">True if a body that is open at its top is closed there.</param>
    public Meridian MeridianOf(double across, double other, bool closed)
    {
        var points = Points(across, other);
        return Meridian.Through(closed && points[^1].Radius > 0 && FromPole ? [.. points, (0, points[^1].Height)] : points);
    }

    // Part of an ellipse about the axis, by the angle from its lower pole.
    private static List<(double Radius, double Height)> Arc(double wide, double high, double from, double to)
    {
        var points = new List<(double, double)>(Steps + 1);
        for (var i = 0; i <= Steps; i++)
        {
            var angle = from + ((to - from) * i / Steps);
            points.Add((wide * Sin(angle), -high * Cos(angle)));
        }

        return points;
    }

    // Round the tube of a ring, from its inner side over its foot and its outer side back.
    private static List<(double Radius, double Height)> Tube(double across, double thick)
    {
        var (middle, tube) = ((across - thick) / 2, thick / 2);
        var points = new List<(double, double)>((2 * Steps) + 1);
        for (var i = 0; i <= 2 * Steps; i++)
        {
            var angle = Math.PI * i / Steps;
            points.Add((middle - (tube * Cos(angle)), -tube * Sin(angle)));
        }

        return points;
    }

    // To fixed decimals, so that the last bits, which differ between machines, decide nothing.
#pragma warning disable RS0030
    private static double Sin(double angle) => Math.Round(Math.Sin(angle), 9);

    private static double Cos(double angle) => Math.Round(Math.Cos(angle), 9);
#pragma warning restore RS0030
}
