using Turnrow.Fabric.Numbers;

namespace Turnrow.Publishing.Trade;

/// <summary>US names of hook sizes. Millimetres are the reference, names differ by maker: only sizes with one name are given.</summary>
internal static class HookSizes
{
    private static readonly (int Hundredths, string Name)[] Table =
    [
        (225, "B-1"), (275, "C-2"), (325, "D-3"), (350, "E-4"), (375, "F-5"), (400, "G-6"), (425, "G"), (450, "7"), (500, "H-8"),
        (550, "I-9"), (600, "J-10"), (650, "K-10 1/2"), (800, "L-11"), (900, "M/N-13"), (1000, "N/P-15"), (1150, "P-16"),
    ];

    /// <summary>The US name; null if the size has none.</summary>
    public static string? UsName(Rational millimetres)
    {
        foreach (var (hundredths, name) in Table)
        {
            if (millimetres == Rational.Of(hundredths, 100)) return name;
        }

        return null;
    }
}
