using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"riso, 500 g brodo vegetale, 1,3 l zafferano, 2 bustine": a list that lost its line ends, each amount behind its food. Cut at its commas alone, every amount would go to the next food; that the first food has none and the last amount no food says how it is meant. "sugar, 500 g butter" is two foods, of which the first has no amount.</summary>
internal static class FoodFirst
{
    private const int Longest = 600;
    private const int MostFoods = 30;

    /// <summary>"food, amount" for each; null when the line is no such list.</summary>
    public static List<string>? Parts(string s, string lang)
    {
        if (s.Length is < 12 or > Longest || !char.IsLetter(s[0]) || lang == "ja" || s.Contains('(') || s.IndexOf(", ", StringComparison.Ordinal) is var first && first < 3 || s.AsSpan(first + 2).IndexOfAnyInRange('0', '9') != 0)
        {
            return null;
        }

        string[] pieces = s.TrimEnd('.').Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (pieces.Length is < 2 or > MostFoods || pieces[0].AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return null;
        }

        List<(string Food, string Amount)> foods = [(pieces[0], "")];
        foreach (string piece in pieces.AsSpan(1))
        {
            if (Amounts.At(piece, 0, lang) is not { Number.InWords: false } m)
            {
                foods[^1] = (foods[^1].Food + ", " + piece, "");
                continue;
            }

            if (foods[^1].Amount.Length > 0)
            {
                return null;
            }

            foods[^1] = (foods[^1].Food, piece[..m.End]);
            if (m.End < piece.Length)
            {
                int food = PartReader.Of(piece, Places.Skip(piece, m.End), lang);
                if (food >= piece.Length || !char.IsLetter(piece[food]) || ManyAmounts.Said(piece[food..], lang) || FoodWords.IsPreparation(piece[food..], lang) && !Known(piece[food..], lang))
                {
                    return null;
                }

                foods.Add((piece[food..], ""));
            }
        }

        if (foods.Count < 2 || foods.Count(f => Known(f.Food, lang)) * 2 < foods.Count + (foods.Count == 2 ? 2 : 0))
        {
            return null;
        }

        return foods[^1].Amount.Length > 0 ? [.. foods.Select(f => $"{f.Food}, {f.Amount}")] : Apart(pieces, foods, lang);
    }

    /// <summary>"flour, 500 g butter, 250 g sugar": the first food without an amount may have the first of them, and the last food none. Salt in front is what nobody weighs.</summary>
    public static void Ask(string s, string lang, int line, List<Doubt> doubts)
    {
        if (Parts(s, lang) is not { Count: > 2 } parts || char.IsAsciiDigit(parts[0][^1]) || parts[0].AsSpan().IndexOfAnyInRange('0', '9') >= 0 || Joins.IsSalt(parts[0]))
        {
            return;
        }

        List<string> behind = [];
        string food = parts[0];
        foreach (string part in parts.Skip(1))
        {
            int end = Amounts.At(part, 0, lang)?.End ?? 0;
            behind.Add($"{part[..end].Trim()} {food}");
            food = part[PartReader.Of(part, Places.Skip(part, end), lang)..];
        }

        string front = string.Join(" + ", parts.Skip(1).Append(parts[0]));
        doubts.Add(new Doubt(line, $"“{s}”: does each amount belong to the food behind it, or to the one before it?", [new Candidate("to the food behind it", front), new Candidate("to the food before it", string.Join(" + ", behind.Append(food)))], "every amount of the line", 500) { Asked = s });
    }

    /// <summary>The first food without an amount, and each of the others behind its own weight or volume.</summary>
    private static List<string>? Apart(string[] pieces, List<(string Food, string Amount)> foods, string lang) =>
        pieces.Length == foods.Count && foods.TrueForAll(f => Known(f.Food, lang)) && pieces.Skip(1).All(p => Amounts.At(p, 0, lang) is { Unit.Kind: "mass" or "volume" })
            && !foods.Skip(1).Any(f => f.Food.Contains(foods[0].Food, StringComparison.OrdinalIgnoreCase) || FoodIds.Match(f.Food, lang) is { } match && match.Id == FoodIds.Match(foods[0].Food, lang)?.Id)
            ? [.. pieces] : null;

    /// <summary>A food everybody knows, as it is or before what is done to it: "pecorino grattugiato".</summary>
    private static bool Known(string food, string lang)
    {
        string name = food.IndexOf(',') is > 0 and var comma ? food[..comma] : food;
        return FoodIds.Match(name, lang) is not null || NeverCounted.Poured(name, lang) || name.LastIndexOf(' ') is > 2 and var space && FoodIds.Match(lang is "fr" or "es" or "it" ? name[..space] : name[(space + 1)..], lang) is not null;
    }
}
