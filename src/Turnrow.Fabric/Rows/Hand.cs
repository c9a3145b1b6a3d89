namespace Turnrow.Fabric.Rows;

/// <summary>An edge of a piece held with its right side facing and its first row at the bottom.</summary>
public enum Hand : byte
{
    /// <summary>The right edge.</summary>
    Right,

    /// <summary>The left edge.</summary>
    Left,
}

/// <summary>What follows from the frame.</summary>
public static class Frame
{
    /// <summary>The other edge.</summary>
    public static Hand Opposite(this Hand hand) => hand == Hand.Right ? Hand.Left : Hand.Right;

    /// <summary>Where a row starts: a right-side row runs from the right edge to the left, a wrong-side row back.</summary>
    /// <param name="rightSide">Whether the right side faces.</param>
    /// <param name="isBack">True if it is worked back, from the maker's left to her right.</param>
    public static Hand StartOf(bool rightSide, bool isBack = false) => rightSide != isBack ? Hand.Right : Hand.Left;
}
