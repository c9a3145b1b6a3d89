using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>
/// Directions round a middle, in turns against the clock from straight up. Sines come from their series, added in one order, so that they are
/// the same to the last bit on every machine.
/// </summary>
internal static class Compass
{
    private const double Whole = 2 * Math.PI;
    private const int Terms = 9;

    /// <summary>The direction after a part of a turn, 1 long.</summary>
    public static Point Up(double turn)
    {
        var (sine, cosine) = SineAndCosine(turn);
        return new Point(-sine, -cosine);
    }

    /// <summary>The tangent of a part of a turn that is less than a quarter.</summary>
    public static double Tangent(double turn)
    {
        var (sine, cosine) = SineAndCosine(turn);
        return sine / cosine;
    }

    /// <summary>The part of a turn in [0, 1) that is left when whole turns are taken off.</summary>
    public static double Within(double turn) => turn - Math.Floor(turn);

    /// <summary>How far it is from one turn to another, the shorter way round; at most half a turn either way.</summary>
    public static double Between(double from, double to) => Within(to - from + 0.5) - 0.5;

    private static (double Sine, double Cosine) SineAndCosine(double turn)
    {
        turn = Within(turn);
        var quarter = (int)Math.Floor((turn * 4) + 0.5);
        var angle = (turn - (quarter / 4.0)) * Whole;
        var (sine, cosine) = (Series(angle, 1), Series(angle, 0));
        return (quarter % 4) switch
        {
            0 => (sine, cosine),
            1 => (cosine, -sine),
            2 => (-sine, -cosine),
            _ => (-cosine, sine),
        };
    }

    // Of an angle of at most an eighth of a turn.
    private static double Series(double angle, int power)
    {
        var term = power == 0 ? 1.0 : angle;
        var sum = term;
        for (var i = 0; i < Terms; i++)
        {
            power += 2;
            term = -term * angle * angle / (power * (power - 1));
            sum += term;
        }

        return sum;
    }
}
