namespace Coulisse.Cards;

/// <summary>A card as typed: the only source of truth.</summary>
/// <param name="Text">The whole text, exactly as it came.</param>
/// <param name="Name">File name or title by which a person knows it; null for a paste.</param>
public sealed record CardText(string Text, string? Name = null)
{
    /// <summary>The most the reader takes: 5 MB of characters.</summary>
    public const int MostCharacters = 5 * 1024 * 1024;
}
