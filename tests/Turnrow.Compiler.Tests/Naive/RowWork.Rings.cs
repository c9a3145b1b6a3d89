namespace Turnrow.Compiler.Tests.Naive;

/// <content>A ring, which all words of its row go into.</content>
public sealed partial class RowWork
{
    private void IntoTheRing(IntoRing ring)
    {
        if (below is not [{ Kind: Place.Ring }])
            throw new UnworkableException("there is no ring");
        _at = 1;
        Many(ring.Times, () =>
        {
            foreach (var word in ring.Words)
            {
                switch (word)
                {
                    case Into into: Many(into.Count, () => Make(into.Stitch)); break;
                    case MarkCorner: Mark(); break;
                    default: Chain(); break;
                }
            }
        });
    }
}
