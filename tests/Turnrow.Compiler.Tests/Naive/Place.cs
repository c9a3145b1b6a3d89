namespace Turnrow.Compiler.Tests.Naive;

/// <summary>One single place a stitch can be worked into: a stitch's top, a space, or a chain.</summary>
public readonly record struct Place(string Kind)
{
    public const string Space = "sp";
    public const string Chain = "ch";
    public const string Ring = "ring";

    /// <summary>Whether a marker is in it.</summary>
    public bool IsCorner { get; init; }

    /// <summary>The stitch of the pattern's own whose name alone means this place; null for none.</summary>
    public string? CentreOf { get; init; }

    public bool IsSpace => Kind == Space;

    /// <summary>A chain is worked into, but nobody counts it before something is.</summary>
    public bool IsStitch => Kind is not (Space or Chain);

    /// <summary>A decrease is a stitch of its base kind: `dc2tog` is a dc.</summary>
    public string BaseStitch => BaseOf(Kind);

    public static string BaseOf(string kind) =>
        kind.EndsWith("tog", StringComparison.Ordinal) ? kind[..^"tog".Length].TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9') : kind;

    public static Place Together(string stitch, int over) => new($"{stitch}{over}tog");
}

/// <summary>Why a row cannot be worked as written; caught once a piece and size.</summary>
public class UnworkableException(string why) : Exception(why);

/// <summary>The row model does not say what is meant, so nothing is to be compared.</summary>
public sealed class UnclearException(string why) : UnworkableException(why);
