using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Writing;

namespace Coulisse.Formats.Out;

/// <summary>A dish in the vocabulary of schema.org, as JSON-LD: a Recipe with its list, its sections of steps and its yield, as any reader of such data takes it.</summary>
/// <remarks>What the vocabulary has no word for (keeping, tins, notes, plates) goes with it as the card itself, in text with its encodingFormat: both are properties of every CreativeWork. Reading it back takes that card as long as the list beside it still says the same.</remarks>
public static class RecipeData
{
    /// <summary>Media type of a card.</summary>
    public const string CardFormat = "text/markdown";

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The document, UTF-8 text.</summary>
    /// <param name="dish">Any dish.</param>
    public static string Write(Dish dish)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter w = new(stream, Options))
        {
            w.WriteStartObject();
            w.WriteString("@context", "https://schema.org");
            w.WriteString("@type", "Recipe");
            w.WriteString("name", dish.Title);
            w.WriteString("inLanguage", dish.Language);
            Texts(w, "recipeYield", dish.Yields.Select(y => y.Text));
            Texts(w, "tool", dish.Components.SelectMany(c => c.Steps).SelectMany(s => s.Kit).Distinct(StringComparer.Ordinal));
            Texts(w, "recipeIngredient", List(dish));
            w.WriteStartArray("recipeInstructions");
            foreach (Component c in dish.Components.Where(c => c.Steps.Length > 0))
            {
                Section(w, c);
            }

            w.WriteEndArray();
            w.WriteString("encodingFormat", CardFormat);
            w.WriteString("text", CardWriter.Write(dish));
            w.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>The list: each component's name with a colon, then its lines.</summary>
    private static IEnumerable<string> List(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            IngredientLine[] lines = [.. c.Ingredients.Where(l => l.Kind == LineKind.Ingredient)];
            if (lines.Length > 0 && c.Name.Length > 0)
            {
                yield return c.Name + ":";
            }

            foreach (IngredientLine l in lines)
            {
                yield return CardWriter.Line(l);
            }
        }
    }

    private static void Section(Utf8JsonWriter w, Component c)
    {
        if (c.Name.Length > 0)
        {
            w.WriteStartObject();
            w.WriteString("@type", "HowToSection");
            w.WriteString("name", c.Name);
            w.WriteStartArray("itemListElement");
        }

        foreach (Step s in c.Steps)
        {
            w.WriteStartObject();
            w.WriteString("@type", "HowToStep");
            w.WriteString("text", s.Text);
            w.WriteEndObject();
        }

        if (c.Name.Length > 0)
        {
            w.WriteEndArray();
            w.WriteEndObject();
        }
    }

    private static void Texts(Utf8JsonWriter w, string name, IEnumerable<string> texts)
    {
        string[] all = [.. texts];
        if (all.Length == 0)
        {
            return;
        }

        w.WriteStartArray(name);
        Array.ForEach(all, w.WriteStringValue);
        w.WriteEndArray();
    }
}
