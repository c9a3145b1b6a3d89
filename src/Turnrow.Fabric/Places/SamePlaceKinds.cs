namespace Turnrow.Fabric.Places;

/// <summary>Compares places by what can be worked into them, however they came to be written down.</summary>
public static class SamePlaceKinds
{
    /// <summary>True if both are the same kinds of place in the same order; the chain that stands for a stitch is that stitch.</summary>
    public static bool Are(PlaceSequence one, PlaceSequence other)
    {
        if (one.Count != other.Count) return false;
        var (a, b) = (new PlaceCursor(one), new PlaceCursor(other));
        while (a.Remaining > 0)
        {
            var (here, there) = (a.CurrentRun(int.MaxValue), b.CurrentRun(int.MaxValue));
            if (here.Place.TakesStitches != there.Place.TakesStitches || here.Place.Stitch != there.Place.Stitch || here.Place.Chains != there.Place.Chains) return false;
            var both = Math.Min(here.Count, there.Count);
            a.Pass(both);
            b.Pass(both);
        }

        return true;
    }
}
