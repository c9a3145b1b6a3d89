using Turnrow.Fabric.Patterns;

namespace Turnrow.Publishing.Trade;

/// <summary>A caution of the trade, and what gives cause for it.</summary>
/// <param name="Wearers">Whom it is about.</param>
/// <param name="Words">Words of which one gives cause.</param>
/// <param name="InTitle">True if the title is looked at as well as pieces and notions.</param>
/// <param name="Text">The caution; <c>{0}</c> is the wearer.</param>
/// <param name="Source">Who says so.</param>
internal sealed record Caution(IReadOnlyList<Wearer> Wearers, IReadOnlyList<string> Words, bool InTitle, string Text, string Source)
{
    /// <summary>Words that take the cause away again where they stand beside it.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>True if the pattern gives cause.</summary>
    public bool Concerns(Pattern pattern)
    {
        if (!Wearers.Contains(pattern.Wearer)) return false;
        if (InTitle && Says(pattern.Title)) return true;
        return pattern.Pieces.Any(piece => Says(piece.Name)) || pattern.Notions.Any(Says);
    }

    private bool Says(string text)
    {
        var words = text.Split([' ', ',', '-', '.', ';', ':', '(', ')', '/'], StringSplitOptions.RemoveEmptyEntries);
        return words.Any(word => Words.Contains(word, StringComparer.OrdinalIgnoreCase)) && !words.Any(word => Without.Contains(word, StringComparer.OrdinalIgnoreCase));
    }
}

/// <summary>The usual cautions for what children and babies wear and use. Local rules differ, and they decide.</summary>
internal static class Cautions
{
    private static readonly Wearer[] Young = [Wearer.Child, Wearer.Baby];

    /// <summary>All of them, in the order of print.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        new(
            Young,
            ["tie", "ties", "cord", "cords", "drawstring", "drawstrings", "string", "strings", "strap", "straps", "ribbon", "ribbons", "lace", "laces", "halter"],
            false,
            "Cords and ties can catch, and can strangle a {0}. Put none at the hood or the neck, and none that ties at the back; elsewhere keep their free ends short, without knots or toggles.",
            "in the USA ASTM F1816: none at hood and neck, at waist and hem no more than 3 in outside; in Europe EN 14682: none at hood and neck up to 7 years, at waist and hem no more than 14 cm free"),
        new(
            Young,
            [
                "button", "buttons", "bead", "beads", "snap", "snaps", "popper", "poppers", "toggle", "toggles", "eye", "eyes", "bell", "bells",
                "pompom", "pompoms", "sequin", "sequins", "stud", "studs", "rhinestone", "rhinestones",
            ],
            false,
            "Small parts can come off and choke a {0}. For children under three leave them out, and embroider instead; fasten all others firmly and check them often.",
            "in the USA 16 CFR 1501, small parts for children under three; in Europe EN 71-1")
        {
            // Thread for eyes is no eye.
            Without = ["embroidery", "embroidered", "embroider", "thread"],
        },
        new(
            [Wearer.Baby],
            ["blanket", "blankets", "afghan", "afghans", "throw", "coverlet", "quilt", "pillow", "cushion"],
            true,
            "Nothing loose and soft belongs where a baby sleeps: lay no blanket there in the first twelve months, and let a baby lie on it or under it only while somebody watches.",
            "the advice of pediatricians in the USA on safe sleep; some say eighteen months"),
        new(
            Young,
            ["toy", "toys", "doll", "dolls", "teddy", "rattle", "softie", "stuffing", "toy-stuffing", "filling", "amigurumi"],
            true,
            "A soft toy is taken to be for children under three, whatever its label says: embroider the face, sew every part on so that it can't be pulled off, close all seams, and keep it out of the bed that a baby sleeps in.",
            "in the USA ASTM F963; in Europe EN 71 and the toy safety directive"),
    ];
}
