using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>What `read` prints: parts with their notes under them, and every word of the card somewhere.</summary>
public sealed partial class UnderstoodTests
{
    private static string Written(string text) => Understood.Write(new CardText(text), Told.Read(text));

    [Fact]
    public void Notes_stand_under_their_part_and_what_the_parts_leave_out_is_shown_as_written()
    {
        string[] lines = Written("# Flan\n\nServes 4. My aunt's flan.\n\n## Curd\n\n- 200 g milk, warm\n- 50 g vinegar, 5 % acid\n\n1. Boil 5 min.\n\nKeep the curd covered.\n\n## Crust\n\n- 100 g flour\n\n1. Mix.\n").Split('\n');

        int curd = Array.IndexOf(lines, "Curd");
        int crust = Array.IndexOf(lines, "Crust");
        int note = Array.FindIndex(lines, l => l.Contains("Keep the curd covered", StringComparison.Ordinal));
        Assert.InRange(note, curd, crust);
        Assert.InRange(Array.FindIndex(lines, l => l.Contains("My aunt's flan", StringComparison.Ordinal)), 0, curd);
        Assert.Contains("        “50 g vinegar, 5 % acid”", lines);
        Assert.DoesNotContain(lines, l => l.Contains("“200 g milk", StringComparison.Ordinal));
    }

    [Fact]
    public void Words_of_no_part_are_listed_with_their_line_and_a_plain_card_has_none()
    {
        Assert.Empty(Understood.Rest(new CardText("# Flan\n\n- 200 g milk\n\n9. Boil 5 min.\n"), Told.Read("# Flan\n\n- 200 g milk\n\n9. Boil 5 min.\n")));
        string dressed = "# Flan\n\n## Ingredients\n- 200 g milk\n\n## Method\n1. Boil 5 min.\n";
        Assert.All(Understood.Rest(new CardText(dressed), Told.Read(dressed)), n => Assert.Equal(n.Text, dressed.Split('\n')[n.Span.Line - 1]));
    }

    [Fact]
    public void Every_word_of_every_card_of_the_cases_is_in_what_is_printed()
    {
        string[] files = [.. new[] { "data/reading/cases.jsonl", "data/reading/cases-2.jsonl" }.Select(SharedData.Path), .. Directory.GetFiles(Path.Combine(SharedData.Repository, "tests", "Cards"), "cases*.jsonl")];
        (int cards, int lines, int rest) = (0, 0, 0);
        List<string> lost = [];
        foreach (JsonElement c in files.SelectMany(File.ReadLines).Select(l => JsonDocument.Parse(l).RootElement).Where(c => c.GetProperty("kind").GetString() == "card"))
        {
            string input = c.GetProperty("input").GetString()!;
            if (input.TrimStart() is ['{' or '[' or '<', ..])
            {
                continue; // data and pages become a card first
            }

            Dish dish = Told.Read(input);
            HashSet<string> said = [.. Words(Understood.Write(new CardText(input), dish))];
            lost.AddRange(input.Split('\n').SelectMany(l => Words(ListNumber().Replace(l.Trim(), ""))).Where(w => !said.Contains(w)).Select(w => $"{c.GetProperty("id")}: {w}"));
            (cards, lines, rest) = (cards + 1, lines + input.Split('\n').Length, rest + Understood.Rest(new CardText(input), dish).Length);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{cards} cards, {lines} lines, {rest} beside the parts");
        Assert.True(cards > 250, $"{cards} cards");
        Assert.True(lost.Count == 0, string.Join("\n", lost));
        Assert.InRange(rest, 1, lines / 4);
    }

    private static IEnumerable<string> Words(string text) => Word().Matches(string.Concat(System.Net.WebUtility.HtmlDecode(text).Replace("℃", "°C", StringComparison.Ordinal).Replace("℉", "°F", StringComparison.Ordinal).Select(Narrow)).ToLower(CultureInfo.InvariantCulture)).Select(m => m.Value);

    // a character named by its entity is that character; a wide letter and a narrow one are one letter; the sign of an ordinal is printed for degrees
    private static char Narrow(char c) => c is >= '\uFF01' and <= '\uFF5D' ? (char)(c - 0xFEE0) : c == 'º' ? '°' : c;

    [GeneratedRegex(@"\p{L}+|\p{Nd}+")]
    private static partial Regex Word();

    // a number of a list, and the hollow bullet of a word processor
    [GeneratedRegex(@"^\d+[.)]|^o\t")]
    private static partial Regex ListNumber();
}
