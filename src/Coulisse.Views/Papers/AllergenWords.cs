using System.Collections.Immutable;
using Coulisse.Kitchen.Labels;

namespace Coulisse.Views.Papers;

/// <summary>Allergens in the words of a sheet.</summary>
internal static class AllergenWords
{
    /// <summary>"Contains egg, milk. May contain sulphites. Not known: ginger paste." Unknown is never left out.</summary>
    public static string Sentence(ImmutableArray<AllergenLine> lines)
    {
        string Names(AllergenStatus s) => string.Join(", ", lines.Where(l => l.Status == s).Select(l => l.Name).Distinct());
        string contains = Names(AllergenStatus.Contains);
        string may = Names(AllergenStatus.May);
        string unknown = string.Join(", ", lines.Where(l => l.Code is null).Select(l => l.Name).Distinct());
        string[] all =
        [
            contains.Length > 0 ? $"Contains {contains.ToUpperInvariant()}." : "",
            may.Length > 0 ? $"Check label: {may}." : "",
            unknown.Length > 0 ? $"NOT KNOWN, ask: {unknown}." : "",
        ];
        string text = string.Join(' ', all.Where(a => a.Length > 0));
        return text.Length > 0 ? text : "No allergen of the list is known in it; that is no promise.";
    }
}
