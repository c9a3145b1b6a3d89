namespace Turnrow.Fabric.Words;

/// <summary>What a list of words is all of.</summary>
internal enum Within : byte
{
    /// <summary>A row.</summary>
    Row,

    /// <summary>What is repeated.</summary>
    Repeat,

    /// <summary>What is worked in one place.</summary>
    OnePlace,
}
