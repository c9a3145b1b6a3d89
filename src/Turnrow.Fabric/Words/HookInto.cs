namespace Turnrow.Fabric.Words;

/// <summary>Where the hook goes in a stitch.</summary>
public enum HookInto : byte
{
    /// <summary>Under both loops.</summary>
    BothLoops,

    /// <summary>Under the back loop.</summary>
    BackLoop,

    /// <summary>Under the front loop.</summary>
    FrontLoop,

    /// <summary>Round the post, from the front.</summary>
    FrontPost,

    /// <summary>Round the post, from the back.</summary>
    BackPost,

    /// <summary>A row further down than the row below: over the stitch, into what that one was worked into.</summary>
    OneDown,

    /// <summary>Two rows further down.</summary>
    TwoDown,

    /// <summary>Three rows further down.</summary>
    ThreeDown,
}

/// <summary>What follows from where the hook goes.</summary>
public static class HookPlaces
{
    /// <summary>True if the hook goes into a loop or round a post, which a stitch has and a space has not.</summary>
    public static bool NeedsStitch(this HookInto hook) => hook is HookInto.BackLoop or HookInto.FrontLoop or HookInto.FrontPost or HookInto.BackPost;

    /// <summary>How many rows further down than the row below the hook goes; 0 for none.</summary>
    public static int RowsDown(this HookInto hook) => hook < HookInto.OneDown ? 0 : hook - HookInto.OneDown + 1;
}
