using System.Text.Json;
using Coulisse.Cards.Reading;
using Coulisse.Gauge.Reading;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>A set of cases written blind, scored and held to what is reached.</summary>
internal static class BlindSet
{
    /// <summary>True for what a person typed or copied as text: pages and recipe data come in by another door.</summary>
    public static bool Typed(JsonElement c) => c.GetProperty("kind").GetString() != "card" || c.GetProperty("input").GetString()!.TrimStart()[0] is not ('{' or '<' or '[');

    /// <summary>Every score named has at least so many cases and at most so many misses; each miss is named in the report.</summary>
    public static void Reaches(IReadOnlyDictionary<string, (int Fewest, int Misses)> floors, string file, Func<JsonElement, bool>? which = null)
    {
        JsonElement[] cases = [.. CaseFile.Rows(Path.Combine(SharedData.Repository, file)).Where(which ?? (_ => true))];
        List<Score> scores = CaseFile.Of(cases, text => CardReader.Read(new CardText(text)).Match<Dish?>(d => d, _ => null));

        string report = string.Join('\n', scores.SelectMany(s => s.Misses.Select(m => $"{s.Name}: {m}").Append($"{s.Name}: {s.Right} of {s.All}")));
        TestContext.Current.TestOutputHelper?.WriteLine(report);
        Assert.Equal(floors.Count, scores.Count(s => floors.ContainsKey(s.Name)));
        Assert.All(scores.Where(s => floors.ContainsKey(s.Name)), s => Assert.True(s.All >= floors[s.Name].Fewest && s.All - s.Right <= floors[s.Name].Misses, $"{s.Name}: {s.Right} of {s.All}\n{report}"));
    }
}
