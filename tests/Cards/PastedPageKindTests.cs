using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Pages of manuals and books pasted from their PDF: columns side by side, heads of pages inside sentences, numbers of chapters, bullets that came out as letters; each beside a near miss. Our own examples.</summary>
public sealed class PastedPageKindTests
{
    [Theory]
    [InlineData("CLAMS                                serves 4\n\nINGREDIENTS                  METHOD\n2 kg clams, purged           1  Sweat the shallots over a\n50 g butter                     gentle heat for 8 minutes.\n3 shallots, sliced           2  Pour in the wine and boil for\n400 ml white wine               3 minutes, then cover.\n                             3  Cook 5 minutes, shaking.\n                                                   – 23 –\n", "2 kg clams|50 g butter|3 piece shallots|400 ml white wine", "Sweat the shallots over a gentle heat for 8 minutes.|Pour in the wine and boil for 3 minutes, then cover.|Cook 5 minutes, shaking.")]
    [InlineData("GAZPACHO\n\nINGREDIENTES             PREPARACIÓN\n2 kg de tomates          1 Trocear y macerar\n1 pepino                   30 minutos con la sal.\n15 g de sal              2 Triturar 3 minutos y\n150 ml de aceite           enfriar 2 horas.\n", "2 kg tomates|1 piece pepino|15 g sal|150 ml aceite", "Trocear y macerar 30 minutos con la sal.|Triturar 3 minutos y enfriar 2 horas.")]
    [InlineData("TARTE\n\nPRÉPARATION                      INGRÉDIENTS\n1. Foncer et cuire à blanc       250 g de pâte\n   18 minutes à 165 °C.          4 œufs\n2. Garnir, prendre 2 heures      180 g de sucre\n   au froid.                     120 g de beurre\n", "250 g pâte|4 piece œufs|180 g sucre|120 g beurre", "Foncer et cuire à blanc 18 minutes à 165 °C.|Garnir, prendre 2 heures au froid.")]
    [InlineData("SUPPE\n\nZUTATEN                 ZUBEREITUNG\n300 g Linsen            Den Speck im Topf\n120 g Speck             8 Minuten anbraten.\n1 l Brühe               Linsen und Brühe zu-\n2 EL Essig              geben, 40 Minuten garen.\n", "300 g Linsen|120 g Speck|1 l Brühe|2 tbsp Essig", "Den Speck im Topf 8 Minuten anbraten.|Linsen und Brühe zugeben, 40 Minuten garen.")]
    public void A_list_and_its_method_side_by_side_are_read_column_by_column(string page, string lines, string steps)
    {
        Dish d = Read(page);

        Assert.Equal(lines.Split('|'), Lines(d).Select(l => l.TrimStart(':', ' ')));
        Assert.Equal(steps.Split('|'), Steps(d).Select(l => l.TrimStart(':', ' ')));
    }

    [Theory]
    [InlineData("CLAMS\n\nIngredients          Method\n\n2 kg clams\n50 g butter\n\nSteam the clams in the butter for 8 minutes.\n", 2)]
    [InlineData("Sauce                Relish\n200 ml cream         300 g onions\n50 g mustard         80 g sugar\n20 g butter          90 ml vinegar\n\nSimmer each 10 minutes.\n", 6)]
    public void Two_words_alone_and_two_lists_side_by_side_stay(string page, int foods) => Assert.Equal(foods, Lines(Read(page)).Length);

    [Theory]
    [InlineData("FOCACCIA\n\nDosi per 2 teglie\n\no  1 kg di farina tipo 0\no  10 g di lievito di\n   birra\no  22 g di sale\n\nPreparazione\no  Impastare per 8 mi-\n   nuti.\no  Cuocere a 230 °C per 20 minuti.\n", "1 kg farina tipo 0|10 g lievito di birra|22 g sale", 2)]
    [InlineData("PICKLE\n\nIngredients\no 1 kg walnuts\no 300 g sugar\no 1 l vinegar\n\nMethod\n1. Boil 15 minutes.\n", "1 kg walnuts|300 g sugar|1 l vinegar", 1)]
    [InlineData("PASTA\n\n100 g di burro\no 80 g di olio\n300 g di farina\no 200 g di semola\n2 uova\no 4 tuorli\n\nImpastare 8 minuti.\n", null, 1)]
    public void Rings_that_came_out_as_letters_are_bullets_and_an_or_stays(string page, string? lines, int steps)
    {
        Dish d = Read(page);

        Assert.Equal(steps, Steps(d).Length);
        if (lines is null)
        {
            Assert.Contains(Lines(d), l => l.Contains("100 g burro", StringComparison.Ordinal));
        }
        else
        {
            Assert.Equal(lines.Split('|'), Lines(d).Select(l => l.TrimStart(':', ' ')));
        }
    }

    [Theory]
    [InlineData("Lehrheft – Kapitel 3: Brote                     41\n\nBauernbrot\n\n500 g Mehl\n10 g Salz\n\nBei 250 °C einschießen, nach 10 Minuten auf\n\nLehrheft – Kapitel 3: Brote                     42\n\n210 °C zurückschalten und 40 Minuten ausbacken.\n", "Bauernbrot", "Bei 250 °C einschießen, nach 10 Minuten auf 210 °C zurückschalten und 40 Minuten ausbacken.")]
    [InlineData("Carnet de stage                      p. 14\n\nFLAN\n\n- 1 l de lait\n- 6 œufs\n\nRéalisation\n- Cuire au bain-marie à 150 °C pendant\n\nCarnet de stage                      p. 15\n\n  45 minutes.\n", "FLAN", "Cuire au bain-marie à 150 °C pendant 45 minutes.")]
    [InlineData("Escuela · Módulo de postres · Hoja 12\n\nFLAN\n\n- 1 l de leche\n- 6 huevos\n\n- Cocer en horno a 150 °C entre 40 y\n  45 minutos.\n\nHoja 13\nConservación: 5 días en cámara.\n", "FLAN", "Cocer en horno a 150 °C entre 40 y 45 minutos.")]
    public void A_page_may_end_in_the_middle_of_a_sentence(string page, string title, string step)
    {
        Dish d = Read(page);

        Assert.Equal(title, d.Title);
        Assert.Equal(step, Assert.Single(Steps(d)).TrimStart(':', ' '));
        Assert.Equal(2, Lines(d).Length);
    }

    [Fact]
    public void A_page_that_ends_with_its_sentence_parts_nothing()
    {
        Dish d = Read("Kitchen notes              p. 3\n\nSTEW\n\n1 kg beef\n200 g onions\n\nBrown the beef for 10 minutes.\n\nKitchen notes              p. 4\n\nBraise it for 2 hours.\n");

        Assert.Equal(["Brown the beef for 10 minutes.", "Braise it for 2 hours."], Steps(d).Select(s => s.TrimStart(':', ' ')));
    }

    [Theory]
    [InlineData("Training notes          Section 4 – Sauces          Page 17 of 44\n\n4.3   ESPAGNOLE (short method)\n\nMakes 2 litres\n\n150 g butter\n150 g flour\n\nCook 15 minutes.\n", "ESPAGNOLE (short method)")]
    [InlineData("Section 2: Larder\n2.14 Chicken liver parfait\nYield: 3 terrines\nIngredients\n• 1.2 kg livers\n• 900 g butter\nMethod\n1. Cook 50 minutes.\nSection 2: Larder\nPage 9\n", "Chicken liver parfait")]
    [InlineData("FOCACCIA ALTA                        Quaderno del forno, p. 8\n\n1 kg di farina\n22 g di sale\n\nCuocere 20 minuti.\n", "FOCACCIA ALTA")]
    [InlineData("TARTE AU CITRON                        p. 61\n\nIngrédients\n250 g de pâte\n4 œufs\n\nPréparation\nCuire 20 minutes.\n", "TARTE AU CITRON")]
    public void Numbers_of_chapters_and_pages_are_no_count(string page, string title)
    {
        Dish d = Read(page);

        Assert.Equal(title, d.Title);
        Assert.Equal(2, Lines(d).Length);
    }

    [Theory]
    [InlineData("Stock\n\n2.25 Onions\n1.5 Lemons\n2 l water\n\nSimmer 20 minutes.\n", "2.25 piece Onions|1.5 piece Lemons|2 l water")]
    [InlineData("Pricing list      12\n\nBoiled eggs      14\nBoiled eggs      15\nsalt      20 g\n\nBoil 8 minutes.\n", null)]
    public void A_count_with_a_fraction_and_rows_among_their_like_stay(string page, string? lines)
    {
        string[] read = [.. Lines(Read(page)).Select(l => l.TrimStart(':', ' '))];

        Assert.Equal(lines?.Split('|') ?? [.. read.Where(l => l.Length > 0)], read);
        Assert.True(read.Length >= 3);
    }

    [Theory]
    [InlineData("Brownies\n\n1.2 kg chocolate\n900 g butter\n\nOven 165C fan / 28 min / cool in the tray\n", 28, 165)]
    [InlineData("Kuchen\n\n500 g Mehl\n300 g Butter\n\nOfen 180 °C, 35 Min.\n", 35, 180)]
    [InlineData("Magdalenas\n\n500 g de harina\n300 g de azúcar\n\nHorno 200 °C 18 min\n", 18, 200)]
    public void The_line_of_the_oven_under_a_list_is_its_step(string card, double minutes, double heat)
    {
        Step step = Assert.Single(Read(card).Components.Single().Steps);

        Assert.Equal(minutes, step.Times[0].MinutesMin);
        Assert.Equal(heat, step.Temperatures[0].Celsius);
    }

    [Fact]
    public void The_oven_over_the_list_is_no_step() =>
        Assert.Single(Steps(Read("Brownies\nOven 165C\n\n1.2 kg chocolate\n900 g butter\n\nBake for 28 minutes.\n")));

    [Theory]
    [InlineData("Work in the stock and simmer for two hours, skim-\nming every so often, then pass it through a\nfine sieve.", "skimming")]
    [InlineData("Rösten Sie in der Pfanne ohne Fett langsam die Hasel-\nund Walnüsse und hacken Sie sie dann mit einem\ngroßen Messer.", "Hasel- und")]
    public void Half_a_word_at_the_end_of_a_line_is_put_together(string method, string words) =>
        Assert.Contains(Steps(Read("Sauce\n\n2 l stock\n100 g nuts\n\n" + method + "\n")), s => s.Contains(words, StringComparison.Ordinal));
}
