using System.Text;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Cards.Tests;

/// <summary>No text makes a reader throw: mutated lines, steps, cards and sheets. Deterministic by seed; the long run takes ten million inputs and prints its seeds.</summary>
public sealed class FuzzTests
{
    private const int Fast = 100_000;
    private const int Long = 10_000_000;
    private static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];
    private static readonly string[] Pieces =
    [
        "200 g ", "½", "1/2 ", "(", ")", "((", "¹", "|", "|--|", "# ", "## ", "- ", "* ", "1. ", "\n", "\r\n", "\n\n", ":", "%", "°C", "°F", "180°C (400°F)", " or ", " and ", "salt", "2 x 400 g tin", "−", "1,5", "1.500", "３", "㏄", "大さじ2", "少々", "œufs", "Eßlöffel",
        "over night", "until", "•", "\u0301", "\uD83C", "\uDF4B", "\u0000", "\u200B", "\uFEFF", "&deg;", "&#x110000;", "<b>", "</b>", "[a](b)", "Serves 4", "Makes 12", "Keeps 3 days", "Total: ", "The same for two", "---", "===", "to taste", "#10 can", "9999999999999999999", "1e308", "0/0", "Method", "Day 1", "one plate: ",
    ];

    [Theory]
    [InlineData(20261010)]
    [InlineData(19)]
    public void No_mutated_text_makes_a_reader_throw(int seed)
    {
        int count = (LongRun.On ? Long : Fast) / 2;
        string[] corpus = Corpus();
        Random random = new(seed);
        for (int i = 0; i < count; i++)
        {
            string text = Mutated(corpus[random.Next(corpus.Length)], random);
            string lang = Languages[i % 6];
            try
            {
                switch (i % 8)
                {
                    case 0: Assert.NotNull(CardReader.Read(new CardText(text))); break;
                    case 1: Assert.NotNull(CardReader.ReadStep(text, lang)); break;
                    case 2 when i % 5 == 0: Assert.NotNull(OccasionReader.Read(text, new LocalDate(2026, 1, 1))); break;
                    default: Assert.NotNull(CardReader.ReadLine(text, lang)); break;
                }
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"seed {seed}, input {i}, {lang}: {e.GetType().Name} {e.Message}\n{Convert.ToHexString(Encoding.Unicode.GetBytes(text))}\n{text}\n{e.StackTrace}");
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{count} inputs, seed {seed}");
    }

    [Theory]
    [InlineData(501)]
    [InlineData(502)]
    public void No_mutated_card_loses_a_word(int seed)
    {
        string[] corpus = Corpus();
        Random random = new(seed);
        for (int i = 0; i < (LongRun.On ? 500_000 : 3000); i++)
        {
            string text = Coulisse.Gauge.Reading.Fuzz.Mutation.Of(corpus[random.Next(corpus.Length)], random, 900);
            if (CardReader.Read(new CardText(text)) is Parsed<Dish>.Ok { Value: var dish })
            {
                Assert.True(Coulisse.Gauge.Reading.Fuzz.Kept.Missing(text, dish) is null, $"seed {seed}, input {i}: {Coulisse.Gauge.Reading.Fuzz.Kept.Missing(text, dish)}\n{text}");
            }
        }
    }

    [Theory]
    [InlineData("# A\n\nForgotten label:\n\n## B\n- 5 g salt\n", null)]
    [InlineData("# A\n\n## B\n- 5 g salt\n\n1. Stir the salt.\n", null)]
    [InlineData("title: Plum slice\n\n## B\n- 5 g salt\n\n1. Stir the salt.\n", null)]
    public void The_look_for_lost_words_finds_what_is_gone(string text, string? missing)
    {
        Dish dish = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;

        Assert.Equal(missing, Coulisse.Gauge.Reading.Fuzz.Kept.Missing(text, dish));
        Assert.NotNull(Coulisse.Gauge.Reading.Fuzz.Kept.Missing(text + "\nquince\n", dish));
    }

    [Fact]
    public void Equal_text_gives_equal_readings_in_every_culture()
    {
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        string card = File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/cards/starter.md"));
        try
        {
            string[] readings = [.. new[] { "", "tr-TR", "de-DE", "ar-SA" }.Select(c =>
            {
                System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo(c);
                Dish d = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(card))).Value;
                return string.Join("\n", d.Components.SelectMany(x => x.Ingredients.SelectMany(l => l.Foods).Select(f => f.ToString()).Concat(x.Steps.Select(s => string.Join(",", s.Times) + string.Join(",", s.Temperatures) + s.Anchor))).Concat(d.Remarks.Select(r => r.ToString()))).Replace(',', '.');
            })];
            Assert.All(readings, r => Assert.Equal(readings[0].Length, r.Length));
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Seeds of mutation: the committed corpus and the demo cards.</summary>
    private static string[] Corpus()
    {
        string[] demo = [.. Directory.GetFiles(Path.Combine(SharedData.Repository, "examples/demo"), "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
        string[] lines = File.ReadAllText(Path.Combine(SharedData.Repository, "tests/Cards/corpus.txt")).Split("\n%%\n");
        return [.. lines, .. demo.SelectMany(d => d.Split("\n\n")).Where(p => p.Length > 10)];
    }

    private static string Mutated(string seed, Random random)
    {
        int from = seed.Length > 160 ? random.Next(seed.Length - 160) : 0;
        StringBuilder b = new(seed, from, Math.Min(160, seed.Length - from), 256);
        for (int k = random.Next(1, 7); k > 0; k--)
        {
            int at = b.Length == 0 ? 0 : random.Next(b.Length);
            switch (random.Next(5))
            {
                case 0 when b.Length > 0: b[at] = (char)random.Next(1, 0x3200); break;
                case 1 when b.Length > 0: b.Remove(at, Math.Min(random.Next(1, 12), b.Length - at)); break;
                case 2 when b.Length > 1: b.Insert(at, b.ToString(0, Math.Min(b.Length, 20))); break;
                default: b.Insert(at, Pieces[random.Next(Pieces.Length)]); break;
            }
        }

        return b.ToString();
    }
}
