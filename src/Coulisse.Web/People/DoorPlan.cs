using Coulisse.Store;

namespace Coulisse.Web.People;

/// <summary>Who may read and who may write behind which address. What is not named is read by all who are signed in and written by the chef.</summary>
internal static class DoorPlan
{
    [Flags]
    internal enum Who
    {
        Nobody = 0,
        Owner = 1,
        Chef = 2,
        Helper = 4,
        Buyer = 8,
        Auditor = 16,
        Kitchen = Owner | Chef,
        All = Owner | Chef | Helper | Buyer | Auditor,
    }

    private sealed record Door(string Beginning, Who Read, Who Write);

    // The first that fits counts.
    private static readonly Door[] Doors =
    [
        new("/people", Who.Owner, Who.Owner),
        new("/audit", Who.Owner | Who.Auditor, Who.Nobody),
        new("/me", Who.All, Who.All),
        new("/sign-out", Who.All, Who.All),
        // what only works something out and keeps nothing
        new("/api/margins", Who.All, Who.All),
        new("/api/answer", Who.All, Who.All),
        new("/prices", Who.Kitchen | Who.Buyer | Who.Auditor, Who.Kitchen | Who.Buyer),
        new("/kitchen/prices", Who.Kitchen | Who.Buyer | Who.Auditor, Who.Kitchen | Who.Buyer),
        new("/cost", Who.Kitchen | Who.Buyer | Who.Auditor, Who.Kitchen),
        new("/orders", Who.Kitchen | Who.Buyer | Who.Auditor, Who.Kitchen | Who.Buyer),
        new("/api/live", Who.All, Who.Kitchen | Who.Helper),
        new("/control-log/keep", Who.Nobody, Who.Kitchen),
        new("/control-log", Who.All, Who.Kitchen | Who.Helper),
        new("/trials", Who.All, Who.Kitchen | Who.Helper),
        new("/records", Who.Kitchen | Who.Helper | Who.Auditor, Who.Kitchen | Who.Helper),
        new("/export", Who.Owner | Who.Chef | Who.Auditor, Who.Nobody),
        new("/backup", Who.Owner, Who.Owner),
    ];

    /// <summary>Reached without signing in: what the browser needs to show the door itself, and health.</summary>
    private static readonly string[] Open = ["/a", "/healthz", "/readyz", "/sign-in", "/owner", "/join", "/" + Hosting.OwnCertificate.RootFile];

    /// <summary>Addresses a link may open in place of a person; the page behind checks the link.</summary>
    private static readonly string[] ByLink = ["/live", "/api/live"];

    public static bool IsOpen(PathString path) => Array.Exists(Open, o => path.StartsWithSegments(o, StringComparison.OrdinalIgnoreCase));

    public static bool MayCarryLink(PathString path) => Array.Exists(ByLink, o => path.StartsWithSegments(o, StringComparison.OrdinalIgnoreCase));

    public static bool May(Who who, bool writes, PathString path)
    {
        Door? door = Array.Find(Doors, d => path.StartsWithSegments(d.Beginning, StringComparison.OrdinalIgnoreCase));
        Who may = door is null ? (writes ? Who.Kitchen : Who.All) : writes ? door.Write : door.Read;
        return (may & who) != Who.Nobody;
    }

    public static Who Of(string role, bool owner) => (owner ? Who.Owner : Who.Nobody) | role switch
    {
        PersonRole.Chef => Who.Chef,
        PersonRole.Helper => Who.Helper,
        PersonRole.Buyer => Who.Buyer,
        PersonRole.Auditor => Who.Auditor,
        _ => Who.Nobody,
    };
}
