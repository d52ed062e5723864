namespace Coulisse.Commands.Tests;

/// <summary>What cannot be is refused by every command that would build on it; own foods and trials reach the commands.</summary>
public sealed class FoodCommands : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-foods-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private Ran Run(string card, params string[] arguments)
    {
        File.WriteAllText(Path.Combine(_folder, "card.md"), card);
        return Bench.In(_folder, arguments);
    }

    private const string Circle = "# X\n\nServes 8.\n\n## C1 Base\n\n- 100 g C2 Top\n- 100 g sugar\n\n1. Mix, 5 min.\n\n## C2 Top\n\n- 100 g C1 Base\n\n1. Mix, 5 min.\n";

    [Theory]
    [InlineData("weigh")]
    [InlineData("mixture")]
    [InlineData("label")]
    [InlineData("safety")]
    [InlineData("scale", "--covers", "4")]
    public void A_circle_of_parts_stops_the_commands_of_a_card(params string[] command)
    {
        Ran ran = Run(Circle, [command[0], "card.md", .. command.Skip(1)]);
        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.Contains("WGH007", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 14", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("cost", "--prices", "prices.csv")]
    [InlineData("order", "--prices", "prices.csv")]
    [InlineData("diets")]
    [InlineData("print", "--out", "papers")]
    public void A_circle_of_parts_stops_the_commands_of_an_occasion(params string[] command)
    {
        File.WriteAllText(Path.Combine(_folder, "prices.csv"), "item,supplier,pack,unit,price,currency\nsugar,near,1000,g,2,D\n");
        File.WriteAllText(Path.Combine(_folder, "occasion.md"), File.ReadAllText(Bench.Demo("occasion.md")));
        Directory.CreateDirectory(Path.Combine(_folder, "cards"));
        foreach (string file in Directory.EnumerateFiles(Bench.Demo("cards")))
        {
            File.Copy(file, Path.Combine(_folder, "cards", Path.GetFileName(file)));
        }

        string starter = Path.Combine(_folder, "cards", "starter.md");
        File.WriteAllText(starter, File.ReadAllText(starter) + "\n\n## Z1 One\n\n- 10 g Z2 Two\n\n1. Stir.\n\n## Z2 Two\n\n- 10 g Z1 One\n\n1. Stir.\n");
        Ran ran = Bench.In(_folder, [command[0], "occasion.md", .. command.Skip(1)]);

        Assert.Equal(1, ran.Exit);
        Assert.Contains("WGH007", ran.Error, StringComparison.Ordinal);
        Assert.Contains("cards/starter.md", ran.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "papers")));
    }

    [Fact]
    public void A_loss_above_the_water_there_is_has_no_label()
    {
        Ran ran = Run("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 400 g.\n", "label", "card.md");
        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.Contains("MIX002", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 6", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, Run("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 550 g.\n", "label", "card.md").Exit);
    }

    [Fact]
    public void A_trial_sheet_goes_before_what_a_kind_of_bake_loses_and_as_mixed_leaves_both_out()
    {
        const string Card = "# Cake\n\n- 250 g plain flour\n- 250 g caster sugar\n- 250 g butter\n- 250 g egg\n\n1. Beat.\n2. Bake at 170 °C for 40 min.\n";
        File.WriteAllText(Path.Combine(_folder, "trial.md"), "# Trial of Cake\n\nMade on 2026-03-01 by Ada. Good run.\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Cake | 1000 | 850 | |\n");

        Assert.Equal("as its method leaves it, 900 g (880 to 920 g) of 1000 g mixed", Run(Card, "label", "card.md", "--json").Json.GetProperty("panel").GetProperty("basis").GetString());
        Assert.Equal("as its method leaves it, 850 g of 1000 g mixed", Run(Card, "label", "card.md", "--trial", "trial.md", "--json").Json.GetProperty("panel").GetProperty("basis").GetString());
        Assert.Equal("as mixed", Run(Card, "label", "card.md", "--as-mixed", "--json").Json.GetProperty("panel").GetProperty("basis").GetString());
        Assert.Contains("850 g", Run(Card, "mixture", "card.md", "--trial", "trial.md").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_house_names_its_foods_for_heat_and_search_and_a_cure_is_told_its_nitrite()
    {
        File.WriteAllText(Path.Combine(_folder, "our-foods.csv"), "name,also,source,water,protein,fat,carbohydrate,ash\nhouse curd,farm curd,dairy's label,70,12,14,3,1\n");
        Assert.Contains("house curd", Run("# X\n", "foods", "farm").Out, StringComparison.Ordinal);
        Assert.Contains("house curd: Choi and Okos", Run("# X\n", "heat", "freeze", "--shape", "slab", "--size", "30mm", "--start", "5", "--medium", "-30", "--h", "30", "--food", "house curd", "--until", "-10").Out, StringComparison.Ordinal);
        Assert.Contains("meet at", Run("# X\n", "heat", "mix", "500 g house curd at 5", "500 g water at 80").Out, StringComparison.Ordinal);

        // FSIS handbook 7620.3: 6.24 g of 6.25 % on 2,500 g is 156 mg/kg.
        Assert.Contains("156 mg of sodium nitrite into 1 kg", Run("# Cure\n\n- 2500 g beef brisket\n- 6.24 g curing salt, 6.25 % nitrite\n\n1. Rub.\n", "mixture", "card.md").Out, StringComparison.Ordinal);
        Assert.Contains("does not say how much nitrite", Run("# Cure\n\n- 2500 g beef brisket\n- 6.24 g curing salt\n\n1. Rub.\n", "mixture", "card.md").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("nitrite", Run("# Brine\n\n- 2500 g beef brisket\n- 6.24 g fine sea salt\n\n1. Rub.\n", "mixture", "card.md").Out, StringComparison.Ordinal);
    }
}
