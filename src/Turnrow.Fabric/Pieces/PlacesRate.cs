namespace Turnrow.Fabric.Pieces;

/// <summary>
/// How a rate falls on single places: in rounds of as few places as it comes out over, the larger numbers first, since yarn is joined in the
/// first place and something is worked there.
/// </summary>
public readonly record struct PlacesRate
{
    private PlacesRate(int stitches, int places) => (Stitches, Places) = (stitches, places);

    /// <summary>So many stitches …</summary>
    public int Stitches { get; }

    /// <summary>… in so many places, which are a round.</summary>
    public int Places { get; }

    /// <summary>The rate in lowest terms.</summary>
    public static PlacesRate Of(int stitches, int places)
    {
        var (a, b) = (stitches, places);
        while (b != 0) (a, b) = (b, a % b);
        return a == 0 ? new(stitches, Math.Max(1, places)) : new(stitches / a, places / a);
    }

    /// <summary>The stitches in one place of a round.</summary>
    public int In(int place) => (Stitches / Places) + (place < Stitches % Places ? 1 : 0);

    /// <summary>The stitches in the first so many places, however many rounds they are.</summary>
    public long UpTo(long places) =>
        (places / Places * Stitches) + (places % Places * (Stitches / Places)) + Math.Min(places % Places, Stitches % Places);
}
