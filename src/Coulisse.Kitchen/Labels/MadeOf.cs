using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Labels;

/// <summary>What the words beside a food say it is made of: "roux (butter &amp; flour)", "pesto (basil, pine nuts, parmesan)". Who cannot eat the butter cannot eat the roux, whatever the table knows of roux.</summary>
/// <remarks>A piece of the words counts only where the whole of it names a food: "finely chopped", "see p. 3", "the size of a walnut" name none. In "butter or oil" either may be in it; what is told not to be in it ("no nuts", "sans beurre") is not taken to be.</remarks>
internal static class MadeOf
{
    private const double Sure = 0.8;
    private const double Whole = 0.95;
    private const int LongestPiece = 60;
    private const int MostPieces = 24;
    private static readonly char[] Stops = [',', ';', '+', '&', '/', '、', '，', '・', '＋', '[', ']', '(', ')'];
    private static readonly string[] Ands = ["and", "et", "und", "y", "e", "i", "plus", "と"];
    private static readonly string[] Ors = ["or", "and/or", "ou", "et/ou", "oder", "und/oder", "bzw", "o", "u", "oppure", "lub", "albo", "または", "か"];
    private static readonly string[] Leads = ["made of", "made from", "made with", "with", "from", "of", "contains", "containing", "mit", "aus", "enthält", "avec", "à base de", "contient", "con", "a base de", "contiene", "di", "z", "ze", "zawiera"];
    private static readonly string[] Nots = ["no", "not", "non", "without", "free", "never", "instead", "except", "sans", "pas", "ohne", "kein", "keine", "frei", "nicht", "statt", "sin", "senza", "bez", "libre"];
    // "bagels (white)", "spring onions (white and green parts)": no egg.
    private static readonly string[] Colours = ["white", "red", "green", "black", "brown", "yellow", "blanc", "blanche", "weiß", "weiss", "blanco", "blanca", "bianco", "bianca"];
    private static readonly string[] JapaneseNots = ["なし", "不使用", "抜き", "無し", "フリー"];

    /// <summary>The foods the words name, each with whether another may stand in its place.</summary>
    /// <param name="food">Food as read.</param>
    /// <param name="language">Language of its words.</param>
    /// <param name="foods">Foods to look up in.</param>
    public static ImmutableArray<(string Name, Food Food, bool Either)> In(FoodAmount food, string language, FoodTable foods)
    {
        // "roux [butter & flour]" keeps its bracket in the name.
        int square = food.Food.IndexOf('[');
        string words = (square > 0 ? food.Food[square..] + "," : "") + food.Preparation;
        if (words.Length == 0)
        {
            return [];
        }

        ImmutableArray<(string, Food, bool)>.Builder found = ImmutableArray.CreateBuilder<(string, Food, bool)>();
        string kind = Kind(food.Food);
        int left = MostPieces;
        foreach (string piece in words.Split(Stops, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (left-- == 0)
            {
                break;
            }

            if (piece.Length <= LongestPiece && !Denied(piece))
            {
                Piece(piece, kind, language, foods, found);
            }
        }

        return found.ToImmutable();
    }

    private static void Piece(string piece, string kind, string language, FoodTable foods, ImmutableArray<(string, Food, bool)>.Builder found)
    {
        // "salt and pepper" may be a name; only what is none is parted.
        if (Known(piece, kind, language, foods) is { } whole)
        {
            found.Add((piece, whole, false));
            return;
        }

        string[] either = Part(piece, Ors);
        bool may = either.Length > 1 || Ors.Contains(piece.Split(' ')[0], StringComparer.OrdinalIgnoreCase);
        foreach (string one in either.SelectMany(p => Part(p, Ands)))
        {
            if (Known(one, kind, language, foods) is { } row)
            {
                found.Add((one, row, may));
            }
        }
    }

    /// <summary>The last word of a name: what the pieces may be kinds of.</summary>
    private static string Kind(string food)
    {
        int end = food.IndexOf('[') is var open and > 0 ? open : food.Length;
        string name = food[..end].TrimEnd();
        return name[(name.LastIndexOf(' ') + 1)..];
    }

    private static Food? Known(string words, string kind, string language, FoodTable foods)
    {
        string name = Led(words);
        if (name.Length > 0 && char.IsAsciiDigit(name[0]))
        {
            name = CardReader.ReadLine(name, language).Foods.FirstOrDefault()?.Food ?? "";
        }

        // "mushrooms (chestnut, oyster)", "milk (oat)": kinds of it, and no shellfish. "potato (mashed)" names none.
        return Colours.Contains(name, StringComparer.OrdinalIgnoreCase) || Named(name, language, foods, Sure) is not { } food ? null
            : kind.Length > 1 && !name.Contains(' ') && Named(name + " " + kind, language, foods, Whole) is { } other ? other : food;
    }

    // A word of a language that is neither the card's nor a kitchen's English may be what is done to the food.
    private static Food? Named(string name, string language, FoodTable foods, double sure) =>
        name.Length > 1 && foods.Match(name, language) is { } match && match.Confidence >= sure && foods.Find(match.Id) is { } food && (foods.IsOwn(match.Id) || Says(food, language, match.Alias) || Says(food, "en", match.Alias)) ? food : null;

    private static bool Says(Food food, string language, string alias) => food.Names.TryGetValue(language, out ImmutableArray<string> names) && names.Contains(alias);

    /// <summary>Without "made with", "from", "mit".</summary>
    private static string Led(string words)
    {
        foreach (string lead in Leads)
        {
            if (words.Length > lead.Length && words[lead.Length] == ' ' && words.StartsWith(lead, StringComparison.OrdinalIgnoreCase))
            {
                return words[(lead.Length + 1)..].Trim();
            }
        }

        return words.Trim();
    }

    private static bool Denied(string piece)
    {
        foreach (string word in piece.Split([' ', '-', '.'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Nots.Contains(word, StringComparer.OrdinalIgnoreCase) || word.Length > 6 && word.EndsWith("frei", StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return JapaneseNots.Any(n => piece.Contains(n, StringComparison.Ordinal));
    }

    private static string[] Part(string piece, string[] joints)
    {
        List<string> parts = [];
        int from = 0;
        string[] words = piece.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i <= words.Length; i++)
        {
            if (i == words.Length || joints.Contains(words[i], StringComparer.OrdinalIgnoreCase))
            {
                if (i > from)
                {
                    parts.Add(string.Join(' ', words[from..i]));
                }

                from = i + 1;
            }
        }

        return [.. parts];
    }
}
