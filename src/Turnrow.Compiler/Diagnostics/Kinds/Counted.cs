using System.Globalization;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Numbers with their words, as one says them: "1 stitch", "2 stitches".</summary>
internal static class Counted
{
    public static string Stitches(long count) => Of(count, "stitch", "stitches");

    public static string Rows(long count) => Of(count, "row", "rows");

    public static string Rounds(long count) => Of(count, "round", "rounds");

    public static string Places(long count) => Of(count, "place", "places");

    public static string Spaces(long count) => Of(count, "space", "spaces");

    public static string Times(long count) => Of(count, "time", "times");

    public static string Numbers(long count) => Of(count, "number", "numbers");

    public static string Sizes(long count) => Of(count, "size", "sizes");

    /// <summary>The number alone.</summary>
    public static string Plain(long count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Of(long count, string one, string many) => $"{Plain(count)} {(count == 1 ? one : many)}";
}
