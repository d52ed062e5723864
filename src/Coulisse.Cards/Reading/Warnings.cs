using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A warning among the foods: "Do not use peanuts", "NO NUTS other than listed", "⚠ Allergen: milk", "may contain traces of sesame", "Energy 1,050 kJ; protein 5 g". Nothing of it goes in: it is a note.</summary>
internal static class Warnings
{
    private static readonly string[] Openers =
    [
        "do not ", "don't ", "never use ", "no nuts", "no peanuts", "no egg", "no fish", "no shellfish", "no dairy", "no gluten", "may contain ", "may also contain ", "can contain ", "contains ", "not suitable for ", "suitable for ", "allergen", "warning", "caution",
        "ne pas ", "ne jamais ", "n'utilisez pas ", "peut contenir ", "contient ", "pas de fruits à coque", "pas d'arachide", "allergène", "attention",
        "nicht verwenden", "nicht geeignet", "keine Nüsse", "keine Erdnüsse", "niemals ", "kann spuren ", "kann enthalten ", "enthält ", "achtung", "allergen",
        "no usar ", "no utilizar ", "no poner ", "nunca ", "puede contener ", "contiene ", "sin frutos secos", "alérgeno", "atención", "aviso",
        "non usare ", "non utilizzare ", "può contenere ", "senza frutta a guscio", "attenzione",
    ];

    private static readonly Beginnings First = new(Openers);
    private static readonly string[] Japanese = ["アレルギー", "アレルゲン", "注意", "使わないこと", "使わない", "使用しない", "を含む"];
    private static readonly string[] Energies = ["kJ", "kcal"];

    /// <summary>True for such a line.</summary>
    public static bool Is(string s, string lang)
    {
        int from = s[0] is '⚠' or '!' or '(' ? Places.Skip(s, s.Length > 1 && s[1] == '\uFE0F' ? 2 : 1) : 0;
        if (from < s.Length && First.May(s, from) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0)
        {
            foreach (string w in Openers)
            {
                if (s.AsSpan(from).StartsWith(w, StringComparison.OrdinalIgnoreCase) && (w[^1] == ' ' || from + w.Length == s.Length || !char.IsLetter(s[from + w.Length]) || s[from + w.Length] is 's' or 'e' or 'n'))
                {
                    return true;
                }
            }
        }

        return lang == "ja" ? s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Array.Exists(Japanese, w => s.Contains(w, StringComparison.Ordinal)) && s.Length > 4 : Energy(s);
    }

    /// <summary>"Energy 1,050 kJ; protein 5 g": what a serving holds, opened by its energy.</summary>
    private static bool Energy(string s) =>
        (s.Contains("kJ", StringComparison.Ordinal) || s.Contains("kcal", StringComparison.Ordinal)) && char.IsLetter(s[0]) && (s.AsSpan().IndexOfAnyInRange('0', '9') is > 0 and < 30) && Array.Exists(Energies, e => Places.FindWord(s, e) > 0) && Places.HasAny(s[..Math.Min(s.Length, 30)], "energy", "calories", "énergie", "Energie", "Brennwert", "energía", "valor energético", "energia", "valore energetico", "kcal");
}
