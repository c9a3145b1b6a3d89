using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Tests.Manual;

/// <summary>An example as it is compiled.</summary>
/// <param name="Text">The whole file, with the example's expectations taken out.</param>
/// <param name="FirstLine">The line of it, from 1, that the example begins at.</param>
internal sealed record FramedExample(string Text, int FirstLine);

/// <summary>
/// The lines that stand round an example that is no whole file. They are blocks of the contributors' page: <c>…</c> is where the example
/// goes, <c>COUNT</c> is what the example's own fence says behind the frame's name.
/// </summary>
internal sealed class ManualFrames
{
    public const string Page = "writing-the-manual.md";
    public const string FrameInfo = "turnrow frame ";
    private const string Notation = "turnrow";
    private const string Here = "…";
    private const string CountWord = "COUNT";

    private readonly IReadOnlyList<(string Name, IReadOnlyList<string> Lines)> _frames;

    private ManualFrames(IReadOnlyList<(string, IReadOnlyList<string>)> frames) => _frames = frames;

    /// <summary>Those of the contributors' page.</summary>
    public static ManualFrames All { get; } = new(
    [
        .. ManualPage.All.Single(page => page.Name == Page).Blocks
            .Where(block => block.Info.StartsWith(FrameInfo, StringComparison.Ordinal))
            .Select(block => (block.Info[FrameInfo.Length..], block.Lines))
            .OrderByDescending(frame => frame.Item1.Length),
    ]);

    /// <summary>Puts an example into the frame that its fence names.</summary>
    public FramedExample Frame(ManualBlock block)
    {
        var lines = block.Lines.Select(Expectation.TakenOut).ToList();
        var wanted = block.Info[Notation.Length..].Trim();
        if (wanted.Length == 0 || block.FileName is not null) return new FramedExample(Joined(lines), 1);
        foreach (var (name, frame) in _frames)
        {
            if (wanted != name && !wanted.StartsWith(name + " ", StringComparison.Ordinal)) continue;
            var at = frame.ToList().FindIndex(line => line.Trim() == Here);
            var count = wanted[name.Length..].Trim();
            return new FramedExample(Joined([.. frame.Take(at).Select(With), .. lines, .. frame.Skip(at + 1).Select(With)]), at + 1);

            string With(string line) => line.Replace(CountWord, count, StringComparison.Ordinal);
        }

        throw new InvalidDataException($"{block}: no frame is called `{wanted}`");
    }

    /// <summary>A text, compiled under a name.</summary>
    /// <param name="example">The text.</param>
    /// <param name="name">The name.</param>
    /// <param name="page">The page that it stands on: its other examples that have a file's name are the files beside it.</param>
    public static Compilation Compile(FramedExample example, string name = "example", ManualPage? page = null) =>
        Compilation.Of(new SourceText(name, example.Text), file => page?.Blocks.FirstOrDefault(block => block.FileName == file) is { } beside ? All.Frame(beside).Text : null);

    private static string Joined(IEnumerable<string> lines) => string.Join('\n', lines) + "\n";
}
