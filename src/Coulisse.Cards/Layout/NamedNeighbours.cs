using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Batter: flour, beer, egg" over "Vegetables: courgette, carrot", "Bun: brioche 1" over "Patty: beef mince 180 g, salt 2 g": names before their foods, line under line. One such line alone may be a remark; two in a row are a card told part by part.</summary>
internal static class NamedNeighbours
{
    private const int LongestLabel = 30;
    private const int LongestFood = 40;
    private const int Longest = 160;

    // What a page or a label tells of the whole, and no part of it.
    private static readonly WordList Told = new(
        "contains", "contain", "allergens", "allergen", "traces", "tags", "tag", "keywords", "category", "cuisine", "course", "diet", "free", "without", "serve", "served", "goes", "pairs", "instead", "swap", "swaps", "substitute", "substitutes", "variation", "variations", "tip", "optional", "main ingredients", "equipment", "tools", "shop", "buy", "order", "wine", "drinks", "season",
        "contient", "allergènes", "sans", "servir", "accompagnement", "accord", "remplacer", "variante", "variantes", "astuce", "matériel", "saison", "peut contenir", "mots-clés",
        "enthält", "Allergene", "Spuren", "ohne", "dazu", "passt", "Schlagwörter", "Kategorie", "Varianten", "Tipp", "Ersatz", "Geräte", "statt", "Hauptzutaten",
        "contiene", "alérgenos", "trazas", "sin", "servir", "acompañar", "etiquetas", "categoría", "consejo", "variación",
        "allergeni", "tracce", "senza", "servire", "abbinamento", "etichette", "consiglio", "varianti",
        "アレルゲン", "アレルギー", "含む", "不使用", "タグ", "代用");

    /// <summary>Adds the name and its foods; false for any other line.</summary>
    public static bool Cut(List<RawLine> lines, int i, string lang, List<Piece> into)
    {
        if (!Labelled(lines[i].Text) || Foods(lines[i].Text, lang, out string label) is not { Count: > 0 } foods || !(Beside(lines, i, i - 1, lang) || Beside(lines, i, i + 1, lang)))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Heading, label, lines[i].Span, 2));
        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, lines[i].Span)));
        return true;
    }

    private static bool Beside(List<RawLine> lines, int i, int k, string lang) =>
        k >= 0 && k < lines.Count && lines[k].Block == lines[i].Block && Labelled(lines[k].Text) && Foods(lines[k].Text, lang, out _) is { Count: > 1 };

    private static bool Labelled(string s) => s.Length is > 5 and < Longest && s.AsSpan(0, Math.Min(s.Length, LongestLabel)).IndexOfAny(":：–—") > 0 || s.IndexOf(" - ", 0, Math.Min(s.Length, LongestLabel), StringComparison.Ordinal) > 0;

    /// <summary>The foods behind the name, when all are known to everybody, one of three and more perhaps not; null for any other line. One alone tells its amount.</summary>
    private static List<string>? Foods(string line, string lang, out string label)
    {
        string s = Folding.Line(line).TrimEnd('.', '。');
        int colon = s.IndexOf(':');
        if (colon < 0 && s.IndexOf(" - ", StringComparison.Ordinal) is > 2 and var dash)
        {
            // "Bun - 4 brioche buns"
            s = string.Concat(s.AsSpan(0, dash), ":", s.AsSpan(dash + 2));
            colon = dash;
        }

        label = colon > 0 ? Marks.Strip(s[..colon]).Trim() : "";
        bool named = label.Length > (lang == "ja" ? 0 : 2) && colon + 2 < s.Length && label.AsSpan().IndexOfAnyInRange('0', '9') < 0 && label.AsSpan().IndexOfAny(',', '(') < 0 && label.AsSpan().Count(' ') < 4;
        if (!named || s.IndexOf(". ", colon, StringComparison.Ordinal) > 0 || s.IndexOf('。', colon) > 0 || Told.In(label) || Sections.Of(label, lang) is not null || Looks.Statement(label + ":", lang) || Furniture.Is(s))
        {
            return null;
        }

        string list = s[(colon + 1)..].Trim();
        bool bare = list.AsSpan().IndexOfAnyInRange('0', '9') < 0;
        List<string> foods = [.. RunningText.Foods(bare ? list.Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase) : list, lang)];
        int known = foods.Count(f => Known(f, lang));
        bool most = foods.Count > 1 ? known >= Math.Max(2, foods.Count - 1) && known * 3 >= foods.Count * 2 : foods.Count == 1 && known == 1 && Looks.Amounted(foods[0], lang);
        return most && !foods.Exists(f => f.Length >= LongestFood || Looks.Timed(f, lang) || f.Contains('°')) ? foods : null;
    }

    /// <summary>A food everybody knows, with or without its amount.</summary>
    private static bool Known(string f, string lang)
    {
        if (FoodIds.Match(f, lang) is not null)
        {
            return true;
        }

        if (f.AsSpan().IndexOfAnyInRange('0', '9') < 0)
        {
            return false;
        }

        return LineReader.Read(f, lang, default, []) is { Kind: LineKind.Ingredient, Foods: [{ Amount: not null } one] } && (FoodIds.Match(one.Food, lang) is not null || Compounds.Known(one.Food, lang) || lang == "en" && one.Food.LastIndexOf(' ') is > 0 and var last && FoodIds.Match(one.Food[(last + 1)..], lang) is not null);
    }
}
