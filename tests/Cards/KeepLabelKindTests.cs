using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>How long a thing keeps, told by the labels of a kitchen, by places and days alone, or with months by their letter. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KeepLabelKindTests
{
    private static Dish Card(string lang, string line) => Told.Read(lang switch
    {
        "fr" => $"# Confiture\n\n- 500 g prunes\n- 300 g sucre\n\n1. Cuire les prunes avec le sucre 20 min.\n\n{line}\n",
        "de" => $"# Marmelade\n\n- 500 g Pflaumen\n- 300 g Zucker\n\n1. Die Pflaumen mit dem Zucker 20 Minuten kochen.\n\n{line}\n",
        "es" => $"# Mermelada\n\n- 500 g ciruelas\n- 300 g azúcar\n\n1. Cocer las ciruelas con el azúcar 20 minutos.\n\n{line}\n",
        "it" => $"# Marmellata\n\n- 500 g prugne\n- 300 g zucchero\n\n1. Cuocere le prugne con lo zucchero 20 minuti.\n\n{line}\n",
        "ja" => $"# ジャム\n\n材料\nプラム 500g\n砂糖 300g\n\n作り方\n1. プラムと砂糖を20分煮る。\n\n{line}\n",
        _ => $"# Jam\n\n- 500 g plums\n- 300 g sugar\n\n1. Boil the plums with the sugar 20 min.\n\n{line}\n",
    });

    private static string Kept(Dish dish) => string.Join(" | ", dish.Components.SelectMany(c => c.Keeps).Select(k => FormattableString.Invariant($"{(k.Where.Length > 0 ? k.Where : "?")} {k.Hours}")));

    [Theory]
    [InlineData("fr", "DLC : 3 jours", "? 72")]
    [InlineData("fr", "DLC : J+3", "? 72")]
    [InlineData("fr", "DDM 6 mois", "? 4320")]
    [InlineData("fr", "Temps : 2 h | DLC : J+3", "? 72")]
    [InlineData("de", "MHD 5 Tage", "? 120")]
    [InlineData("de", "MHD: 3 Monate tiefgekühlt", "freezer 2160")]
    [InlineData("de", "Verbrauchsdatum: 2 Tage", "? 48")]
    [InlineData("es", "Vida útil: 4 días", "? 96")]
    [InlineData("es", "Caducidad: 3 días en nevera", "fridge 72")]
    [InlineData("it", "Scadenza: 4 giorni", "? 96")]
    [InlineData("it", "TMC 6 mesi", "? 4320")]
    [InlineData("ja", "消費期限：冷蔵で3日", "fridge 72")]
    [InlineData("ja", "賞味期限 2週間", "? 336")]
    [InlineData("en", "Best before 6 months", "? 4320")]
    [InlineData("en", "- Use by: 3 days", "? 72")]
    public void A_label_before_days_is_keeping_and_no_step(string lang, string line, string want)
    {
        Dish dish = Card(lang, line);

        Assert.Equal(want, Kept(dish));
        Assert.Single(dish.Components.SelectMany(c => c.Steps));
    }

    [Theory]
    [InlineData("fr", "DLC : 12/05")]
    [InlineData("ja", "消費期限 12月3日")]
    [InlineData("de", "MHD: siehe Etikett")]
    public void A_date_behind_the_label_says_not_how_long(string lang, string line) => Assert.Equal("", Kept(Card(lang, line)));

    [Theory]
    [InlineData("it", "In frigo 2-3 giorni", "fridge 72")]
    [InlineData("fr", "Au frigo 2 à 3 jours.", "fridge 72")]
    [InlineData("de", "Im Kühlschrank 3 Tage", "fridge 72")]
    [InlineData("en", "Fridge: 3 days", "fridge 72")]
    [InlineData("en", "3d fridge / 3m freezer", "fridge 72 | freezer 2160")]
    [InlineData("en", "Fridge 3d, freezer 3m", "fridge 72 | freezer 2160")]
    [InlineData("en", "Soak the beans 2 days in the fridge first.", "")]
    [InlineData("en", "Fridge: 3 hours", "")]
    public void Places_and_days_and_no_other_word_are_keeping(string lang, string line, string want) => Assert.Equal(want, Kept(Card(lang, line)));

    [Theory]
    [InlineData("Label: 3d fridge / 3m freezer", "fridge 3 | freezer 90", 0)]
    [InlineData("Portion and keep 3d fridge, 3m freezer.", "fridge 3 | freezer 90", 0)]
    [InlineData("Freezer 10m until firm", "", 1)]
    [InlineData("Cool, vacuum, DLC J+3.", " 3", 0)]
    public void In_a_step_months_stand_beside_a_freezer_only_where_keeping_is_spoken_of(string step, string want, int times)
    {
        Step read = CardReader.ReadStep(step, "en");

        Assert.Equal(want, string.Join(" | ", read.Storage.Select(s => FormattableString.Invariant($"{s.Where} {s.Days}"))));
        Assert.Equal(times, read.Times.Length);
    }

    [Theory]
    [InlineData("Keeps 2 months at -18 to -22 °C.", -22, -18, "freezer")]
    [InlineData("Keeps 3 days at 2-4 °C.", 2, 4, "fridge")]
    public void Both_ends_of_the_cold_are_kept(string line, double low, double high, string where)
    {
        Keeping kept = Assert.Single(Card("en", line).Components.SelectMany(c => c.Keeps));

        Assert.Equal((low, high, where), (kept.Celsius, kept.CelsiusMax, kept.Where));
        Assert.Equal(high, kept.Warmest);
    }
}
