using System.Globalization;

namespace Coulisse.Matter.Foods;

/// <summary>Words that say state, quality, size or cut but never another food, so that a name may lose them. A word that could ("coconut", "goat's", "dried") must not stand here.</summary>
internal static class FoodModifiers
{
    // Longer than any word of a kitchen; a longer one takes an array.
    private const int Short = 60;

    private static readonly WordSet Any = new(("fresh freshly cold warm hot soft softened melted chilled frozen thawed large small medium big young baby ripe firm " +
        "organic free range pasteurised pasteurized unpasteurised chopped sliced diced grated peeled picked finely roughly coarsely fine " +
        "good quality best plain whole raw ground crushed toasted roasted blanched skinless boneless unsweetened pure clean cloudy sharp " +
        "cold-pressed pressed extra room temperature hulled pitted stoned shelled pieces piece halves slices slice wedges cubes chunks florets the a some of de di del von unbleached sifted washed trimmed runny unwaxed unflavored unflavoured " +
        "sized minced heaped heaping level rounded scant shredded halved quartered seeded deseeded " +
        "frais fraiche froid froide fondu mou pommade rape hache bio frisch frische frischer kalt kalte weich weiche gehackt gerieben " +
        "fresco fresca freddo fredda morbido fuso tritato frio fria blando picado rallado molido fundido maduro maduros madura maduras").Split(' '));

    // Leaves of these are the food; leaves of others (curry, lime, fig, oyster) are another.
    private static readonly WordSet Leafy = new("basil;parsley;coriander;cilantro;thyme;sage;rosemary;tarragon;chervil;dill;oregano;marjoram;mint;lettuce;cabbage;spinach;kale;chard;rocket;watercress;sorrel;radicchio;endive;chicory;bay;lovage;savory;flat leaf parsley".Split(';'));

    // Cream to whip has 30 to 40 % of fat wherever it is sold, soured or not; what is fatter or leaner is another food.
    private static readonly WordSet Creams = new("cream;whipping cream;heavy cream;creme;creme liquide;creme fleurette;creme fraiche;sahne;schlagsahne;obers;schlagobers;nata;nata para montar;panna;panna fresca;panna liquida;panna da montare".Split(';'));

    // A fish is the same food in each of these cuts; of other animals a cut is a food of its own.
    private static readonly WordSet FishCuts = new("fillet fillets filet filets side sides loin loins steak steaks portion portions of dos pave paves darne darnes tranche tranches lomo lomos filete filetes rodaja rodajas filetto filetti trancio tranci filetstuck filetstucke".Split(' '));

    /// <summary>True for a word that only says how a fish is cut.</summary>
    /// <param name="word">Folded word.</param>
    public static bool CutsFish(ReadOnlySpan<char> word) => FishCuts.Contains(word);

    /// <summary>True for a word that leaves the food the same.</summary>
    /// <param name="word">Folded word.</param>
    /// <param name="kept">What is left of the name: an animal changes every food but what sets.</param>
    /// <param name="language">ISO 639-1 code of the card.</param>
    public static bool Is(ReadOnlySpan<char> word, ReadOnlySpan<char> kept, string language) =>
        Any.Contains(word)
        || (Percent(word) is >= 65 and <= 75 && kept is "dark chocolate" or "plain chocolate" or "bittersweet chocolate")
        || (Percent(word) is >= 30 and <= 40 || word is "m" or "g" or "mg" or "fat" or "fett" or "grassi") && Creams.Contains(kept)
        || word is "gold" or "silver" or "bronze" or "platinum" or "bovine" or "pork" or "beef" && kept.IndexOf("gelatin") >= 0
        || word is "leaves" or "leaf" && Leafy.Contains(kept)
        || OfLanguage(language) is { } own && (own.Contains(word) || IsForm(word, language, own));

    /// <summary>The percentage a word states; -1 when it states none.</summary>
    private static int Percent(ReadOnlySpan<char> word) => word is [.., '%'] && int.TryParse(word[..^1], NumberStyles.None, CultureInfo.InvariantCulture, out int percent) ? percent : -1;

    // Each is made when a card of its language first asks.
    private static WordSet? OfLanguage(string language) => language switch
    {
        "fr" => French.Words,
        "de" => German.Words,
        "es" => Spanish.Words,
        "it" => Italian.Words,
        _ => null,
    };

    /// <summary>True when another form of a word is held: of one behind the noun, in German also of one before it.</summary>
    private static bool IsForm(ReadOnlySpan<char> word, string language, WordSet own)
    {
        Span<char> placed = word.Length <= Short ? stackalloc char[Short + 4] : new char[word.Length + 4];
        Span<char> room = word.Length <= Short ? stackalloc char[Short + 4] : new char[word.Length + 4];
        "x ".CopyTo(placed);
        word.CopyTo(placed[2..]);
        " x".CopyTo(placed[(2 + word.Length)..]);
        return own.Contains(FoodForms.Key(placed[..(word.Length + 2)], language, room))
            || language == "de" && own.Contains(FoodForms.Key(placed[..(word.Length + 4)], language, room));
    }

    private static WordSet Keys(string language, string words)
    {
        WordSet keys = new();
        foreach (string w in words.Split(' '))
        {
            keys.Add(w);
            // As second word, so that gender goes too; in German before a noun, where the ending goes.
            keys.Add(FoodForms.Key("x " + w, language));
            if (language == "de")
            {
                keys.Add(FoodForms.Key("x " + w + " x", language));
                keys.Add($"x {w} x");
            }
        }

        return keys;
    }

    private static class French
    {
        public static readonly WordSet Words = Keys("fr", "gros petit beau belle beaux moyen moyenne mur frais emince emincee cisele ciselee hache hachee rape rapee concasse concassee epluche epluchee pele pelee lave lavee denoyaute denoyautee non traite traitee fermier fermiere fermiers fermieres biologique biologiques du de la le les des coupe coupee moulu moulue froid froide fondu fondue tiede chaud chaude ramolli ramollie pommade mou bien finement grossierement cru crue rassis rassise tamise tamisee ecrase ecrasee egoutte egouttee un une en au bio pasteurise pasteurisee");
    }

    private static class German
    {
        public static readonly WordSet Words = Keys("de", "frisch klein gross mittelgross reif fest festkochend mehligkochend mehlig kochend vorwiegend bio gehackt gerieben gewurfelt geschalt fein lauwarm warm kalt weich flussig zimmerwarm geschmolzen zerlassen unbehandelt ungespritzt entkernt entsteint abgetropft gewaschen geputzt gezupft gehobelt halbiert gepresst zerdruckt verquirlt ganz jung der die das dem den von vom gemahlen grob schon gut handwarm heiss raumwarm sauerlich tk gem pasteurisiert");
    }

    private static class Spanish
    {
        public static readonly WordSet Words = Keys("es", "fresco frio tibio caliente maduro grande pequeno mediano picado troceado rallado molido fundido derretido batido pelado cortado laminado exprimido limpio recien muy bien bio ecologico ecologica ecologicos ecologicas campero campera camperos camperas corral de del la el los las en dados trozos juliana rodajas tamizado blando escurrido lavado deshuesado ablandado finamente un una pasteurizado");
    }

    private static class Italian
    {
        public static readonly WordSet Words = Keys("it", "fresco grande piccolo medio maturo tritato grattugiato fuso morbido freddo tiepido caldo pulito sbucciato pelato tagliato affettato pezzi cubetti dadini fette biologico biologici biologiche bio non trattato denocciolato lavato sgusciato setacciato di del della a da il la i le gli lo un una macinato ben molto appena freschissimo pasteurizzato");
    }
}
