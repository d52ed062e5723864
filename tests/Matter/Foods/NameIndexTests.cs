using Coulisse.Matter.Foods;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>The index of names against a plain and slow statement of the same rule, over every name of every language in all six languages.</summary>
public sealed class NameIndexTests
{
    private static readonly PlainNames Plain = new(ReferenceTable.Load("foods/foods.tsv"));

    [Fact]
    public void Every_name_means_in_every_language_what_the_plain_rule_says() => Same(a => a, 70_000);

    [Fact]
    public void So_does_every_name_in_capitals() => Same(a => a.ToUpperInvariant(), 70_000);

    [Fact]
    public void So_does_every_name_with_an_s_behind_it() => Same(a => a + "s", 50_000);

    [Fact]
    public void So_does_every_name_with_an_n_behind_it() => Same(a => a + "n", 1000);

    [Fact]
    public void A_harmless_word_in_front_changes_the_confidence_only()
    {
        int held = 0;
        List<string> wrong = [];
        foreach (string alias in Plain.Aliases)
        {
            string bare = PlainRule.Fold(alias);
            foreach (string language in PlainNames.Languages)
            {
                string cold = "cold " + bare;
                FoodMatch? expected = Plain.Named(cold, language, 1, 0.97, 0.95) ?? (PlainNames.IsUnsure(bare, language) ? null : Plain.Named(bare, language, 0.9, 0.9, 0.9));
                if (expected is not null)
                {
                    held++;
                    Compare(expected, cold, language, wrong);
                }
            }
        }

        Assert.Empty(wrong);
        Assert.True(held > 70_000, $"only {held} names had a food");
    }

    [Fact]
    public void Every_form_has_the_key_the_plain_rule_says()
    {
        string[] endings = ["", "s", "x", "es", "ies", "oes", "ves", "ces", "e", "er", "en", "em", "eln", "ern", "n", "a", "o", "i", "io", "he", "hi", "go"];
        foreach (string word in Plain.Aliases.Select(PlainRule.Fold).Concat(["blanche", "fraiche", "mure", "eier", "oca", "ab", ""]).Distinct())
        {
            foreach (string text in endings.Select(e => word + e).Append($"x {word} x"))
            {
                Assert.Equal(PlainRule.Singular(text), FoodName.Singular(text));
                foreach (string language in PlainNames.Languages)
                {
                    Assert.Equal(PlainRule.Form(text, language), FoodForms.Key(text, language));
                }
            }
        }
    }

    [Fact]
    public void Two_foods_of_one_id_are_refused()
    {
        const string Head = "# Title: t\n# Source: s\n# Licence: l\n# Opened: o\n# Units: u\nid\ten\tfr\tde\tes\tit\tja\n";

        ArgumentException refused = Assert.Throws<ArgumentException>(() => new FoodTable(ReferenceTable.Read("x", new StringReader(Head + "a\tleek\t\t\t\t\t\na\tchive\t\t\t\t\t\n"))));

        Assert.Contains("Key: a", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_its_own_is_indexed_in_any_script_and_length()
    {
        string longName = string.Join(' ', Enumerable.Repeat("½ Äpfel", 60));
        string table = "# Title: t\n# Source: s\n# Licence: l\n# Opened: o\n# Units: u\nid\tja\tit\tes\tde\tfr\ten\n" + $"a\t\t\t\t{longName}\tпоро́в\tleeks;;chive\nb\t\t\t\t\tleek\t\n";
        FoodTable foods = new(ReferenceTable.Read("x", new StringReader(table)));

        Assert.Equal(new FoodMatch("a", 1, longName), foods.Match(longName, "de"));
        Assert.Equal(new FoodMatch("a", 0.9, "поро́в"), foods.Match("ПОРОВ", "en"));
        Assert.Equal(new FoodMatch("a", 1, "chive"), foods.Match("Chive", "en"));
        Assert.Equal(new FoodMatch("b", 1, "leek"), foods.Match("leek", "fr"));
        // In a third language the two foods that share the word leave it open.
        Assert.Null(foods.Match("leek", "es"));
    }

    /// <summary>Holds a way of writing every name against the plain rule; where that knows no food and the name is one word, there is none.</summary>
    private static void Same(Func<string, string> write, int atLeast)
    {
        int held = 0;
        List<string> wrong = [];
        foreach (string alias in Plain.Aliases)
        {
            string written = write(alias);
            string folded = PlainRule.Fold(written);
            foreach (string language in PlainNames.Languages)
            {
                FoodMatch? expected = PlainNames.IsUnsure(folded, language) ? null : Plain.Named(folded, language, 1, 0.97, 0.95);
                if (expected is not null || !folded.Contains(' ') || PlainNames.IsUnsure(folded, language))
                {
                    held += expected is null ? 0 : 1;
                    Compare(expected, written, language, wrong);
                }
            }
        }

        Assert.Empty(wrong);
        Assert.True(held > atLeast, $"only {held} names had a food");
    }

    private static void Compare(FoodMatch? expected, string written, string language, List<string> wrong)
    {
        FoodMatch? found = FoodTable.Default.Match(written, language);
        if (found != expected)
        {
            wrong.Add($"{language} {written}: {found}, should be {expected}");
        }
    }
}
