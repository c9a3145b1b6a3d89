namespace Turnrow.Publishing.Charts.Layout;

/// <summary>A part of a row that is all of one kind.</summary>
/// <param name="Columns">Its columns in working order.</param>
/// <param name="Tops">Places it makes.</param>
/// <param name="Plain">Of plain stitches side by side, the first; else null.</param>
/// <param name="Unit">Of a repeat, the columns of one time.</param>
internal readonly record struct Section(Columns Columns, int Tops, PlacedCell? Plain, int Unit = 0)
{
    /// <summary>Of plain stitches, the last.</summary>
    public PlacedCell LastPlain => Plain!.Value with
    {
        Place = Plain.Value.Place + Tops - 1,
        Top = Plain.Value.Top + Tops - 1,
        Column = Plain.Value.Column + Tops - 1,
    };
}

/// <summary>Takes a row apart into what is plain and what is not, as far as it stays short.</summary>
internal static class Sections
{
    // A repeat that comes so often over so many columns is one pattern; anything shorter is worth seeing in its parts.
    private const int PatternTimes = 4;
    private const int PatternColumns = 24;

    /// <summary>The sections of a row in working order.</summary>
    public static IReadOnlyList<Section> Of(Strip strip)
    {
        var sections = new List<Section>();
        Add(strip.Root, default, sections);
        return sections;
    }

    private static void Add(StripNode node, ChildStart at, List<Section> sections)
    {
        var columns = new Columns(at.Column, at.Column + node.Columns);
        switch (node)
        {
            case Cell { IsPlain: true } cell:
                sections.Add(new Section(columns, 1, new PlacedCell(cell, at.Place, at.Top, at.Column)));
                break;
            case Loop { IsPlain: true } plain:
                sections.Add(new Section(columns, plain.Tops, new PlacedCell((Cell)plain.Children[0], at.Place, at.Top, at.Column)));
                break;
            case Loop { Times: < PatternTimes } or Loop { Columns: < PatternColumns }:
                AddTimes((Loop)node, at, sections);
                break;
            default:
                sections.Add(new Section(columns, node.Tops, null, node is Loop pattern ? pattern.Unit.Column : 0));
                break;
        }
    }

    private static void AddTimes(Loop loop, ChildStart at, List<Section> sections)
    {
        for (var time = 0; time < loop.Times; time++)
        {
            for (var i = 0; i < loop.Children.Count; i++)
            {
                var start = loop.Starts[i];
                Add(
                    loop.Children[i],
                    new ChildStart(
                        at.Place + (time * loop.Unit.Place) + start.Place,
                        at.Top + (time * loop.Unit.Top) + start.Top,
                        at.Column + (time * loop.Unit.Column) + start.Column),
                    sections);
            }
        }
    }
}
