using Coulisse.Matter.Foods;

namespace Coulisse.Matter.Tests.Foods;

public sealed class FoodTableTests
{
    private static readonly FoodTable Table = FoodTable.Default;

    [Theory]
    [InlineData("whole milk", "en", "milk")]
    [InlineData("unsalted butter", "en", "butter")]
    [InlineData("cold unsalted butter", "en", "butter")]
    [InlineData("yolks", "en", "egg-yolk")]
    [InlineData("pasteurised egg yolk", "en", "egg-yolk")]
    [InlineData("walnut pieces", "en", "walnut")]
    [InlineData("gelatine powder", "en", "gelatine")]
    [InlineData("cold-pressed rapeseed oil", "en", "rapeseed-oil")]
    [InlineData("yellow mustard seed", "en", "mustard-seed")]
    [InlineData("pumpkin-seed paste", "en", "pumpkin-seed-paste")]
    [InlineData("Tomatoes", "en", "tomato")]
    [InlineData("pear slices", "en", "pear")]
    [InlineData("farine", "fr", "plain-flour")]
    [InlineData("beurre fondu", "fr", "butter")]
    [InlineData("œufs", "fr", "egg")]
    [InlineData("Süßrahmbutter", "de", "butter")]
    [InlineData("mantequilla", "es", "butter")]
    [InlineData("zucchero a velo", "it", "icing-sugar")]
    [InlineData("バター", "ja", "butter")]
    [InlineData("卵黄", "ja", "egg-yolk")]
    [InlineData("yuzu juice", "en", "yuzu-juice")]
    [InlineData("puff pastry", "en", "puff-raw")]
    [InlineData("fumet de poisson", "fr", "fish-stock")]
    [InlineData("削り節", "ja", "katsuobushi")]
    public void A_food_is_found_as_cooks_write_it(string written, string language, string id)
        => Assert.Equal(id, Table.Match(written, language)?.Id);

    [Theory]
    [InlineData("hazelnut butter")]
    [InlineData("oat milk")]
    [InlineData("camel's milk")]
    [InlineData("vegan butter")]
    [InlineData("buttercup")]
    [InlineData("dried samphire")]
    [InlineData("dried spinach")]
    [InlineData("pork liver parfait")]
    [InlineData("beef tomato paste")]
    [InlineData("mushroom ketchup")]
    [InlineData("")]
    public void A_food_that_is_not_held_is_left_unmatched(string written) => Assert.Null(Table.Match(written, "en"));

    [Fact]
    public void A_near_name_goes_to_its_own_food()
    {
        Assert.Equal("coconut-milk", Table.Match("coconut milk", "en")?.Id);
        Assert.Equal("peanut-butter", Table.Match("peanut butter", "en")?.Id);
        Assert.Equal("almond-butter", Table.Match("almond butter", "en")?.Id);
        Assert.Equal("goat-milk", Table.Match("goat's milk", "en")?.Id);
        Assert.Equal("cocoa-butter", Table.Match("cocoa butter", "en")?.Id);
    }

    [Fact]
    public void Every_name_of_every_food_finds_that_food()
    {
        List<string> lost = [];
        foreach (string id in Table.Ids)
        {
            foreach ((string language, System.Collections.Immutable.ImmutableArray<string> names) in Table.Find(id)!.Names)
            {
                lost.AddRange(names.Where(n => Table.Match(n, language)?.Id != id).Select(n => $"{language} {n}"));
            }
        }

        Assert.Empty(lost);
    }

    [Fact]
    public void Every_food_has_a_name_in_six_languages()
        => Assert.Empty(Table.Ids.Select(i => Table.Find(i)!).Where(f => f.Names.Count != 6 || f.Names.Values.Any(n => n.IsEmpty)).Select(f => f.Id));

    [Fact]
    public void Parts_sum_to_the_whole_or_the_row_says_why_not()
        => Assert.Empty(Table.Ids.Select(i => Table.Find(i)!).Where(f => (f.Composition.PartsSum is not { } s || Math.Abs(s - 100) > 2) && f.Why.Length == 0).Select(f => f.Id));

    [Fact]
    public void No_part_is_larger_than_the_whole_and_sugars_stay_within_carbohydrate()
        => Assert.Empty(Table.Ids.Select(i => Table.Find(i)!).Where(f => f.Composition is var c
            && (new[] { c.Water, c.Protein, c.Fat, c.Carbohydrate, c.Fibre, c.Ash, c.Alcohol, c.Acid }.Any(x => x is < 0 or > 100) || c.Sugars > c.Carbohydrate + 0.01 || c.Saturates > c.Fat + 0.01)).Select(f => f.Id));

    [Fact]
    public void Protein_in_the_EU_is_nitrogen_times_six_and_a_quarter()
        // Regulation (EU) 1169/2011 Annex I; worked for SR28 rows: flour 11.33, almond 25.52.
        => Assert.Equal(25.52, Table.Find("almond")!.Composition.ProteinEu!.Value, 0.01);

    [Fact]
    public void Cream_at_another_fat_keeps_its_parts_summing_to_the_same()
    {
        Composition cream = Table.Find("cream-35")!.Composition;

        Composition rich = cream.WithFat(48);

        Assert.Equal(48, rich.Fat);
        Assert.Equal(100 + ((cream.PartsSum!.Value - 100) * 52 / (100 - cream.Fat!.Value)), rich.PartsSum!.Value, 1e-9);
    }

    [Fact]
    public void Allergen_codes_are_those_of_the_map()
    {
        // "meat" is ours, for vegetarians, and no law's allergen.
        HashSet<string> codes = [.. Coulisse.Tests.SharedData.Rows("data/food/allergen-map.tsv").Select(r => r["code"])];

        Assert.Empty(Table.Ids.SelectMany(i => Table.Find(i)!.Contains.Concat(Table.Find(i)!.Depends)).Where(c => c != "meat" && !codes.Contains(c)).Distinct());
    }

    [Fact]
    public void A_food_is_found_from_three_ways_of_writing_it()
    {
        // As a heading writes it, in running text with a word of praise, and as two of them: none may lead to another food.
        List<string> lost = [];
        foreach (Food food in Table.Ids.Select(i => Table.Find(i)!))
        {
            string name = food.Names["en"][0];
            string[] ways = [name.ToUpperInvariant(), "good quality " + name, name.EndsWith('s') || name.EndsWith(')') ? name : name + "s"];
            lost.AddRange(ways.Where(w => Table.Match(w, "en")?.Id != food.Id).Select(w => $"{food.Id}: {w} → {Table.Match(w, "en")?.Id}"));
        }

        // "radishes" and the like need the plural their language has; a fiftieth may miss by a plain s, no more.
        Assert.True(lost.Count <= Table.Ids.Count() / 50, string.Join('\n', lost));
        Assert.DoesNotContain(lost, l => !l.EndsWith("→ ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_table_holds_at_least_fifteen_hundred_foods_none_of_them_twice()
    {
        Food[] all = [.. Table.Ids.Select(i => Table.Find(i)!)];
        Assert.True(all.Length >= 1500);

        // One source row may stand behind two foods only where they weigh differently (salts by the spoon, tomatoes by the piece) or one says what it is taken as.
        Assert.Empty(all.Where(f => f.Source != "our own parts").GroupBy(f => (f.Source, string.Join(';', f.Densities.Concat(f.Units).OrderBy(d => d.Key, StringComparer.Ordinal)))).Where(g => g.Count(f => f.Why.Length == 0) > 1).Select(g => $"{g.Key.Source}: {string.Join(", ", g.Select(f => f.Id))}"));
    }

    [Fact]
    public void No_two_foods_have_one_set_of_figures_unless_they_weigh_differently_or_say_why()
        => Assert.Empty(Table.Ids.Select(i => Table.Find(i)!)
            .Where(f => f.Composition.Water is not null)
            .GroupBy(f => (f.Composition, string.Join(';', f.Densities.Concat(f.Units).OrderBy(d => d.Key, StringComparer.Ordinal))))
            .Where(g => g.Count(f => f.Why.Length == 0) > 1)
            .Select(g => string.Join(", ", g.Select(f => f.Id))));

    [Fact]
    public void No_two_foods_share_a_name_in_a_language()
    {
        Dictionary<(string, string), string> names = [];
        List<string> shared = [];
        foreach (Food food in Table.Ids.Select(i => Table.Find(i)!))
        {
            foreach ((string language, string name) in food.Names.SelectMany(n => n.Value.Select(v => (n.Key, FoodName.Fold(v)))))
            {
                if (names.TryGetValue((language, name), out string? other) && other != food.Id)
                {
                    shared.Add($"{language} {name}: {other}, {food.Id}");
                }

                names[(language, name)] = food.Id;
            }
        }

        Assert.Empty(shared);
    }

    [Fact]
    public void Trans_fat_added_sugars_and_cholesterol_are_parts_of_what_holds_them_or_not_held()
    {
        Food[] all = [.. Table.Ids.Select(i => Table.Find(i)!)];
        Assert.Empty(all.Where(f => f.Composition.TransFat > f.Composition.Fat + 0.01 || f.Composition.AddedSugars > f.Composition.Sugars + 0.01 || f.Composition.CholesterolMilligrams is < 0 or > 3200).Select(f => f.Id));

        // 21 CFR 101.9(c)(6)(iii): sugar and honey are added sugars through and through, what a fruit or a milk has of its own is none, of a jam it is not known.
        Assert.Equal(Table.Find("honey")!.Composition.Sugars, Table.Find("honey")!.Composition.AddedSugars);
        Assert.Equal((0.0, 0.0), (Table.Find("apple")!.Composition.AddedSugars!.Value, Table.Find("milk")!.Composition.AddedSugars!.Value));
        Assert.Null(Table.Find("strawberry-jam")!.Composition.AddedSugars);
    }

    [Fact]
    public void Energy_agrees_with_what_its_source_lists_or_the_row_says_so()
    {
        Dictionary<string, double> listed = new(StringComparer.Ordinal);
        foreach (IReadOnlyDictionary<string, string> r in Coulisse.Tests.SharedData.Rows("data/food/ciqual-2020.tsv").Where(r => r["energy_eu_kj"].Length > 0 && char.IsAsciiDigit(r["energy_eu_kj"][0])))
        {
            listed["Ciqual 2020 " + r["code"]] = double.Parse(r["energy_eu_kj"], System.Globalization.CultureInfo.InvariantCulture);
        }

        Food[] rows = [.. Table.Ids.Select(i => Table.Find(i)!).Where(f => listed.ContainsKey(f.Source))];
        Assert.True(rows.Length > 250);
        Assert.Empty(rows.Where(f => FoodEnergy.EuKilojoules(f.Composition) is { } own && Math.Abs(own - listed[f.Source]) > Math.Max(15, 0.035 * listed[f.Source]) && !f.Why.Contains("its parts make", StringComparison.Ordinal))
            .Select(f => FormattableString.Invariant($"{f.Id}: {FoodEnergy.EuKilojoules(f.Composition):0} against {listed[f.Source]:0}")));
    }
}
