using Microsoft.CodeAnalysis;

namespace Turnrow.Mutation;

/// <summary>A way to change one piece of syntax.</summary>
/// <param name="Node">What is changed.</param>
/// <param name="What">The change in words: what it was, and what it becomes.</param>
/// <param name="With">
/// Makes the text that behaves as before, or as changed where the switch is on, of the switch and of the node's own text, in which
/// smaller parts may have switches of their own.
/// </param>
internal sealed record Change(SyntaxNode Node, string What, Func<string, string, string> With);
