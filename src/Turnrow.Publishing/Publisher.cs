using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;

namespace Turnrow.Publishing;

/// <summary>What is to be published.</summary>
/// <param name="Name">The files' name without an ending.</param>
/// <param name="Terms">The terms to write in.</param>
/// <param name="Size">Index of the size that charts are drawn for.</param>
public sealed record PublishOptions(string Name, Terms Terms, int Size);

/// <summary>A file to be written.</summary>
/// <param name="Name">Its name, without a folder.</param>
/// <param name="Text">Its whole text; line ends are \n.</param>
public sealed record PublishedFile(string Name, string Text);

/// <summary>Makes everything that is published of a pattern. It reads the row model and counts nothing itself.</summary>
public static class Publisher
{
    /// <summary>All files of a pattern.</summary>
    public static IReadOnlyList<PublishedFile> Publish(Pattern pattern, PublishOptions options) =>
        [new($"{options.Name}.md", WrittenInstructions.Write(pattern, options.Terms))];
}
