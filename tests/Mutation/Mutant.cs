namespace Turnrow.Mutation;

/// <summary>One change to the row model.</summary>
/// <param name="Id">Its number, which switches it on.</param>
/// <param name="File">The file, from the row model's folder.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="What">What is changed, on one line.</param>
/// <param name="AtStart">True if it stands in what is worked out once, when the program starts.</param>
internal sealed record Mutant(int Id, string File, int Line, int Column, string What, bool AtStart)
{
    /// <summary>What names the change from one run to the next, whatever its number has become.</summary>
    public string Key => $"{File}:{Line}:{Column}: {What}";
}
