using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Cli;

/// <summary>Reads an occasion sheet and the cards it names, beside it.</summary>
internal static class OccasionFile
{
    /// <summary>Goes on with the occasion; prints what is wrong and gives the exit code when it cannot.</summary>
    public static int Read(string path, Func<Occasion, int> then)
    {
        if (Input.Bytes(path, out int exit) is not { } bytes)
        {
            return exit;
        }

        return OccasionReader.Read(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), Today).Match(sheet => With(path, sheet, then), problems => Input.Fail(path, problems));
    }

    /// <summary>The price list; null, with the exit code, when it cannot be read.</summary>
    public static PriceList? Prices(string path, string? currency, out int exit)
    {
        if (Input.Bytes(path, out exit) is not { } bytes)
        {
            return null;
        }

        int failed = Exit.Done;
        PriceList? list = PriceList.Read(Encoding.UTF8.GetString(bytes), currency).Match<PriceList?>(l => l, problems =>
        {
            failed = Input.Fail(path, problems);
            return null;
        });
        exit = failed;
        return list;
    }

    private static LocalDate Today => LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    private static int With(string path, OccasionSheet sheet, Func<Occasion, int> then)
    {
        string folder = path == "-" ? "." : Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";
        List<OccasionDish> dishes = [];
        foreach (SheetDish d in sheet.Dishes)
        {
            if (Input.Bytes(Path.Combine(folder, d.CardPath), out int exit) is not { } card)
            {
                return exit;
            }

            int failed = CardReader.Read(new CardText(Encoding.UTF8.GetString(card).TrimStart('\uFEFF'), d.CardPath)).Match(
                dish =>
                {
                    dishes.Add(new OccasionDish(d.Name, dish, d.Count, d.Unit, d.For, d.CardPath));
                    return Exit.Done;
                },
                problems => Input.Fail(d.CardPath, problems));
            if (failed != Exit.Done)
            {
                return failed;
            }
        }

        int guests = sheet.Guests ?? dishes.Select(d => d.Count).DefaultIfEmpty(1).Max();
        return then(new Occasion
        {
            Title = sheet.Title, Sheet = sheet, SlotStart = sheet.SlotStart ?? Today.AtMidnight(), SlotLength = sheet.SlotLength ?? Duration.Zero, SlotPlace = sheet.SlotPlace ?? "",
            Guests = guests, Covers = guests + (sheet.Over ?? 0), PlatedLive = sheet.PlatedLive ?? 0, Dishes = [.. dishes], Kit = sheet.Kit, Circuits = sheet.Circuits,
            Windows = sheet.Windows, Meals = sheet.Meals, Diets = sheet.Diets, Shows = sheet.Shows,
            People = [.. sheet.People.Select(p => new Person(p.Name, p.Role, p.Place, p.Hours, p.Skills, p.Without, p.Languages, p.Speed))],
            Assumed = sheet.Assumed,
        });
    }
}
