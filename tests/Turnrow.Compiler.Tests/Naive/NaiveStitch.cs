namespace Turnrow.Compiler.Tests.Naive;

/// <summary>A stitch that the pattern defines: what its line says, and what it comes to, place by place.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">What stands behind `is`.</param>
/// <param name="Takes">Places that it takes.</param>
/// <param name="Makes">What it makes, in order: stitches, or spaces. A single one of its own name ends in one loop.</param>
public sealed record NaiveStitch(string Name, string Text, int Takes, IReadOnlyList<string> Makes)
{
    public int Stitches => Makes.Count(kind => kind != Place.Space);

    /// <summary>Which of the places made is meant by the name alone: its only space, or the middle one; below 0 for none.</summary>
    public int Centre => Makes.Count(kind => kind == Place.Space) == 1 ? Makes.ToList().IndexOf(Place.Space) : Makes.Count % 2 == 1 ? Makes.Count / 2 : -1;
}

/// <summary>`shell`, `shell 3`: one after the other into the next places.</summary>
public sealed record Special(NaiveStitch Stitch, Sized Count) : Word;
