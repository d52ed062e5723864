using System.Text;
using System.Text.Json;
using Coulisse.Cards;

namespace Coulisse.Formats.In;

/// <summary>Recipe data in the vocabulary of schema.org, as JSON-LD: alone, in a list, in a graph.</summary>
public static class RecipeJson
{
    private const int MostDeep = 64;
    private const int MostNodes = 200_000;
    private static readonly JsonDocumentOptions Options = new() { MaxDepth = MostDeep, AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <summary>Card text of the first recipe found.</summary>
    /// <param name="json">The document.</param>
    public static Parsed<string> Read(string json)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(Whole(json), Options);
            List<JsonElement> recipes = Recipes(document.RootElement);
            return recipes.Count > 0
                ? new Parsed<string>.Ok(RecipeCard.Of(recipes[0], recipes.Count))
                : Refuse("CRD005", 0, "The JSON holds no recipe.", "It needs an object whose @type is Recipe, with recipeIngredient and recipeInstructions.");
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return Refuse("CRD004", (int)((e as JsonException)?.LineNumber ?? 0) + 1, "The JSON cannot be read: " + Short(e.Message), $"Check the quotes and brackets there; nesting deeper than {MostDeep} is refused.");
        }
    }

    /// <summary>The recipe of a page's data; null when it holds none or cannot be read: then the page itself is read.</summary>
    internal static string? InPage(string json)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(Whole(json), Options);
            List<JsonElement> recipes = [.. Recipes(document.RootElement).Where(r => r.TryGetProperty("recipeIngredient", out _) || r.TryGetProperty("recipeInstructions", out _))];
            return recipes.Count > 0 ? RecipeCard.Of(recipes[0], recipes.Count) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    private static List<JsonElement> Recipes(JsonElement root)
    {
        List<JsonElement> found = [];
        Stack<JsonElement> open = new([root]);
        for (int seen = 0; open.Count > 0 && seen < MostNodes; seen++)
        {
            JsonElement e = open.Pop();
            if (e.ValueKind == JsonValueKind.Array)
            {
                foreach (JsonElement x in e.EnumerateArray().Reverse())
                {
                    open.Push(x);
                }
            }
            else if (e.ValueKind == JsonValueKind.Object)
            {
                if (IsRecipe(e))
                {
                    found.Add(e);
                    continue;
                }

                foreach (JsonProperty p in e.EnumerateObject().Reverse())
                {
                    if (p.Value.ValueKind is JsonValueKind.Array or JsonValueKind.Object)
                    {
                        open.Push(p.Value);
                    }
                }
            }
        }

        return found;
    }

    private static bool IsRecipe(JsonElement e)
    {
        if (!e.TryGetProperty("@type", out JsonElement type))
        {
            return e.TryGetProperty("recipeIngredient", out _);
        }

        return type.ValueKind switch
        {
            JsonValueKind.String => Names(type),
            JsonValueKind.Array => type.EnumerateArray().Any(Names),
            _ => false,
        };

        static bool Names(JsonElement t) => t.ValueKind == JsonValueKind.String && t.GetString()! is var s && (s.Equals("Recipe", StringComparison.OrdinalIgnoreCase) || s.EndsWith("/Recipe", StringComparison.OrdinalIgnoreCase) || s.EndsWith(":Recipe", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Half a pair of UTF-16 is no character, and a parser refuses it: it becomes the mark for one that was lost. Written as an escape it is refused.</summary>
    private static string Whole(string json) => json.AsSpan().IndexOfAnyInRange('\uD800', '\uDFFF') < 0 ? json : Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(json));

    private static string Short(string message) => message.IndexOf(" LineNumber", StringComparison.Ordinal) is var at and > 0 ? message[..at] : message;

    private static Parsed<string>.Failed Refuse(string code, int line, string message, string hint) => new([new Problem(code, line, message, hint)]);
}
