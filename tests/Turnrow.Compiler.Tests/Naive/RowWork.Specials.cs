namespace Turnrow.Compiler.Tests.Naive;

/// <content>Stitches that the pattern defines.</content>
public sealed partial class RowWork
{
    private void WorkSpecial(NaiveStitch stitch)
    {
        if (stitch.Takes == 1)
        {
            Carry(() => MakeSpecial(stitch));
            return;
        }
        var corners = below.Skip(_at).Take(stitch.Takes).Any(place => place.IsCorner) && !_removes;
        MakeSpecial(stitch);
        if (corners)
            throw new UnworkableException("a corner is among the places of a stitch that takes several");
    }

    private void MakeSpecial(NaiveStitch stitch)
    {
        Many(stitch.Takes, TakeStitch);
        for (var i = 0; i < stitch.Makes.Count; i++)
            _made.Add(new Place(stitch.Makes[i]) { CentreOf = i == stitch.Centre ? stitch.Name : null });
    }
}
