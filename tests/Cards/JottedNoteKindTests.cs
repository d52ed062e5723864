using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Cards jotted at night, line by line without stops: heats without a sign, work without a verb, names of parts without a colon, yields in letters; each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class JottedNoteKindTests
{
    private static string Heats(string step, string lang) => string.Join(" | ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    private static string Foods(string line, string lang) => string.Join("; ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}")));

    private static string[] Timed(Dish d) => [.. d.Components.SelectMany(c => c.Steps).Where(s => !s.Times.IsEmpty).Select(s => string.Join(" ", s.Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}"))))];

    [Theory]
    [InlineData("200 30m → 170 45m", "en", "Oven 200 | Oven 170")]
    [InlineData("240 lid on 25m → 220 lid off 15m", "en", "Oven 240 | Oven 220")]
    [InlineData("pick up: 200 8m", "en", "Oven 200")]
    [InlineData("smoker 120 → 5h", "en", "Oven 120")]
    [InlineData("four 90 → 2h", "fr", "Oven 90")]
    [InlineData("horno 150 → 3h tapado", "es", "Oven 150")]
    [InlineData("forno 190 12m", "it", "Oven 190")]
    [InlineData("backen 190 → 20m", "de", "Oven 190")]
    [InlineData("destapar 210 10m", "es", "Oven 210")]
    [InlineData("prove 2h @ 27", "en", "Food 27")]
    [InlineData("core 63 abt 2h", "en", "Core 63")]
    [InlineData("kern 68", "de", "Core 68")]
    [InlineData("corazon 72", "es", "Core 72")]
    [InlineData("chauffer 80 verser", "fr", "Food 80")]
    [InlineData("retard o/n 5c", "en", "Food 5")]
    [InlineData("fridge 3c 12h", "en", "Fridge 3")]
    [InlineData("refroidir 3c cellule", "fr", "Food 3")]
    [InlineData("abatir a 3", "es", "Food 3")]
    public void A_bare_figure_is_a_heat_where_kit_an_arrow_a_time_or_the_middle_stands_beside_it(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("roll 120 balls 20m", "en")]
    [InlineData("scale 24 @ 55", "en")]
    [InlineData("four eggs 10m", "en")]
    [InlineData("simmer 200 ml stock 10m", "en")]
    [InlineData("core 12 apples", "en")]
    [InlineData("heat 60 ml oil 2m", "en")]
    [InlineData("add water 3c and chill", "en")]
    public void Beside_a_food_or_a_unit_it_is_none(string step, string lang) => Assert.Equal("", Heats(step, lang));

    [Theory]
    [InlineData("core 75c", "en")]
    [InlineData("retard o/n 4c", "en")]
    [InlineData("210 45m → 180 15m", "en")]
    [InlineData("core 82", "en")]
    [InlineData("kern 68", "de")]
    [InlineData("frigo 4c notte", "it")]
    public void Such_a_line_is_no_food(string line, string lang) => Assert.Equal(LineKind.Note, CardReader.ReadLine(line, lang).Kind);

    [Theory]
    [InlineData("salt 4c", "4 cup salt")]
    [InlineData("flour 2c", "2 cup flour")]
    [InlineData("cold water 3c", "3 cup water")]
    [InlineData("spuds 4kg wedges", "4 kg spuds")]
    [InlineData("blk pepper 60g coarse", "60 g blk pepper")]
    public void Cups_stay_cups_and_a_cut_stands_behind_a_weight(string line, string want) => Assert.Equal(want, Foods(line, "en"));

    [Theory]
    [InlineData("bauch 10kg schwarte einschneiden", "de", "10 kg bauch")]
    [InlineData("add 200g gruyere", "en", null)]
    [InlineData("then 12g salt", "en", null)]
    public void A_verb_of_work_behind_a_glued_weight_is_what_is_done(string line, string lang, string? want)
    {
        if (want is null)
        {
            Assert.DoesNotContain(CardReader.ReadLine(line, lang).Foods, f => f.Food is "add" or "then");
        }
        else
        {
            Assert.Equal(want, Foods(line, lang));
        }
    }

    [Fact]
    public void Heats_times_and_verbs_are_the_work_and_bare_names_the_parts()
    {
        Dish d = Read("ribs fri 12 ptns\nribs 4kg trim\nrub\nsalt 60g\nsugar 40g\nmop\ncider 300ml\nvinegar 100ml\nrub on, o/n fridge\nsmoker 120 → 5h mop hourly\ncore 93c\nrest 30m\npots 80g");

        Assert.Equal([": 4 kg ribs", "rub: 60 g salt", "rub: 40 g sugar", "mop: 300 ml cider", "mop: 100 ml vinegar"], Lines(d));
        Assert.Equal(5, d.Components.Sum(c => c.Steps.Length));
        Assert.Equal(["-", "300-300", "30-30"], Timed(d));
        Assert.Equal((12, "portions"), (d.Yields[0].Amount, d.Yields[0].Unit));
    }

    [Theory]
    [InlineData("pain au lait 40 st\nmehl 1kg\nbutter 200g\nmilch 500ml\nkneten 12m\nstockgare 1h\nwirken 60g\nbacken 190 → 12m", 3, "12-12 60-60 12-12", 40)]
    [InlineData("flan cafe 12p\nlait 1l\ncreme 500g\nsucre 150g\ninfuser a froid 1 nuit\nramequins 90g\nfour 95 → 55m\nfrigo 4h", 3, "- 55-55 240-240", 12)]
    [InlineData("arroz caldoso 15 rac\narroz 1kg\nagua 3l\nsofrito 400g\naceite 90ml\ncaldo+sofrito hervir 10m\narroz → 18m remover\nreposo 5m", 4, "10-10 18-18 5-5", 15)]
    [InlineData("schiacciata x3 teglie\nfarina 2kg\nacqua 1,4l\nsale 40g\nimpastare 10m\nlievitare 2h @ 28\nforno 240 → 14m", 3, "10-10 120-120 14-14", 3)]
    public void In_every_language(string note, int foods, string times, double makes)
    {
        Dish d = Read(note);

        Assert.Equal(foods, Lines(d).Length);
        Assert.Equal(times, string.Join(" ", Timed(d)));
        Assert.Equal(makes, d.Yields[0].Amount);
    }

    [Fact]
    public void A_food_without_an_amount_names_no_part() =>
        Assert.Equal([": 200 g flour", ":   gochujang", ": 3 piece eggs", ": 50 g sugar", ": 100 g butter"], Lines(Read("pancakes\nflour 200g\ngochujang\neggs 3\nsugar 50g\nbutter 100g\nfry 4m")));

    [Fact]
    public void A_second_dish_behind_a_blank_line_is_no_work()
    {
        Dish d = Read("two soups\n\nPUMPKIN, 10 portions\npumpkin 2kg\nstock 1l\ncream 200ml\nsimmer 25m\n\nLENTIL, 10 portions\nlentils 1kg\nstock 3l\nsimmer 45m");

        Assert.Equal(2, d.Components.Count(c => c.Ingredients.Length > 1));
    }

    [Theory]
    [InlineData("Cuire 12m.", "fr", "12-12")]
    [InlineData("kneten 12m, ruhen 1h", "de", "12-12 60-60")]
    [InlineData("Attacher avec 3m de ficelle.", "fr", "")]
    [InlineData("legare con 2m di spago", "it", "")]
    public void A_glued_m_is_minutes_and_of_string_metres(string step, string lang, string want) => Assert.Equal(want, string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}"))));

    [Theory]
    [InlineData("# Sticky toffee 12p", "en")]
    [InlineData("# Lamb, 2 racks", "en")]
    [InlineData("# Farine T55 500", "fr")]
    public void Letters_of_another_language_make_no_yield(string title, string lang)
    {
        Assert.NotEmpty(lang);
        Assert.DoesNotContain(Read(title + "\n\n- 200 g butter\n- 100 g sugar\n").Yields, y => y.Unit == "portions");
    }
}
