using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>Volumes as the checks weigh them.</summary>
internal static class Volumes
{
    /// <summary>Millilitres of a food told by volume; null for any other.</summary>
    public static double? Of(FoodAmount f) => f is { Amount: { } a, Unit: { } u } && Lexicon.Unit(u, "en") is { Kind: "volume", Base: { } b } ? a * b : null;
}
