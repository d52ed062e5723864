using System.Net;
using System.Text;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Formats.Out;

namespace Coulisse.Gauge.Reading.Fuzz;

/// <summary>What is spoiled: the committed corpus, the demo's cards and sheet, the invented cases where they lie beside the repository; each card also as a page, as recipe data and as the writer prints it.</summary>
internal sealed class RealTexts
{
    public RealTexts(string root, string? data)
    {
        string[] corpus = [.. new[] { "corpus.txt", "corpus-cards.txt" }.Select(f => Path.Combine(root, "tests", "Cards", f)).Where(File.Exists).SelectMany(f => File.ReadAllText(f).Split("\n%%\n"))];
        string[] demo = [.. Directory.GetFiles(Path.Combine(root, "examples", "demo", "cards"), "*.md").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
        JsonElement[] cases = [.. new[] { Path.Combine(root, "tests", "Cards", "cases.jsonl") }.Concat(data is null ? [] : new[] { "cases.jsonl", "cases-2.jsonl" }.Select(f => Path.Combine(data, "reading", f)))
            .Where(File.Exists).SelectMany(File.ReadLines).Where(l => l.Length > 0).Select(l => JsonDocument.Parse(l).RootElement)];
        Lines = [.. corpus.Where(c => !c.Contains('\n')), .. Of(cases, "line"), .. demo.SelectMany(d => d.Split('\n')).Where(l => l.StartsWith("- ", StringComparison.Ordinal))];
        Steps = [.. corpus.Where(c => !c.Contains('\n')), .. Of(cases, "step"), .. demo.SelectMany(d => d.Split('\n')).Where(l => l.Length > 2 && char.IsAsciiDigit(l[0]))];
        Cards = [.. corpus, .. demo, .. Of(cases, "card")];
        Dish[] dishes = [.. Cards.Select(c => CardReader.Read(new CardText(c)).Match<Dish?>(d => d, _ => null)).OfType<Dish>()];
        Pages = [.. Cards.Select(Page), .. Cards.Where(c => c.StartsWith('<'))];
        Json = [.. dishes.Select(RecipeData.Write), .. dishes.Select(Bare), .. Cards.Where(c => c.StartsWith('{'))];
        Cards = [.. Cards, .. dishes.Select(CardWriter.Write)];
        Sheets = [File.ReadAllText(Path.Combine(root, "examples", "demo", "occasion.md")), "53 plates, Saturday 14:00, 25 minutes, Ilse and two others", "# Dinner\n\nFriday 20 November 2026, live 19:00 to 19:40, 20 guests.\n\n## People\n| Name | From | To | Skills |\n|--|--|--|--|\n| Ada | 08:00 | 22:00 | all |\n"];
        Encoding latin = Encoding.Latin1;
        Encoding[] encodings = [new UTF8Encoding(false), new UTF8Encoding(true), new UnicodeEncoding(false, true), new UnicodeEncoding(true, true), new UnicodeEncoding(false, false), new UnicodeEncoding(true, false), new UTF32Encoding(false, true), latin];
        Files = [.. Cards.Concat(Pages).SelectMany((c, i) => new[] { encodings[i % encodings.Length], encodings[(i + 3) % encodings.Length] }.Select(e => (byte[])[.. e.GetPreamble(), .. e.GetBytes(c)]))];
    }

    public string[] Lines { get; }

    public string[] Steps { get; }

    public string[] Cards { get; }

    public string[] Pages { get; }

    public string[] Json { get; }

    public string[] Sheets { get; }

    public byte[][] Files { get; }

    private static IEnumerable<string> Of(JsonElement[] cases, string kind) => cases.Where(c => c.GetProperty("kind").GetString() == kind).Select(c => c.GetProperty("input").GetString()!);

    /// <summary>A card as a page would show it: junk before and behind, lists as lists.</summary>
    private static string Page(string card)
    {
        StringBuilder b = new("<!doctype html><html><head><title>A page</title><style>p{color:red}</style><script>alert(1)</script></head><body><nav><a href='/'>Home</a></nav><article>");
        foreach (string line in card.Split('\n'))
        {
            string words = WebUtility.HtmlEncode(line.TrimStart('#', '-', ' '));
            b.Append(line.StartsWith("# ", StringComparison.Ordinal) ? $"<h1>{words}</h1>" : line.StartsWith('#') ? $"<h2>{words}</h2>" : line.StartsWith("- ", StringComparison.Ordinal) ? $"<ul><li>{words}</li></ul>" : $"<p>{words}</p>").Append('\n');
        }

        return b.Append("</article><footer>Print</footer></body></html>").ToString();
    }

    /// <summary>Recipe data as others write it: without the card beside it.</summary>
    private static string Bare(Dish d) => JsonSerializer.Serialize(new Dictionary<string, object>
    {
        ["@context"] = "https://schema.org", ["@graph"] = new object[] { new Dictionary<string, object> { ["@type"] = new[] { "Recipe" }, ["name"] = d.Title, ["recipeYield"] = new[] { "4", "4 servings" }, ["cookTime"] = "PT1H5M", ["recipeIngredient"] = d.Components.SelectMany(c => c.Ingredients).Select(l => l.Text), ["recipeInstructions"] = d.Components.SelectMany(c => c.Steps).Select(s => new Dictionary<string, string> { ["@type"] = "HowToStep", ["text"] = s.Text }) } },
    });
}
