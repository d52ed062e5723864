using System.Text.Json;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Tests;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>An answer replaces the words asked about and nothing else; read again, the question is gone and as many lines and steps stand there.</summary>
public sealed class AnswerLaws
{
    private const string Raised = """
        # Raised

        | | 20 cm tin | 30 cm tin |
        |---|---|---|
        | Butter | 175 g | 390 g |
        | Sugar | 250 g | 560 g |

        ## Rest
        - 2 cups flour
        - 1OO g very soft butter
        - 100 caster sugar, sifted
        - 2 glasses of cold milk, warmed
        - 1 tin chopped tomatoes, drained
        - 4 cloves
        - 20 m cream
        - 100g icing sugar 100 g rice flour 100g melted butter
        - 200 g (225 g) walnuts, chopped
        - salt: −5 g
        - 2 1 stock

        1. Bake for 1O minutes.
        """;

    private const string Bare = "# Bare\n\n- 2 cups flour\n- 1 cup butter\n\n1. Rub 1 stick of butter into 180 g flour. Bake at **180** for 30 minutes, turn.\n";

    private static IEnumerable<string> Cards()
    {
        yield return Raised;
        yield return Bare;
        yield return Bare.Replace("Bake at **180**", "Preheat oven to 350", StringComparison.Ordinal);
        foreach (string file in Directory.GetFiles(Path.Combine(SharedData.Repository, "examples/demo/cards"), "*.md"))
        {
            yield return File.ReadAllText(file).ReplaceLineEndings("\n");
        }

        foreach (string set in new[] { "", "-2", "-3", "-4", "-5", "-6" })
        {
            foreach (JsonElement c in File.ReadLines(Path.Combine(SharedData.Repository, $"tests/Cards/cases{set}.jsonl")).Select(l => JsonDocument.Parse(l).RootElement))
            {
                if (c.GetProperty("input").GetString() is { Length: > 0 } input && input[0] is not ('{' or '<'))
                {
                    yield return (c.GetProperty("kind").GetString() switch { "line" => $"# A\n\n- {input}\n- 1 cup flour\n", "step" => $"# A\n\n- 1 cup flour\n\n1. {input}\n", _ => input }).ReplaceLineEndings("\n");
                }
            }
        }
    }

    /// <summary>What an answer does wrong; null when it does right.</summary>
    private static string? Fault(string card, Dish before, Doubt q, Candidate answer)
    {
        if (q.Asked is null)
        {
            string told = AnswerOnCard.WriteSentence(card, answer.Plain);
            told = told.EndsWith($"\n\n## Notes\n\n{answer.Plain}\n", StringComparison.Ordinal) ? told.Replace("## Notes\n\n" + answer.Plain, answer.Plain, StringComparison.Ordinal) : told;
            return told.Replace(answer.Plain, "", StringComparison.Ordinal).Where(c => !char.IsWhiteSpace(c)).SequenceEqual(card.Where(c => !char.IsWhiteSpace(c))) ? Asked(AnswerOnCard.WriteSentence(card, answer.Plain)) : "something is lost";
        }

        if (AnswerOnCard.Write(card, q.Line, q.Asked, answer.Plain) is not { } written)
        {
            return "nothing was written";
        }

        if (answer.Plain == q.Asked)
        {
            return written == card ? null : "left, and yet changed";
        }

        int start = Enumerable.Range(0, card.Length).Count(i => i < written.Length && card.AsSpan(0, i + 1).SequenceEqual(written.AsSpan(0, i + 1)));
        int end = 0;
        while (end < Math.Min(card.Length, written.Length) - start && card[^(end + 1)] == written[^(end + 1)])
        {
            end++;
        }

        // What went, with the words around it, is within what was asked about.
        string gone = Plain(card[start..(card.Length - end)]);
        return Plain(q.Asked).Contains(gone, StringComparison.Ordinal) ? Asked(written) : $"“{gone}” is gone";

        string? Asked(string text)
        {
            Dish after = Read(text);
            return after.Doubts.Any(d => d.Line == q.Line && (d.Question == q.Question || (d.Asked is not null && d.Asked == q.Asked))) || after.Doubts.Length >= before.Doubts.Length ? "it is asked again"
                : Count(after) != Count(before) ? $"{Count(before)} became {Count(after)}" : null;
        }

        static (int, int, int) Count(Dish d) => (d.Components.Length, d.Components.Sum(c => c.Ingredients.Length), d.Components.Sum(c => c.Steps.Length));

        static string Plain(string s) => string.Join(' ', s.Replace('−', '-').Replace('⁄', '/').Replace("*", "", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static (int Answers, List<string> Faults) Try(IEnumerable<string> cards)
    {
        (int answers, List<string> faults) = (0, []);
        foreach (string card in cards)
        {
            if (CardReader.Read(new CardText(card)) is not Parsed<Dish>.Ok(var dish))
            {
                continue;
            }

            foreach (Doubt q in dish.Doubts)
            {
                foreach (Candidate answer in q.Candidates)
                {
                    answers++;
                    if (Fault(card, dish, q, answer) is { } fault)
                    {
                        faults.Add($"{fault}: {q.Question} [{q.Asked}] → [{answer.Plain}]");
                    }
                }
            }
        }

        return (answers, faults);
    }

    [Fact]
    public void Every_question_of_a_card_is_settled_by_its_answers_and_nothing_else_changes()
    {
        (int answers, List<string> faults) = Try(Cards());

        Assert.True(answers > 150, $"only {answers} answers were tried");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Theory]
    [InlineData(20261129)]
    [InlineData(7)]
    public void So_it_is_on_spoiled_cards_too(int seed)
    {
        // Of a spoiled text only this is asked: nothing but the words asked about is gone.
        Random random = new(seed);
        string[] cards = [.. Cards()];
        (_, List<string> faults) = Try(Enumerable.Range(0, 600).Select(_ => Gauge.Reading.Fuzz.Mutation.Of(cards[random.Next(cards.Length)], random, 1500)));

        Assert.DoesNotContain(faults, f => f.StartsWith('“') || f.StartsWith("something", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Bake at 180 for 30 minutes.", "180 °C", "Bake at 180 °C for 30 minutes.")]
    [InlineData("Preheat oven to 350.", "350 °F", "Preheat oven to 350 °F.")]
    [InlineData("Preheat oven to 350.", "350 °C", "Preheat oven to 350 °C.")]
    public void A_scale_is_written_behind_the_figure_as_it_is_printed(string step, string answer, string expected)
    {
        string card = "# A\n\n- 2 cups flour\n- 1 cup butter\n\n1. Rub butter and flour. " + step;
        Doubt q = Assert.Single(Read(card).Doubts);

        Assert.Equal(card.Replace(step, expected, StringComparison.Ordinal), AnswerOnCard.Write(card, q.Line, q.Asked!, q.Candidates.Single(c => c.Text == answer).Plain));
    }

    [Fact]
    public void Every_kind_of_question_is_among_them()
    {
        string[] asked = [.. Read(Raised).Doubts.Concat(Read(Bare).Doubts).Select(d => d.Question)];

        Assert.All(new[] { "of which scale", "should. Is it", "should. Is “", "of which unit", "glass hold", "tin hold", "the spice, or garlic", "no unit of amount", "of two foods", "for one amount", "a minus", "second figure a litre", "in another size" }, kind => Assert.Contains(asked, q => q.Contains(kind, StringComparison.Ordinal)));
    }
}
