using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Labels;

/// <summary>Allergen codes, their exact names in each law, and the words that hint at them.</summary>
public static class AllergenNames
{
    private static readonly Lazy<Table> Rows = new(() => new Table());

    /// <summary>All codes, in the order of the law's list.</summary>
    public static ImmutableArray<string> Codes => Rows.Value.Codes;

    /// <summary>The regime of a code of practice: au, nz, uk, eu, us.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the five.</exception>
    public static AllergenRegime RegimeOf(string code) => code switch
    {
        "au" or "nz" => AllergenRegime.Anz,
        "uk" or "eu" => AllergenRegime.Eu,
        "us" => AllergenRegime.Us,
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "A code of practice is au, nz, uk, eu or us."),
    };

    /// <summary>The name a law gives a code; null when that law does not list it.</summary>
    public static string? Name(string code, AllergenRegime regime) => Rows.Value.Find(code) is { } r ? Empty(regime switch { AllergenRegime.Eu => r.Eu, AllergenRegime.Us => r.Us, _ => r.Anz }) : null;

    /// <summary>The names a code brings to a "Contains" summary (ANZ: wheat brings gluten too); empty when the law does not list it.</summary>
    public static ImmutableArray<string> Summary(string code, AllergenRegime regime) => Rows.Value.Find(code) is not { } r ? []
        : [.. (regime switch { AllergenRegime.Eu => r.Eu, AllergenRegime.Us => r.Us, _ => r.AnzSummary }).Split(", ", StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Codes whose own words stand in a food's name: a hint, never a proof.</summary>
    public static ImmutableArray<string> Hinted(string food)
    {
        string[] words = food.ToLowerInvariant().Split([' ', '-', ',', '.', '\'', '’', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
        return [.. Rows.Value.All.Where(r => r.Words.Any(w => Array.IndexOf(words, w) >= 0)).Select(r => r.Code)];
    }

    /// <summary>True when a law exempts the food from declaring the code ("exempt"), false when it only may.</summary>
    internal static (bool Exempt, string Why)? Exemption(string code, string foodId, AllergenRegime regime) => Rows.Value.Exempt.TryGetValue((code, foodId, regime), out (bool, string) found) ? found : null;

    /// <summary>Why words on a line settle an allergen that otherwise depends on the make; null when they do not.</summary>
    internal static string? Settled(string code, string foodId, string words) => Rows.Value.Settling
        .Where(s => s.Food == foodId && s.Code == code && s.Words.Any(w => words.Split([' ', ',', '(', ')', ';'], StringSplitOptions.RemoveEmptyEntries).Contains(w, StringComparer.OrdinalIgnoreCase)))
        .Select(s => s.Why).FirstOrDefault();

    private static string? Empty(string s) => s.Length == 0 ? null : s;

    private sealed record Row(string Code, string Eu, string Us, string Anz, string AnzSummary, string[] Words);

    private sealed class Table
    {
        private readonly Dictionary<string, Row> _byCode = new(StringComparer.Ordinal);

        public Table()
        {
            ReferenceTable names = ReferenceTable.Load("foods/allergens.tsv");
            foreach (string[] r in names.Rows)
            {
                Row row = new(r[names.Column("code")], r[names.Column("eu")], r[names.Column("us")], r[names.Column("anz")], r[names.Column("anzsummary")], r[names.Column("words")].Split(' ', StringSplitOptions.RemoveEmptyEntries));
                _byCode.Add(row.Code, row);
                All.Add(row);
            }

            Codes = [.. All.Select(r => r.Code)];
            ReferenceTable exempt = ReferenceTable.Load("foods/allergen-exempt.tsv");
            Exempt = exempt.Rows.ToDictionary(r => (r[0], r[1], r[2] switch { "eu" => AllergenRegime.Eu, "us" => AllergenRegime.Us, _ => AllergenRegime.Anz }), r => (r[3] == "exempt", r[4]));
            ReferenceTable words = ReferenceTable.Load("foods/allergen-words.tsv");
            Settling = [.. words.Rows.Select(r => (r[0], r[1].Split(' '), r[2], r[3]))];
        }

        public List<Row> All { get; } = [];

        public ImmutableArray<string> Codes { get; }

        public Dictionary<(string Code, string Food, AllergenRegime Regime), (bool Exempt, string Why)> Exempt { get; }

        public (string Food, string[] Words, string Code, string Why)[] Settling { get; }

        public Row? Find(string code) => _byCode.GetValueOrDefault(code);
    }
}
