namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up rows with spaces, and rows worked over them, each way a row may say its places.</summary>
public sealed class MeshMaker(ChoiceTape tape, string stitch)
{
    /// <summary>`dc, (ch 1, skip 1, dc) across`, with what does not fit in plain stitches before it.</summary>
    public bool Mesh(Sketch sketch)
    {
        var skipped = tape.Between(1, 3);
        if (sketch.Narrowest < skipped + 2)
            return false;
        var lead = sketch.Widths.Select(width => 1 + (width - 1) % (skipped + 1)).ToArray();
        var spaces = sketch.Widths.Select((width, size) => (width - lead[size]) / (skipped + 1)).ToArray();
        var mesh = Repeat.Across(new Space(skipped), new Skip(skipped), One);
        sketch.Statements.Add(RowLineMaker.Line(tape, sketch, [new Each(stitch, new Sized(lead)), mesh]));
        sketch.Widths = sketch.Widths.Select((_, size) => lead[size] + spaces[size]).ToArray();
        // The next row comes back from the other end.
        sketch.Mesh = (sketch.Widths.Select(_ => 1).ToArray(), spaces, 1, lead);
        (sketch.Ground, sketch.PlainStitch) = (Ground.Mesh, null);
        return true;
    }

    public void OverMesh(Sketch sketch)
    {
        Action<Sketch>[] kinds = [EachStitchAndSpace, EachStitch, IntoSpaces, EachSpace, SpaceAndStitch, MoreMesh, Fans, ByKind];
        tape.Of(kinds)(sketch);
        sketch.AddRows(_ => 1);
    }

    public void EachStitchAndSpace(Sketch sketch) =>
        Put(sketch, size => sketch.Widths[size] + sketch.Mesh.Spaces[size], new InEach(stitch, EachOf.StitchAndSpace));

    private void ByKind(Sketch sketch)
    {
        var many = tape.Between(1, 3);
        Put(sketch, size => sketch.Widths[size] + many * sketch.Mesh.Spaces[size], new EachByKind(stitch, many));
    }

    private Word One => new Each(stitch, 1);

    private void EachStitch(Sketch sketch) => Put(sketch, size => sketch.Widths[size], new InEach(stitch, EachOf.Stitch));

    private void IntoSpaces(Sketch sketch)
    {
        var (lead, spaces, _, tail) = sketch.Mesh;
        var many = tape.Between(1, 3);
        var into = new Into(many, stitch, Target.NextSpace);
        var repeat = tape.OneIn(2) ? Repeat.Until(new Sized(tail), into) : Repeat.Times(new Sized(spaces), into);
        Put(sketch, size => lead[size] + many * spaces[size] + tail[size], Lead(lead), repeat, Lead(tail));
    }

    private void EachSpace(Sketch sketch)
    {
        var (lead, spaces, _, tail) = sketch.Mesh;
        Put(sketch, size => lead[size] + spaces[size] + tail[size], Lead(lead), new InEach(stitch, EachOf.Space), Lead(tail));
    }

    private void SpaceAndStitch(Sketch sketch)
    {
        var (lead, spaces, gap, tail) = sketch.Mesh;
        var into = new Into(1, stitch, Target.NextSpace);
        var repeat = Repeat.Times(sketch.For(size => spaces[size] - 1), into, new Each(stitch, gap));
        if (spaces.Min() < 2)
            EachStitchAndSpace(sketch);
        else
            Put(sketch, size => sketch.Widths[size] + spaces[size], Lead(lead), repeat, into, Lead(tail));
    }

    /// <summary>A stitch in each space and a space on either side of it.</summary>
    private void MoreMesh(Sketch sketch)
    {
        var (lead, spaces, _, tail) = sketch.Mesh;
        var into = new Into(1, stitch, Target.NextSpace);
        // The chains behind one of them and before the next are one space.
        Word[] words = tape.Below(3) switch
        {
            0 => [Repeat.Times(new Sized(spaces), new Space(1), into, new Space(tape.Between(1, 2)))],
            1 => [Repeat.Times(new Sized(spaces), new Space(1), new Space(2), into), new Space(1), new Space(1)],
            _ => [Repeat.Times(new Sized(spaces), new Space(2), into), new Space(1)],
        };
        Put(sketch, size => lead[size] + spaces[size] + tail[size], [Lead(lead), .. words, Lead(tail)]);
        sketch.Mesh = (tail, spaces.Select(n => n + 1).ToArray(), 1, lead);
        sketch.Ground = Ground.Mesh;
    }

    private void Fans(Sketch sketch)
    {
        var (lead, spaces, _, tail) = sketch.Mesh;
        if (spaces.Max() > 12)
        {
            EachStitch(sketch);
            return;
        }
        if (tape.OneIn(2))
        {
            Combs(sketch);
            return;
        }
        var two = new Into(2, stitch, Target.Next);
        var fan = new Group([two, new Space(2), two], Target.NextSpace);
        Put(sketch, size => lead[size] + 4 * spaces[size] + tail[size], Lead(lead), Repeat.Times(new Sized(spaces), fan), Lead(tail));
        sketch.Mesh = (tail.Select(n => n + 2).ToArray(), spaces, 4, lead.Select(n => n + 2).ToArray());
        sketch.Ground = Ground.Mesh;
    }

    /// <summary>`((dc, ch 1) 3 times, dc) in next sp`, as often as the size says, and a row over all of it.</summary>
    private void Combs(Sketch sketch)
    {
        var (lead, spaces, _, tail) = sketch.Mesh;
        var (many, times) = (tape.Between(1, 2), new Sized(tape.Sizes(sketch.Sizes, 1, _ => 4)));
        var some = new Into(many, stitch, Target.Next);
        var comb = new Group([Repeat.Times(times, some, new Space(tape.Between(1, 3))), some], Target.NextSpace);
        Put(sketch, size => lead[size] + tail[size] + spaces[size] * (many + times[size] * (many + 1)), Lead(lead), Repeat.Times(new Sized(spaces), comb), Lead(tail));
        sketch.AddRows(_ => 1);
        Put(sketch, size => sketch.Widths[size], new InEach(stitch, EachOf.StitchAndSpace));
    }

    private Each Lead(int[] stitches) => new(stitch, new Sized(stitches));

    private void Put(Sketch sketch, Func<int, int> width, params Word[] words)
    {
        sketch.Statements.Add(RowLineMaker.Line(tape, sketch, words));
        sketch.Widths = Enumerable.Range(0, sketch.Sizes).Select(width).ToArray();
        (sketch.Ground, sketch.PlainStitch) = (Ground.Changed, null);
    }
}
