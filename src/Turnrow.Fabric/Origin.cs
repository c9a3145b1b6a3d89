namespace Turnrow.Fabric;

/// <summary>
/// What a part of the model was made from: opaque here, a place in the source to whoever made it. Two origins are always
/// equal, so that rows which are worked alike are alike wherever they were written.
/// </summary>
/// <param name="value">Whatever the maker of the model wants back.</param>
public readonly struct Origin(object? value) : IEquatable<Origin>
{
    /// <summary>What it was made from.</summary>
    public object? Value { get; } = value;

    public static bool operator ==(Origin left, Origin right) => true;

    public static bool operator !=(Origin left, Origin right) => false;

    /// <inheritdoc/>
    public bool Equals(Origin other) => true;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Origin;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
