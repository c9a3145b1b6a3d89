using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;

namespace Turnrow.Compiler.Grading;

/// <summary>The rules of fit. Where nobody publishes one it is the custom, and the message says so.</summary>
internal static class FitRules
{
    private const string Custom = "common practice, no published source";
    private const string LengthChart = "the published length chart, numbers from memory; how far off, common practice";
    private const string Reason = "what is smaller than what it goes over can't be put on";

    private static readonly FitFault Long = new("longer", "it hangs lower than it is called");
    private static readonly FitFault Short = new("shorter", "it ends higher than it is called");

    // A longer opening than needed is no fault of fit here, so that no rule of passing over has a greatest difference.
    private static readonly FitFault None = new("larger", string.Empty);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FitRule> All { get; } =
    [
        new(
            "armhole-depth", "armhole-depth", FitArmhole.Kind, Rational.Zero, Inches(3),
            "an armhole is 0 to 7.5 cm (3 in) deeper than the body's, an oversized garment's deeper", Custom,
            new("shallower", "it cuts in under the arm"), new("deeper", "the whole garment lifts with the arm"),
            "change the rows of the armhole"),
        new(
            "upper-arm", "upper-arm", FitUpperArm.Kind, Rational.Zero, Inches(6),
            "a sleeve is 0 to 15 cm (6 in) wider than the upper arm, an oversized garment's wider", Custom,
            new("narrower", "it does not go over the arm"), new("wider", "it hangs in folds under the arm"),
            "change the stitches of the sleeve at its widest, or say how far it stretches"),
        new(
            "wrist", "wrist", FitWrist.Kind, Rational.Zero, Inches(4),
            "a cuff is 0 to 10 cm (4 in) wider than the wrist, an oversized garment's wider", Custom,
            new("narrower", "it is tight"), new("wider", "it falls over the hand"),
            "change the stitches of the cuff, or say how far it stretches"),
        new(
            "wrist", "hand", FitWrist.Kind, Rational.Zero, null,
            "a cuff that does not open goes over the hand", Reason,
            new("narrower", "the hand does not go through"), None,
            "make the cuff wider, say how far it stretches, or that it opens: `finished wrist is …, opens`") { Passes = true },
        new(
            "cross-back", "cross-back", FitCrossBack.Kind, Rational.Zero - Inches(1) ?? Rational.Zero, Inches(2),
            "a back is 2.5 cm (1 in) narrower to 5 cm (2 in) wider between the armholes than the body's, an oversized garment's wider", Custom,
            new("narrower", "it pulls between the shoulders"), new("wider", "the armholes hang down the arms"),
            "change the stitches that the back has above the armholes"),
        new(
            "neck-opening", "head", FitNeck.Kind, Rational.Zero, null,
            "a neck that does not open goes over the head", Reason,
            new("narrower", "the head does not go through"), None,
            "make the neck wider or deeper, say how far it stretches, or that it opens: `finished neck-opening is …, opens`") { Passes = true },
        Length("back-waist-length", "a garment of waist length is within 5 cm (2 in) of the body's", LengthChart),
        Length("hip-length", "a garment of hip length is within 5 cm (2 in) of it", LengthChart),
        Length("tunic-length", "a tunic is within 5 cm (2 in) of its length", LengthChart),
        Length("back-hip-length", "a man's garment is within 5 cm (2 in) of the body's length from neck to hip", LengthChart),
        Length("length", "a garment is within 5 cm (2 in) of the length it is meant to have", Custom),
        Length("arm-length", "a long sleeve is within 5 cm (2 in) of the arm's length to the underarm", Custom),
        Length("centre-back-neck-to-wrist", "neck to cuff is within 5 cm (2 in) of neck to wrist", Custom),
    ];

    /// <summary>The body's measure that a finished one has to go over; null for none.</summary>
    public static string? PassesOver(string measure)
    {
        foreach (var rule in All)
        {
            if (rule.Passes && string.Equals(rule.Measure, measure, StringComparison.OrdinalIgnoreCase)) return rule.Body;
        }

        return null;
    }

    /// <summary>True for a measure along the body, of which a difference is a matter of style and no ease.</summary>
    public static bool IsAlong(string measure)
    {
        foreach (var rule in All)
        {
            if (rule.Kind == FitLength.Kind && string.Equals(rule.Measure, measure, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    private static FitRule Length(string measure, string says, string source) =>
        new(measure, measure, FitLength.Kind, Rational.Zero - Inches(2) ?? Rational.Zero, Inches(2), says, source, Short, Long, "change the rows, or the name of the length");

    private static Rational Inches(int inches) => Rational.Of(254 * inches, 100) ?? Rational.Zero;
}
