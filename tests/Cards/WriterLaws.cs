using System.Text.Json;
using Coulisse.Cards.Writing;
using Coulisse.Tests;
using CsCheck;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>read(write(d)) gives d again, places in the text aside; marks find their steps after edits.</summary>
public sealed class WriterLaws
{
    private static string Pick(int i, params string[] of) => of[i % of.Length];

    /// <summary>Everything of a dish but where it stood, and the oven figure a step inherits: in a method written for several parts it may come from a step that now stands in another part.</summary>
    private static string Content(Dish d) => string.Join('\n', new[] { d.Title }
        .Concat(d.Yields.Select(y => FormattableString.Invariant($"yield {y.Amount} {y.AmountMax} {y.Unit}")))
        .Concat(d.Plate.Select(p => p.ToString()))
        .Concat(d.Components.SelectMany(c => new[] { $"## {c.Name}" }
            .Concat(c.Makes.Select(y => FormattableString.Invariant($"makes {y.Amount} {y.Unit} {y.EachGrams}"))).Concat(c.Keeps.Select(k => FormattableString.Invariant($"keeps {k.Hours} {k.Celsius} {k.Where}")))
            .Concat(c.Vessels.Select(v => v.Kind + string.Join('x', v.Millimetres)))
            .Concat(c.Ingredients.SelectMany(l => l.Foods.Select(f => $"{l.Group} {f}").DefaultIfEmpty($"{l.Kind} {l.Text}")))
            .Concat(c.Steps.Select(s => $"{s.Text} {s.Anchor} {string.Join(',', s.Times)} {string.Join(',', s.Temperatures.Where(t => !t.Inherited))}"))
            .Concat(c.Notes.Select(n => n.Text))))
        .Concat(d.Variants.SelectMany(v => v.Ingredients).Select(l => l.Text))
        .Concat(d.Notes.Select(n => n.Text)));

    [Fact]
    public void Demo_cards_come_back_as_they_went()
    {
        foreach (string file in Directory.GetFiles(Path.Combine(SharedData.Repository, "examples/demo/cards"), "*.md"))
        {
            Dish d = Read(File.ReadAllText(file));
            Assert.Equal(Content(d), Content(Read(CardWriter.Write(d))));
        }
    }

    [Fact]
    public void Shared_cards_come_back_as_they_went_and_writing_twice_changes_nothing()
    {
        foreach (JsonElement c in new[] { "data/reading/cases.jsonl", "data/reading/cases-2.jsonl" }.SelectMany(f => File.ReadLines(SharedData.Path(f))).Select(l => JsonDocument.Parse(l).RootElement))
        {
            if (c.GetProperty("kind").GetString() == "card" && c.GetProperty("input").GetString() is { } input && input[0] != '{')
            {
                Dish d = Read(input);
                string once = CardWriter.Write(d);
                Assert.Equal(c.GetProperty("id").GetString() + "\n" + Content(d), c.GetProperty("id").GetString() + "\n" + Content(Read(once)));
                Assert.Equal(once, CardWriter.Write(Read(once)));
            }
        }
    }

    [Fact]
    public void read_of_write_is_identity_on_made_up_cards()
    {
        Gen<string> food = Gen.Int[0, 99].Select(i => Pick(i, "quince", "brown butter", "rye flour", "egg yolk", "leaf gelatine, 200 bloom", "hazelnuts, toasted", "cream 35 %"));
        Gen<string> item = Gen.Select(Gen.Int[1, 900], Gen.Int[0, 99].Select(i => Pick(i, "g", "ml", "kg", "tbsp")), food).Select((n, u, f) => $"- {n} {u} {f}");
        Gen<string> step = Gen.Int[0, 99].Select(i => Pick(i, "Boil 5 min.", "Bake at 180 °C for 20 to 25 min, until golden.", "Chill overnight.", "Fold in the cream; set 2 h."));
        Gen<string> part = Gen.Select(Gen.Int[0, 99].Select(i => Pick(i, "Gel", "Crumb", "C3 Base", "Sponge, 24 cm")), item.Array[1, 6], step.Array[1, 4], Gen.Int[0, 99].Select(i => Pick(i, "", "Keeps 3 days at 3 °C.", "Makes 1.4 kg."))).Select((n, items, steps, says) =>
            $"## {n}\n{says}\n\n{string.Join('\n', items)}\n\n{string.Join('\n', steps.Select((s, i) => $"{i + 1}. {s}"))}\n");

        part.Array[1, 4].Sample(parts =>
        {
            Dish d = Read("# Plate\n\n" + string.Join('\n', parts));
            Assert.Equal(Content(d), Content(Read(CardWriter.Write(d))));
        }, iter: 300);
    }

    [Fact]
    public void A_mark_follows_its_step_when_it_is_moved_reworded_or_split_and_is_loose_when_it_is_gone()
    {
        const string Card = "# P\n\n## Gel\n- 200 g quince\n\n1. Boil the quince with the agar for two minutes.\n2. Set in the frame for two hours.\n\n## Crumb\n- 90 g rye\n\n1. Toast the rye.";
        Step marked = Read(Card).Components[0].Steps[0];
        FoundStep? Find(string card) => AnchorFinder.Find(Read(card), marked.Anchor, marked.Text);

        Assert.Equal("same", Find(Card)!.How);
        Assert.Equal(("moved", "Crumb"), (Find(Moved())!.How, Find(Moved())!.Component));
        Assert.Equal("reworded", Find(Card.Replace("for two minutes", "for three minutes", StringComparison.Ordinal))!.How);
        Assert.Equal("Boil the quince with the agar.", Find(Card.Replace("1. Boil the quince with the agar for two minutes.", "1. Boil the quince with the agar.\n2. Keep it there for two minutes.", StringComparison.Ordinal))!.Step.Text);
        Assert.Null(Find(Card.Replace("1. Boil the quince with the agar for two minutes.\n", "", StringComparison.Ordinal)));

        static string Moved() => "# P\n\n## Gel\n- 200 g quince\n\n1. Set in the frame for two hours.\n\n## Crumb\n- 90 g rye\n\n1. Boil the quince with the agar for two minutes.";
    }
}
