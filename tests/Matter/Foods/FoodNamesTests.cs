using System.Globalization;
using System.Text;
using System.Text.Json;
using Coulisse.Matter.Foods;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>Names over the whole table, and the three hundred foods that outside lines name most often, in six languages: each is found from the ways cooks write it, and none leads to another food.</summary>
public sealed class FoodNamesTests
{
    private static readonly FoodTable Table = FoodTable.Default;

    // A word that changes no food, and where it stands.
    private static readonly Dictionary<string, Func<string, string>> Praised = new(StringComparer.Ordinal)
    {
        ["en"] = n => "organic " + n, ["fr"] = n => n + " bio", ["de"] = n => "bio " + n, ["es"] = n => n + " bio", ["it"] = n => n + " bio", ["ja"] = n => n,
    };

    [Fact]
    public void Every_name_of_every_row_finds_its_row_and_no_other_in_capitals_without_accents_and_with_blanks()
    {
        List<string> lost = [];
        foreach (Food food in Table.Ids.Select(i => Table.Find(i)!))
        {
            foreach ((string language, string name) in food.Names.SelectMany(n => n.Value.Select(v => (n.Key, v))))
            {
                string[] ways = [name, name.ToUpper(CultureInfo.GetCultureInfo(language)), Plain(name), "  " + name.Replace("-", " ", StringComparison.Ordinal) + " "];
                lost.AddRange(ways.Where(w => Table.Match(w, language)?.Id != food.Id).Select(w => $"{language} {w} → {Table.Match(w, language)?.Id ?? "nothing"}, not {food.Id}"));
            }
        }

        Assert.Empty(lost);
    }

    [Fact]
    public void A_name_read_in_another_language_finds_its_row_or_nothing_sure()
    {
        // What is a word of that language in any of its forms may answer with its own food ("melone" on a Spanish card is a melón); what is borrowed from a third language never leads to another food.
        List<string> wrong = [];
        foreach (Food food in Table.Ids.Select(i => Table.Find(i)!))
        {
            foreach ((string language, string name) in food.Names.SelectMany(n => n.Value.Select(v => (n.Key, v))))
            {
                wrong.AddRange(new[] { "en", "fr", "de", "es", "it", "ja" }.Where(other => other != language && Table.Match(name, other) is { } m && m.Id != food.Id && !Table.Find(m.Id)!.Names[other].Contains(m.Alias)).Select(other => $"{language} {name} read as {other}: {Table.Match(name, other)!.Id}, not {food.Id}"));
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void The_three_hundred_commonest_are_found_three_ways_in_six_languages()
    {
        string[] common = Common(300);
        List<string> lost = [];
        int tried = 0;
        foreach (Food food in common.Select(i => Table.Find(i)!))
        {
            foreach ((string language, Func<string, string> praise) in Praised)
            {
                foreach (string name in food.Names[language])
                {
                    string[] ways = language == "ja" ? [name, "　" + name] : [name.ToUpper(CultureInfo.GetCultureInfo(language)), Plain(name), praise(name)];
                    tried += ways.Length;
                    lost.AddRange(ways.Where(w => Table.Match(w, language)?.Id != food.Id).Select(w => $"{language} {w} → {Table.Match(w, language)?.Id ?? "nothing"}, not {food.Id}"));
                }
            }
        }

        // Never another food ("fresh" would be one: fresh walnuts, fresh cheese); not found at all at most one in a hundred.
        Assert.Equal(300, common.Length);
        Assert.True(tried > 5000, $"{tried} ways");
        string[] other = [.. lost.Where(l => !l.Contains("→ nothing", StringComparison.Ordinal))];
        Assert.True(other.Length == 0, string.Join('\n', other));
        Assert.True(lost.Count <= tried / 100, string.Join('\n', lost));
    }

    /// <summary>Foods by how often the labelled lines of outside cooks name them; what follows, in the order of the table, fills up the number.</summary>
    private static string[] Common(int number)
    {
        Dictionary<string, int> counts = new(StringComparer.Ordinal);
        foreach (string line in File.ReadLines(SharedData.Path("data/reading/labelled-lines.jsonl")))
        {
            using JsonDocument read = JsonDocument.Parse(line);
            foreach (JsonElement label in read.RootElement.GetProperty("labels").EnumerateArray().Where(l => l.GetProperty("type").GetString() == "FOOD"))
            {
                if (Table.Match(label.GetProperty("text").GetString()!, "en") is { } m)
                {
                    counts[m.Id] = counts.GetValueOrDefault(m.Id) + 1;
                }
            }
        }

        return [.. counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key, StringComparer.Ordinal).Select(c => c.Key).Concat(Table.Ids).Distinct().Take(number)];
    }

    // Latin letters without their marks, as a keyboard without accents writes them; kana keep theirs.
    private static string Plain(string name) => string.Concat(name.Normalize(NormalizationForm.FormD).Where(c => c is < '\u0300' or > '\u036F')).Normalize(NormalizationForm.FormC);
}
