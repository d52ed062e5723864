using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>How old a food is when it is bought is no wait; what is left to lie so long is one. Readings as a cook gives them: common practice, no source.</summary>
public sealed class FoodAgeTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    [Theory]
    [InlineData("Sear the 28-day dry-aged rib for 2 minutes a side.", "en", "2-2")]
    [InlineData("Grate 80 g of 24-month parmesan over.", "en", "")]
    [InlineData("Slice the ham, aged 24 months, thinly.", "en", "")]
    [InlineData("The 6-week-old lamb, roast 2 hours at 160 °C.", "en", "120-120")]
    [InlineData("Servir el jamón de 36 meses en lonchas finas.", "es", "")]
    [InlineData("Grattugiare 80 g di parmigiano di 24 mesi e unirlo.", "it", "")]
    [InlineData("Parmigiano reggiano 24 mesi grattugiato sopra.", "it", "")]
    [InlineData("Râper le comté 18 mois d'affinage.", "fr", "")]
    [InlineData("Den 24 Monate gereiften Parmesan reiben.", "de", "")]
    [InlineData("Utiliser un pain de 2 jours.", "fr", "")]
    public void Is_no_wait(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Age the beef for 28 days.", "en", "40320-40320")]
    [InlineData("Hang the ham for 12 months.", "en", "518400-518400")]
    [InlineData("Leave the 3-month cure to finish.", "en", "129600-129600")]
    [InlineData("Marinate for 3 days old-fashioned style.", "en", "4320-4320")]
    [InlineData("Dejar macerar un mínimo de 2 meses.", "es", "86400-")]
    [InlineData("Curar el lomo de 2 a 3 meses.", "es", "86400-129600")]
    [InlineData("Dopo un riposo di 2 mesi filtrare.", "it", "86400-86400")]
    [InlineData("Drei Monate reifen lassen.", "de", "129600-129600")]
    [InlineData("Laisser macérer 3 mois.", "fr", "129600-129600")]
    public void What_lies_so_long_waits(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Leave to mature for a month.", "en", "43200-43200")]
    [InlineData("Laisser mariner une semaine.", "fr", "10080-10080")]
    [InlineData("Einen Tag ruhen lassen.", "de", "1440-1440")]
    [InlineData("Dejar un día en la nevera.", "es", "1440-1440")]
    [InlineData("Lasciare macerare un mese.", "it", "43200-43200")]
    [InlineData("Laisser reposer un jour ou deux.", "fr", "1440-2880")]
    [InlineData("Feed the starter once a week.", "en", "")]
    [InlineData("Make a week ahead.", "en", "")]
    [InlineData("Leave the starter; feed it one day later.", "en", "")]
    [InlineData("One day, we will bake.", "en", "")]
    [InlineData("Nourrir une fois par jour.", "fr", "")]
    public void One_of_a_long_unit_waits_where_something_lies(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Keeps for a week in the fridge.", "en", 7)]
    [InlineData("Se garde un mois.", "fr", 30)]
    [InlineData("Eine Woche haltbar.", "de", 7)]
    public void And_keeps_where_it_is_kept(string step, string lang, double days)
    {
        Step read = CardReader.ReadStep(step, lang);
        Assert.Empty(read.Times);
        Assert.Equal(days, Assert.Single(read.Storage).Days);
    }
}
