using System.Collections.Immutable;

namespace Coulisse.Store;

/// <summary>Kinds of documents kept by version.</summary>
public static class DocumentKind
{
    public const string Card = "card";
    public const string Occasion = "occasion";
    public const string Prices = "prices";
    public const string Kitchen = "kitchen";
    public const string Trial = "trial";
    public const string Record = "record";
    public const string Foods = "food";
    public const string Translation = "translation";

    /// <summary>All kinds, what others refer to first.</summary>
    public static readonly string[] All = [Card, Occasion, Prices, Kitchen, Trial, Record, Foods, Translation];
}

/// <summary>A document's newest version.</summary>
public sealed record Document(string Id, string Kind, string Title, int Version, string Text, string Who, string Why, DateTimeOffset Saved);

/// <summary>A document in a list.</summary>
public sealed record DocumentHead(string Id, string Kind, string Title, int Version, DateTimeOffset Changed);

/// <summary>One version of a document.</summary>
public sealed record DocumentVersion(string Id, int Version, string Text, string Who, string Why, DateTimeOffset Saved, string Hash);

/// <summary>What became of a save.</summary>
public abstract record SaveOutcome
{
    private SaveOutcome()
    {
    }

    /// <summary>Kept as a new version, or equal to the newest and not kept twice.</summary>
    public sealed record Saved(string Id, int Version) : SaveOutcome;

    /// <summary>Somebody else saved in between: both texts are kept, the newer is here.</summary>
    /// <param name="Id">Document.</param>
    /// <param name="KeptAs">Version under which the writer's own text was kept.</param>
    /// <param name="Theirs">What the other wrote.</param>
    public sealed record Conflict(string Id, int KeptAs, DocumentVersion Theirs) : SaveOutcome;
}

/// <summary>A kept plan.</summary>
public sealed record KeptPlan(string Id, string OccasionId, int OccasionVersion, DateTimeOffset Made, string Json, string Versions);

/// <summary>A run of a plan.</summary>
public sealed record KeptRun(string Id, string PlanId, DateTimeOffset Started, bool Rehearsal);

/// <summary>A trial: its sheet is the document of the same key.</summary>
public sealed record KeptTrial(string Id, string CardId, int CardVersion, DateTimeOffset Made, string Json);

/// <summary>A production record: its sheet is the document of the same key.</summary>
public sealed record KeptRecord(string Id, string OccasionId, string PlanId, DateTimeOffset Made);

/// <summary>A line of the control log.</summary>
public sealed record ControlEntry(long Seq, DateTimeOffset At, string Who, string Json, string Previous, string Hash);

/// <summary>Whether the control log is whole.</summary>
/// <param name="Entries">Entries read.</param>
/// <param name="Broken">Sequence numbers at which the chain does not hold.</param>
public sealed record ChainCheck(int Entries, ImmutableArray<long> Broken);
