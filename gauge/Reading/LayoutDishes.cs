namespace Coulisse.Gauge.Reading;

/// <summary>Two invented dishes of three parts in six languages, for cards in many dresses: foods weighed, counted, measured by the spoon and to taste, and four times.</summary>
internal static class LayoutDishes
{
    internal sealed record Part(string Name, string For, (string Amount, string Unit, string Of, string Food, double Told)[] Foods, string[] Steps);

    internal sealed record Tongue(string Lang, string Title, string Serves, string List, string Method, string Colon, Part[] Parts);

    public static readonly Tongue[] All =
    [
        new("en", "Braised leeks with crumb", "Serves 4", "Ingredients", "Method", ": ",
        [
            new("Leeks", "For the leeks", [("500", "g", "", "leeks", 500), ("2", "", "", "shallots", 2), ("100", "ml", "", "white wine", 100)], ["Sweat the shallots for 5 minutes.", "Add the leeks and the wine and braise for 25 minutes."]),
            new("Crumb", "For the crumb", [("60", "g", "", "hazelnuts", 60), ("40", "g", "", "butter", 40), ("1", "tsp", "", "thyme", 1)], ["Toast the hazelnuts for 8 minutes, then chop them with the butter and thyme."]),
            new("Dressing", "For the dressing", [("2", "tbsp", "", "mustard", 2), ("1", "", "", "lemon", 1), ("80", "ml", "", "olive oil", 80)], ["Whisk the mustard with the oil for 3 minutes."]),
        ]),
        new("fr", "Poireaux braisés au crumble", "Pour 4 personnes", "Ingrédients", "Préparation", " : ",
        [
            new("Poireaux", "Pour les poireaux", [("500", "g", "de ", "poireaux", 500), ("2", "", "", "échalotes", 2), ("100", "ml", "de ", "vin blanc", 100)], ["Faire suer les échalotes pendant 5 minutes.", "Ajouter les poireaux et le vin et braiser 25 minutes."]),
            new("Crumble", "Pour le crumble", [("60", "g", "de ", "noisettes", 60), ("40", "g", "de ", "beurre", 40), ("1", "c. à café", "de ", "thym", 1)], ["Torréfier les noisettes 8 minutes, puis les hacher avec le beurre et le thym."]),
            new("Vinaigrette", "Pour la vinaigrette", [("2", "c. à soupe", "de ", "moutarde", 2), ("1", "", "", "citron", 1), ("80", "ml", "d'", "huile d'olive", 80)], ["Fouetter la moutarde avec l'huile pendant 3 minutes."]),
        ]),
        new("de", "Geschmorter Lauch mit Streuseln", "Für 4 Personen", "Zutaten", "Zubereitung", ": ",
        [
            new("Lauch", "Für den Lauch", [("500", "g", "", "Lauch", 500), ("2", "", "", "Schalotten", 2), ("100", "ml", "", "Weißwein", 100)], ["Die Schalotten 5 Minuten anschwitzen.", "Lauch und Wein zugeben und 25 Minuten schmoren."]),
            new("Streusel", "Für die Streusel", [("60", "g", "", "Haselnüsse", 60), ("40", "g", "", "Butter", 40), ("1", "TL", "", "Thymian", 1)], ["Die Haselnüsse 8 Minuten rösten, dann mit Butter und Thymian hacken."]),
            new("Dressing", "Für das Dressing", [("2", "EL", "", "Senf", 2), ("1", "", "", "Zitrone", 1), ("80", "ml", "", "Olivenöl", 80)], ["Den Senf mit dem Öl 3 Minuten aufschlagen."]),
        ]),
        new("es", "Puerros estofados con crujiente", "Para 4 personas", "Ingredientes", "Elaboración", ": ",
        [
            new("Puerros", "Para los puerros", [("500", "g", "de ", "puerros", 500), ("2", "", "", "chalotas", 2), ("100", "ml", "de ", "vino blanco", 100)], ["Sofreír las chalotas 5 minutos.", "Añadir los puerros y el vino y estofar 25 minutos."]),
            new("Crujiente", "Para el crujiente", [("60", "g", "de ", "avellanas", 60), ("40", "g", "de ", "mantequilla", 40), ("1", "cucharadita", "de ", "tomillo", 1)], ["Tostar las avellanas 8 minutos y picarlas con la mantequilla y el tomillo."]),
            new("Vinagreta", "Para la vinagreta", [("2", "cucharadas", "de ", "mostaza", 2), ("1", "", "", "limón", 1), ("80", "ml", "de ", "aceite de oliva", 80)], ["Batir la mostaza con el aceite 3 minutos."]),
        ]),
        new("it", "Porri brasati con croccante", "Per 4 persone", "Ingredienti", "Procedimento", ": ",
        [
            new("Porri", "Per i porri", [("500", "g", "di ", "porri", 500), ("2", "", "", "scalogni", 2), ("100", "ml", "di ", "vino bianco", 100)], ["Rosolare gli scalogni per 5 minuti.", "Unire i porri e il vino e brasare per 25 minuti."]),
            new("Croccante", "Per il croccante", [("60", "g", "di ", "nocciole", 60), ("40", "g", "di ", "burro", 40), ("1", "cucchiaino", "di ", "timo", 1)], ["Tostare le nocciole per 8 minuti, poi tritarle con il burro e il timo."]),
            new("Condimento", "Per il condimento", [("2", "cucchiai", "di ", "senape", 2), ("1", "", "", "limone", 1), ("80", "ml", "di ", "olio d'oliva", 80)], ["Sbattere la senape con l'olio per 3 minuti."]),
        ]),
        new("ja", "ねぎの蒸し煮", "4人分", "材料", "作り方", "：",
        [
            new("ねぎ煮", "◎ねぎ煮", [("500", "g", "", "長ねぎ", 500), ("2", "個", "", "玉ねぎ", 2), ("100", "ml", "", "白ワイン", 100)], ["玉ねぎを5分炒める。", "長ねぎと白ワインを加えて25分煮る。"]),
            new("クランブル", "◎クランブル", [("60", "g", "", "ヘーゼルナッツ", 60), ("40", "g", "", "バター", 40), ("小さじ1", "", "", "タイム", 1)], ["ヘーゼルナッツを8分焼き、バターとタイムと刻む。"]),
            new("ドレッシング", "◎ドレッシング", [("大さじ2", "", "", "マスタード", 2), ("1", "個", "", "レモン", 1), ("80", "ml", "", "オリーブオイル", 80)], ["マスタードと油を3分混ぜる。"]),
        ]),
        new("en", "Lemon tart", "Serves 4", "Ingredients", "Method", ": ",
        [
            new("Pastry", "For the pastry", [("1", "", "", "egg", 1), ("250", "g", "", "flour", 250), ("", "", "", "salt", double.NaN)], ["Mix the egg with the flour and salt for 5 minutes.", "Chill for 25 minutes."]),
            new("Filling", "For the filling", [("3", "", "", "lemons", 3), ("150", "g", "", "sugar", 150), ("4", "", "", "eggs", 4)], ["Whisk the lemons with the sugar and eggs, then bake at 150 °C for 8 minutes."]),
            new("To serve", "To serve", [("100", "ml", "", "cream", 100), ("", "", "", "mint", double.NaN)], ["Whip the cream for 3 minutes and scatter the mint."]),
        ]),
        new("fr", "Tarte au citron", "Pour 4 personnes", "Ingrédients", "Préparation", " : ",
        [
            new("Pâte", "Pour la pâte", [("1", "", "", "œuf", 1), ("250", "g", "de ", "farine", 250), ("", "", "", "sel", double.NaN)], ["Mélanger l'œuf avec la farine et le sel pendant 5 minutes.", "Laisser reposer au frais 25 minutes."]),
            new("Garniture", "Pour la garniture", [("3", "", "", "citrons", 3), ("150", "g", "de ", "sucre", 150), ("4", "", "", "œufs", 4)], ["Fouetter les citrons avec le sucre et les œufs, puis cuire au four à 150 °C pendant 8 minutes."]),
            new("Pour servir", "Pour servir", [("100", "ml", "de ", "crème", 100), ("", "", "", "menthe", double.NaN)], ["Monter la crème pendant 3 minutes et parsemer de menthe."]),
        ]),
        new("de", "Zitronentarte", "Für 4 Personen", "Zutaten", "Zubereitung", ": ",
        [
            new("Teig", "Für den Teig", [("1", "", "", "Ei", 1), ("250", "g", "", "Mehl", 250), ("", "", "", "Salz", double.NaN)], ["Das Ei mit Mehl und Salz 5 Minuten kneten.", "25 Minuten kalt stellen."]),
            new("Füllung", "Für die Füllung", [("3", "", "", "Zitronen", 3), ("150", "g", "", "Zucker", 150), ("4", "", "", "Eier", 4)], ["Zitronen mit Zucker und Eiern verrühren und bei 150 °C 8 Minuten backen."]),
            new("Zum Servieren", "Zum Servieren", [("100", "ml", "", "Sahne", 100), ("", "", "", "Minze", double.NaN)], ["Die Sahne 3 Minuten schlagen und mit Minze bestreuen."]),
        ]),
        new("es", "Tarta de limón", "Para 4 personas", "Ingredientes", "Elaboración", ": ",
        [
            new("Masa", "Para la masa", [("1", "", "", "huevo", 1), ("250", "g", "de ", "harina", 250), ("", "", "", "sal", double.NaN)], ["Mezclar el huevo con la harina y la sal durante 5 minutos.", "Enfriar en la nevera 25 minutos."]),
            new("Relleno", "Para el relleno", [("3", "", "", "limones", 3), ("150", "g", "de ", "azúcar", 150), ("4", "", "", "huevos", 4)], ["Batir los limones con el azúcar y los huevos y hornear a 150 °C durante 8 minutos."]),
            new("Para servir", "Para servir", [("100", "ml", "de ", "nata", 100), ("", "", "", "menta", double.NaN)], ["Montar la nata 3 minutos y espolvorear la menta."]),
        ]),
        new("it", "Crostata al limone", "Per 4 persone", "Ingredienti", "Procedimento", ": ",
        [
            new("Impasto", "Per l'impasto", [("1", "", "", "uovo", 1), ("250", "g", "di ", "farina", 250), ("", "", "", "sale", double.NaN)], ["Impastare l'uovo con la farina e il sale per 5 minuti.", "Far riposare in frigo 25 minuti."]),
            new("Ripieno", "Per il ripieno", [("3", "", "", "limoni", 3), ("150", "g", "di ", "zucchero", 150), ("4", "", "", "uova", 4)], ["Sbattere i limoni con lo zucchero e le uova e cuocere in forno a 150 °C per 8 minuti."]),
            new("Per servire", "Per servire", [("100", "ml", "di ", "panna", 100), ("", "", "", "menta", double.NaN)], ["Montare la panna per 3 minuti e cospargere di menta."]),
        ]),
        new("ja", "レモンタルト", "4人分", "材料", "作り方", "：",
        [
            new("生地", "◎生地", [("1", "個", "", "卵", 1), ("250", "g", "", "薄力粉", 250), ("少々", "", "", "塩", double.NaN)], ["卵と薄力粉と塩を5分混ぜる。", "冷蔵庫で25分休ませる。"]),
            new("フィリング", "◎フィリング", [("3", "個", "", "レモン", 3), ("150", "g", "", "砂糖", 150), ("4", "個", "", "卵", 4)], ["レモンと砂糖と卵を混ぜ、150℃のオーブンで8分焼く。"]),
            new("仕上げ", "◎仕上げ", [("100", "ml", "", "生クリーム", 100), ("適量", "", "", "ミント", double.NaN)], ["生クリームを3分泡立て、ミントを散らす。"]),
        ]),
    ];
}
