using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Stitches;

/// <summary>How a stitch comes about, beyond the loops of the basic ones: what its explanation tells and its symbol shows.</summary>
public enum StitchMaking : byte
{
    /// <summary>A basic stitch, which needs no explanation.</summary>
    Basic,

    /// <summary>One more loop is drawn through before the rest.</summary>
    Extended,

    /// <summary>A loop out of the stitch beside it stands for a yarn over.</summary>
    Linked,

    /// <summary>Worked back from left to right.</summary>
    Reversed,

    /// <summary>A basic stitch that makes its own chain.</summary>
    Foundation,

    /// <summary>Several stitches end in one loop.</summary>
    Together,

    /// <summary>Long loops that end in one loop.</summary>
    Puff,

    /// <summary>Whole stitches drawn together at their tops.</summary>
    Popcorn,

    /// <summary>Chains closed into a knot on the stitch below.</summary>
    Picot,

    /// <summary>A chain on the stitch below, and stitches back along it.</summary>
    Spur,

    /// <summary>Words worked over places.</summary>
    Laid,
}

/// <summary>How the parts of a stitch that go back to places passed over lie to those worked since.</summary>
public enum Crossing : byte
{
    /// <summary>It is not said, as of a crossed double crochet, or nothing goes back.</summary>
    Unsaid,

    /// <summary>They are worked in front.</summary>
    InFront,

    /// <summary>They are worked behind.</summary>
    Behind,
}

/// <summary>A part of a stitch that is made of others: stitches in one place, or chains over the work.</summary>
/// <param name="Stitch">The stitch; null for chains.</param>
/// <param name="Hook">Where the hook goes.</param>
/// <param name="Count">How many stitches in the place, or how many chains.</param>
/// <param name="Place">The place that they go into, of those that the whole takes, from 0.</param>
public readonly record struct StitchPart(Stitch? Stitch, HookInto Hook, int Count, int Place)
{
    /// <summary>True of what stands on the part before it, as a picot does: it takes no place and makes none.</summary>
    public bool IsKnot => Stitch is { Takes: 0 };

    /// <summary>The stitch that goes into a place; null for chains and for what stands on the part before it.</summary>
    public Stitch? Worked => IsKnot ? null : Stitch;

    /// <summary>Places that it makes.</summary>
    public int Makes => IsKnot ? 0 : Stitch is null ? 1 : Count;
}

/// <summary>A stitch that is made of others: its parts in the order in which they are worked.</summary>
/// <param name="Parts">The parts; at least one.</param>
/// <param name="Takes">Places that it takes; 0 for what stands on the stitch before it.</param>
/// <param name="Together">True if all of it ends in one loop, so that it makes one place and is a stitch like any other.</param>
public sealed record StitchForm(IReadOnlyList<StitchPart> Parts, int Takes, bool Together)
{
    /// <summary>Which of the places made is meant by the stitch's name alone, if the designer said so; else below 0.</summary>
    public int Centre { get; init; } = -1;

    /// <summary>How the parts that go back lie to those that they pass.</summary>
    public Crossing Crossing { get; init; }

    /// <summary>True if a part goes back to a place that another passed over.</summary>
    public bool GoesBack
    {
        get
        {
            var last = 0;
            foreach (var part in Parts)
            {
                if (part.Worked is null) continue;
                if (part.Place < last) return true;
                last = part.Place;
            }

            return false;
        }
    }

    /// <summary>The words of its parts, in one place or over several; of a form that goes back, the order of its places is lost.</summary>
    public IReadOnlyList<Word> Words()
    {
        var words = new List<Word>(Parts.Count);
        var place = -1;
        foreach (var part in Parts)
        {
            if (part.Stitch is not { } stitch)
            {
                words.Add(new Chains(part.Count));
                continue;
            }

            if (part.IsKnot)
            {
                words.Add(new Work(stitch, 0, 1, Amount.Of(part.Count), Target.Next, part.Hook));
                continue;
            }

            if (Takes > 1 && part.Place > place + 1) words.Add(new Skip(part.Place - place - 1));
            var again = Takes > 1 && part.Place <= place;
            place = Math.Max(place, part.Place);
            words.Add(new Work(stitch, 1, part.Count, Amount.Once, again ? new Target(Aim.Same, PlaceFilter.AnyStitch) : Target.Next, part.Hook));
        }

        if (Takes > 1 && place < Takes - 1) words.Add(new Skip(Takes - 1 - place));
        return words;
    }

    /// <summary>The same read from its other end.</summary>
    public StitchForm Reversed() => this with
    {
        Parts = ReversedParts(),
        // What was worked last is worked first, and so what passed in front of it has to pass behind.
        Crossing = Crossing switch { Crossing.InFront => Crossing.Behind, Crossing.Behind => Crossing.InFront, _ => Crossing.Unsaid },
        Centre = Centre < 0 ? -1 : Places - 1 - Centre,
    };

    /// <summary>Places that it makes.</summary>
    public int Places => Together ? 1 : Parts.Sum(static part => part.Makes);

    /// <summary>True if it is worked alike from either end: the same parts in the same order, and the same place meant by its name.</summary>
    public bool IsSymmetric
    {
        get
        {
            if (Crossing != Crossing.Unsaid || (Centre >= 0 && Centre != Places - 1 - Centre)) return false;
            if (Parts[^1].IsKnot) return Parts.SequenceEqual(ReversedParts());
            for (var i = 0; i < Parts.Count; i++)
            {
                var (a, b) = (Parts[i], Parts[Parts.Count - 1 - i]);
                if (a.Count != b.Count || a.Stitch != (b.IsKnot ? b.Stitch : b.Stitch?.Mirrored) || (a.Worked is not null && (a.Hook != b.Hook || a.Place + b.Place != Math.Max(0, Takes - 1)))) return false;
            }

            return true;
        }
    }

    /// <inheritdoc/>
    public bool Equals(StitchForm? other) =>
        other is not null && Takes == other.Takes && Together == other.Together && Crossing == other.Crossing && Centre == other.Centre && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Takes, Together, Parts.Count);

    /// <summary>The places that a stitch of this form makes, each of them knowing which it is.</summary>
    internal PlaceSequence TopsOf(Stitch stitch)
    {
        var made = new List<Place>();
        foreach (var part in Parts)
        {
            if (part.Stitch is not { } top) made.Add(Place.SpaceOf(part.Count));
            else for (var i = 0; i < part.Makes; i++) made.Add(Place.TopOf(top));
        }

        var centre = Centre >= 0 ? Centre : MiddleOf(made);
        var builder = new PlaceSequenceBuilder(long.MaxValue);
        for (var i = 0; i < made.Count; i++) builder.Add(made[i] with { Part = PartOfStitch.At(stitch, made, i, centre) }, 1);
        return builder.Build();
    }

    // What stands between two stitches does so from either end, on the one that is worked first there; at the end it has its own alone.
    private List<StitchPart> ReversedParts()
    {
        var parts = new List<StitchPart>(Parts.Count);
        for (var i = Parts.Count - 1; i >= 0; i--)
        {
            var part = Parts[i];
            parts.Add(part.Worked is { } stitch ? part with { Stitch = stitch.Mirrored, Place = Math.Max(0, Takes - 1 - part.Place) } : part);
        }

        var knots = parts.TakeWhile(static part => part.IsKnot).ToList();
        if (knots.Count == 0) return parts;
        var bearer = parts[knots.Count];
        var rest = parts.Skip(knots.Count + 1);
        return bearer is { Stitch: not null, Count: > 1 }
            ? [bearer with { Count = 1 }, .. knots, bearer with { Count = bearer.Count - 1 }, .. rest]
            : [bearer, .. knots, .. rest];
    }

    // Its only space, or the middle one of an odd number of places.
    private static int MiddleOf(List<Place> made)
    {
        var spaces = made.Count(static p => p.Kind == PlaceKind.Space);
        if (spaces == 1) return made.FindIndex(static p => p.Kind == PlaceKind.Space);
        return made.Count % 2 != 0 ? made.Count / 2 : -1;
    }
}
