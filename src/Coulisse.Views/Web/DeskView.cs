namespace Coulisse.Views.Web;

/// <summary>The card desk.</summary>
/// <param name="Id">Card in the card file; empty for a fresh one.</param>
/// <param name="Version">Version it was opened at; 0 for a fresh one.</param>
/// <param name="Title">Title.</param>
/// <param name="Text">The text.</param>
/// <param name="For">What it is scaled for; empty as written.</param>
/// <param name="Kept">When and by whom it was kept.</param>
public sealed record DeskView(string Id, int Version, string Title, string Text, string For, string Kept)
{
    /// <summary>What an empty desk says in the place of the text.</summary>
    public const string Hint = "Write or paste a card here, as you would for yourself: a title, what it serves, weights, steps with their temperatures and times.";

    /// <summary>Spoon and cup systems to choose from.</summary>
    public static IReadOnlyList<(string Key, string Word)> Measures { get; } = [("", "spoons as the card says"), ("metric", "metric spoons"), ("au", "Australian spoons"), ("nz", "New Zealand spoons"), ("uk", "British spoons"), ("us", "US spoons"), ("jp", "Japanese spoons")];

    /// <summary>Codes of practice to choose from.</summary>
    public static IReadOnlyList<(string Key, string Word)> Codes { get; } = [("au", "code: Australia"), ("nz", "code: New Zealand"), ("uk", "code: United Kingdom"), ("eu", "code: European Union"), ("us", "code: United States")];

    /// <summary>Spoons and cups chosen when it opens.</summary>
    public string Measured { get; init; } = "";

    /// <summary>Code of practice chosen when it opens.</summary>
    public string Code { get; init; } = "au";

    /// <summary>Trials of the card, the newest first.</summary>
    public System.Collections.Immutable.ImmutableArray<TrialRow> Trials { get; init; } = [];

    /// <summary>Sites of the kitchen; fewer than two leave nothing to choose.</summary>
    public System.Collections.Immutable.ImmutableArray<string> Sites { get; init; } = [];

    /// <summary>An empty desk.</summary>
    public static DeskView Empty { get; } = new("", 0, "", "", "", "");

    /// <summary>Heading of the page.</summary>
    public string Heading => Title.Length > 0 ? Title : "Card";

    /// <summary>The sentence under the heading.</summary>
    public string Says => Id.Length > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Version {Version}.") : "The weights stand left of each line, what the bench has to say stands right of it.";
}
