using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Trials;
using Coulisse.Store;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>Cards, occasion sheets, trials and production records of an export as JSON, each kind with its schema.</summary>
public static class ExportForms
{
    /// <summary>The forms.</summary>
    /// <param name="today">Day from which a weekday in a sheet is counted.</param>
    public static ArchiveForms Of(LocalDate today) => new(
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["dish"] = TravelJson.SchemaOf<Dish>(),
            ["occasion-sheet"] = TravelJson.SchemaOf<OccasionSheet>(),
            ["trial"] = TravelJson.SchemaOf<Trial>(),
            ["production-record"] = TravelJson.SchemaOf<ProductionRecord>(),
        },
        kind => kind switch
        {
            DocumentKind.Card => "dish",
            DocumentKind.Occasion => "occasion-sheet",
            DocumentKind.Trial => "trial",
            DocumentKind.Record => "production-record",
            _ => null,
        },
        (kind, text) => kind switch
        {
            DocumentKind.Card => Json(CardReader.Read(new CardText(text))),
            DocumentKind.Occasion => Json(OccasionReader.Read(text, today)),
            DocumentKind.Trial => Json(TrialSheet.Read(text)),
            DocumentKind.Record => Json(ProductionRecord.Read(text)),
            _ => null,
        });

    private static string? Json<T>(Parsed<T> read) => read.Match<string?>(value => TravelJson.Write(value), _ => null);
}
