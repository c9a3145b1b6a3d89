namespace Turnrow.Publishing.Tests.Reader;

/// <content>What stands in parentheses and goes into one place.</content>
internal sealed partial class RowSentence
{
    private WorkGroup Group()
    {
        var inside = new GroupRead();
        ReadInside(inside);
        Expect(")");
        return new WorkGroup(inside.Parts, In()) { MarkerBehind = inside.Marker, Specials = inside.Specials, Joins = inside.Joins, GoesOnSpace = inside.GoesOnSpace };
    }

    private void ReadInside(GroupRead inside)
    {
        do
        {
            if (Accept("["))
            {
                // `[dc, ch 1] 4 times`: the same again, in the same place.
                var once = new GroupRead();
                ReadInside(once);
                Expect("]");
                var times = Count();
                Expect("times");
                for (var time = 0; time < times; time++) inside.Add(once);
            }
            else if (Accept("place"))
            {
                _ = PutMarker();
                inside.Marker = inside.Parts.Count - 1;
            }
            else if (Beside() is { } beside)
            {
                inside.Joins.AddRange(beside is RepeatSteps several ? Enumerable.Repeat((JoinBeside)several.Steps[0], several.Times) : [(JoinBeside)beside]);
                inside.Joined = true;
            }
            else if (Accept("ch"))
            {
                inside.AddChains(Count());
            }
            else
            {
                OneInside(inside);
            }
        }
        while (Accept(","));
    }

    private void OneInside(GroupRead inside)
    {
        inside.Joined = false;
        var count = Number.TryOf(Peek) is { } number ? Next(number) : 1;
        if (Special() is not { } special)
        {
            inside.Parts.Add((count, Stitch()));
        }
        else if (!special.IsNothing)
        {
            inside.Specials[inside.Parts.Count] = special;
            inside.Parts.Add((count, special.Name));
        }

        LoopAlone();
    }

    // `dc in back loop only`, of a stitch whose place is named behind the parentheses.
    private void LoopAlone()
    {
        if (Peek != "in" || _at + 1 >= _words.Count || _words[_at + 1] is not ("back" or "front")) return;
        _at += 2;
        _ = Said(0, "loop only");
    }

    private sealed class GroupRead
    {
        public List<(int Count, string? Stitch)> Parts { get; } = [];

        public Dictionary<int, SpecialStitch> Specials { get; } = [];

        public List<JoinBeside> Joins { get; } = [];

        public int Marker { get; set; } = -1;

        public bool Joined { get; set; }

        /// <summary>True if its first chains stand behind a stitch into another piece: those before may be the ch that the round began with.</summary>
        public bool GoesOnSpace { get; private set; }

        public void AddChains(int count)
        {
            // Chains on both sides of a stitch into another piece are one space.
            GoesOnSpace |= Joined && Parts.Count == 0;
            if (Joined && Parts is [.., (var before, null)]) Parts[^1] = (before + count, null);
            else Parts.Add((count, null));
            Joined = false;
        }

        public void Add(GroupRead once)
        {
            foreach (var (at, special) in once.Specials) Specials[Parts.Count + at] = special;
            if (once.Marker >= 0) Marker = Parts.Count + once.Marker;
            Parts.AddRange(once.Parts);
            Joins.AddRange(once.Joins);
            Joined = once.Joined;
        }
    }
}
