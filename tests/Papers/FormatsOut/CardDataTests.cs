using System.Text.Json;
using Coulisse.Flows;
using Coulisse.Tests;

namespace Coulisse.Papers.Tests.FormatsOut;

/// <summary>Cards printed as schema.org data, judged by the published vocabulary itself: each property is one of its type, each value of a type that the property expects.</summary>
public sealed class CardDataTests : IDisposable
{
    private static readonly Dictionary<(string Type, string Property), string[]> Vocabulary = File.ReadLines(Path.Combine(SharedData.Repository, "tests/Papers/FormatsOut/schema-org-recipe.tsv"))
        .Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split('\t')).ToDictionary(c => (c[0], c[1]), c => c[2].Split('|'));

    // Types above, by the vocabulary: a section and a step are works, lists and things.
    private static readonly Dictionary<string, string[]> Above = new()
    {
        ["HowToSection"] = ["HowToSection", "CreativeWork", "ItemList", "ListItem", "Thing"], ["HowToStep"] = ["HowToStep", "CreativeWork", "ItemList", "ListItem", "Thing"],
    };

    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-ld-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public void Every_property_is_of_its_type_and_every_value_is_expected()
    {
        PrintedSet set = PrintOut.Write(Demo.Planned(), PaperChoice.All, _folder, "jsonld");
        Assert.Equal(3, set.Files.Length);
        foreach (PrintedFile file in set.Files)
        {
            using JsonDocument read = JsonDocument.Parse(File.ReadAllText(file.File));
            Assert.Equal("https://schema.org", read.RootElement.GetProperty("@context").GetString());
            Assert.Equal("Recipe", read.RootElement.GetProperty("@type").GetString());
            Assert.True(Judged(read.RootElement) > 20);
            Assert.Equal(file.Title, read.RootElement.GetProperty("name").GetString());
        }
    }

    [Fact]
    public void The_vocabulary_would_refuse_a_property_or_a_value_that_it_does_not_have()
    {
        using JsonDocument strange = JsonDocument.Parse("""{"@type": "Recipe", "weighOut": "x"}""");
        using JsonDocument wrong = JsonDocument.Parse("""{"@type": "Recipe", "name": {"@type": "HowToStep", "text": "x"}}""");

        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Judged(strange.RootElement));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Judged(wrong.RootElement));
    }

    [Fact]
    public void The_bundle_holds_the_same_cards()
    {
        PrintOut.Write(Demo.Planned(), PaperChoice.All, _folder, "json");
        using JsonDocument read = JsonDocument.Parse(File.ReadAllText(Path.Combine(_folder, "bundle.json")));

        Assert.Equal(3, read.RootElement.GetProperty("cards").EnumerateArray().Count(c => Judged(c) > 20));
    }

    private static int Judged(JsonElement thing)
    {
        string type = thing.GetProperty("@type").GetString()!;
        int judged = 0;
        foreach (JsonProperty p in thing.EnumerateObject().Where(p => p.Name[0] != '@'))
        {
            Assert.True(Vocabulary.TryGetValue((type, p.Name), out string[]? expected), $"{type} has no {p.Name}");
            foreach (JsonElement value in p.Value.ValueKind == JsonValueKind.Array ? p.Value.EnumerateArray().AsEnumerable() : [p.Value])
            {
                judged++;
                if (value.ValueKind == JsonValueKind.Object)
                {
                    string of = value.GetProperty("@type").GetString()!;
                    Assert.True(Above[of].Intersect(expected!).Any(), $"{type}.{p.Name} expects no {of}");
                    judged += Judged(value);
                }
                else
                {
                    Assert.Equal(JsonValueKind.String, value.ValueKind);
                    Assert.Contains(expected!, e => e is "Text" or "URL");
                }
            }
        }

        return judged;
    }
}
