using Xunit;

namespace Turnrow.Publishing.Tests.Hostile;

/// <summary>Tests that watch time and memory: nothing else runs beside them.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
