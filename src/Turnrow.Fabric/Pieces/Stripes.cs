namespace Turnrow.Fabric.Pieces;

/// <summary>So many rows of a yarn.</summary>
public readonly record struct Stripe(string Yarn, int Rows);

/// <summary>Yarns that take turns, so many rows each, over and over.</summary>
/// <param name="Order">The stripes of one time; they have at least one row.</param>
public sealed record Stripes(IReadOnlyList<Stripe> Order)
{
    /// <summary>Rows of one time.</summary>
    public int Rows { get; } = Order.Sum(static s => s.Rows);

    /// <summary>The yarn of a row, when so many rows were worked in stripes before it.</summary>
    public string YarnOf(int worked)
    {
        var row = worked % Rows;
        for (var i = 0; ; i++)
        {
            if (row < Order[i].Rows) return Order[i].Yarn;
            row -= Order[i].Rows;
        }
    }
}
