using System.Globalization;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts;

/// <summary>The charts of a pattern, a file a piece, in one size.</summary>
internal static class ChartBook
{
    /// <summary>The charts of the pieces that have rows in the size asked for, each by its file's name.</summary>
    public static IReadOnlyList<KeyValuePair<string, ChartFile>> Of(Pattern pattern, PublishOptions options)
    {
        var charts = new List<KeyValuePair<string, ChartFile>>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        IReadOnlyList<string> all = YarnsWorked.AreSeveral(pattern) ? [.. YarnsWorked.In(pattern).Select(static y => y.Name)] : [];
        foreach (var piece in pattern.Pieces)
        {
            // Of a piece in one yarn there is nothing to tell apart.
            var yarns = all.Count > 0 && YarnsWorked.AreSeveral(piece.InSizes) ? all : [];
            if (options.Size >= piece.InSizes.Count) continue;
            var size = options.Size < pattern.Sizes.Count ? pattern.Sizes[options.Size] : string.Empty;
            var name = Unused(Names.Filed(piece.Name), names);
            if (Chart.Of(piece.InSizes[options.Size], name, size, options.Terms, pattern.Counting, yarns) is { } chart) charts.Add(new($"{options.Name}.{name}.svg", chart));
        }

        foreach (var blanket in pattern.Blankets)
        {
            // Of the joined motifs the one that is joined most shows all that is new.
            if (options.Size >= blanket.InSizes.Count || blanket.InSizes[options.Size] is not { Joined: [.., var joined] }) continue;
            var size = options.Size < pattern.Sizes.Count ? pattern.Sizes[options.Size] : string.Empty;
            var title = $"{blanket.Motifs[joined.Kind]}-joined-to-{blanket.Name}";
            var name = Unused(Names.Filed(title), names);
            if (Chart.Of(joined.Piece with { Name = title }, name, size, options.Terms, pattern.Counting, YarnsWorked.AreSeveral([joined.Piece]) ? all : []) is { } chart) charts.Add(new($"{options.Name}.{name}.svg", chart));
            var map = Unused(Names.Filed(blanket.Name + "-layout"), names);
            charts.Add(new($"{options.Name}.{map}.svg", BlanketMap.Of(blanket.Name, blanket.Motifs, blanket.InSizes[options.Size]!.Layout, map, size)));
        }

        return charts;
    }

    // Names that differ only in what a file's name can't hold are told apart by a number.
    private static string Unused(string name, HashSet<string> names)
    {
        var unused = name;
        for (var i = 2; !names.Add(unused); i++) unused = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
        return unused;
    }
}
