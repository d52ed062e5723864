namespace Coulisse.Cards.Reading;

/// <summary>Words that open or close what a card makes.</summary>
internal static class YieldOpeners
{
    /// <summary>What stands before the count.</summary>
    public static readonly string[] All =
    [
        "feeds", "is for", "are for", "cuts into", "cut into", "enough for", "starter for", "main for", "makes", "serves", "yields", "yield", "gives", "produces", "fills", "remplit", "füllt", "llena", "riempie", "soit", "servings", "portions", "covers", "pax", "recipe for", "base for", "quantity", "quantities for", "batch size", "batch for", "batch of", "batch",
        "rendement", "recette pour", "ingrédients pour", "quantités pour", "quantité", "personnes", "base pour", "donne", "couverts", "rinde", "salen", "rendimiento", "raciones", "porciones", "comensales", "ingredientes para", "cantidades para", "receta para", "da para",
        "dosi per", "dosi", "dose per", "ingredienti per", "ricetta per", "resa", "porzioni", "zutaten für", "rezept für", "ausbeute", "ertrag", "ergibt", "portionen", "personen", "reicht für", "menge für", "menge", "nombre", "stück", "stückzahl", "anzahl", "coperti", "lote", "lotto", "charge", "fournée", "hornada", "infornata", "for", "pour", "für", "para", "per",
    ];

    /// <summary>"8 portions as a main course": which course, and nothing to eat.</summary>
    public static readonly string[] Courses = ["as a main", "as main", "as a starter", "as starter", "as a side", "as a dessert", "as an appetiser", "as a first course", "als Hauptgang", "als Hauptgericht", "als Vorspeise", "als Beilage", "als Dessert", "en plat", "en entrée", "en dessert", "en accompagnement", "como entrante", "como plato", "como postre", "como guarnición", "come antipasto", "come primo", "come secondo", "come contorno", "come dessert"];
}
