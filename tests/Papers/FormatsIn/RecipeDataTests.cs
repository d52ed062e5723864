using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Formats.In;
using Coulisse.Formats.Out;
using Coulisse.Tests;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>A dish as schema.org data: only properties the vocabulary has, and reading it back gives the dish again.</summary>
public sealed class RecipeDataTests
{
    // Properties of Recipe, of HowTo, CreativeWork and Thing above it, of HowToSection and HowToStep: schema.org, release 28 (from memory), those written here.
    private static readonly string[] Known = ["@context", "@type", "name", "inLanguage", "recipeYield", "tool", "recipeIngredient", "recipeInstructions", "encodingFormat", "text", "itemListElement"];

    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(Assert.IsType<Parsed<CardText>.Ok>(Incoming.ToCard(text)).Value)).Value;

    private static IEnumerable<string> Cards() => Directory.GetFiles(Path.Combine(SharedData.Repository, "examples/demo/cards"), "*.md").Select(File.ReadAllText)
        .Concat(new[] { "data/reading/cases.jsonl", "data/reading/cases-2.jsonl" }.SelectMany(f => File.ReadLines(SharedData.Path(f))).Select(l => JsonDocument.Parse(l).RootElement).Where(c => c.GetProperty("kind").GetString() == "card").Select(c => c.GetProperty("input").GetString()!));

    [Fact]
    public void What_is_written_is_valid_and_reads_back_the_same()
    {
        int cards = 0;
        foreach (string card in Cards())
        {
            Dish d = Read(card);
            string data = RecipeData.Write(d);
            using JsonDocument document = JsonDocument.Parse(data);
            Valid(document.RootElement);

            Assert.Equal(CardWriter.Write(d), CardWriter.Write(Read(data)));
            cards++;
        }

        Assert.True(cards > 5);
    }

    [Fact]
    public void Data_changed_since_it_was_written_speaks_for_itself()
    {
        string data = RecipeData.Write(Read("# Gel\n\n## Gel\nKeeps 3 days at 5 °C.\n\n- 200 g quince\n- 2 g agar\n\n1. Boil 2 min."));

        Assert.Equal(200, Read(data).Components[0].Ingredients[0].Foods[0].Grams);
        Assert.Equal(72, Read(data).Components[0].Keeps[0].Hours);
        int list = data.IndexOf("\"200 g quince\"", StringComparison.Ordinal);
        Assert.Equal(250, Read(data.Remove(list, 14).Insert(list, "\"250 g quince\"")).Components[0].Ingredients[0].Foods[0].Grams);
    }

    private static void Valid(JsonElement e)
    {
        foreach (JsonProperty p in e.EnumerateObject())
        {
            Assert.Contains(p.Name, Known);
            foreach (JsonElement x in p.Value.ValueKind == JsonValueKind.Array ? p.Value.EnumerateArray().AsEnumerable() : [p.Value])
            {
                if (x.ValueKind == JsonValueKind.Object)
                {
                    Assert.Contains(x.GetProperty("@type").GetString(), new[] { "HowToSection", "HowToStep" });
                    Valid(x);
                }
                else
                {
                    Assert.Equal(JsonValueKind.String, x.ValueKind);
                    Assert.False(string.IsNullOrWhiteSpace(x.GetString()));
                }
            }
        }
    }
}
