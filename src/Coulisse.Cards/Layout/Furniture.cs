using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What a web page hangs around a recipe: buttons, votes, a table of nutrients. It is kept as a remark and is no step and no food.</summary>
internal static class Furniture
{
    private const int LongestButton = 40;
    private const int LongestPage = 20;
    private static readonly string[] Pages = ["page", "pg", "pg.", "p.", "seite", "s.", "página", "pág.", "pagina", "pag.", "hoja", "folio", "foglio", "ページ"];

    // A button is the whole line: "Print the outline of the ring" is work.
    private static readonly HashSet<string> Buttons = new(StringComparer.OrdinalIgnoreCase)
    {
        "print", "print recipe", "print this recipe", "rate this recipe", "rate recipe", "leave a rating", "jump to", "jump to recipe", "skip to recipe", "skip to content", "pin", "pin it", "pin recipe", "save", "save recipe", "saved", "share", "share recipe", "share this", "share this recipe", "share on facebook", "tweet", "email", "email this recipe", "leave a comment", "leave a reply", "leave a review", "comments", "reviews", "advertisement", "did you make this recipe", "you may also like", "you might also like", "related recipes", "subscribe", "back to top", "read more", "keep reading", "keep reading below this ad", "continue reading", "continue reading below", "article continues below", "story continues below", "recipe continues below", "cook mode", "get the recipe",
        "imprimer", "imprimer la recette", "noter cette recette", "partager", "partager la recette", "aller à la recette", "laisser un commentaire", "commentaires", "publicité", "enregistrer",
        "drucken", "rezept drucken", "rezept bewerten", "zum rezept", "zum rezept springen", "teilen", "rezept teilen", "kommentar schreiben", "kommentare", "anzeige", "merken", "rezept merken",
        "imprimir", "imprimir receta", "ir a la receta", "compartir", "compartir receta", "valora esta receta", "deja un comentario", "comentarios", "publicidad", "guardar receta", "guardar",
        "stampa", "stampa ricetta", "stampa la ricetta", "vai alla ricetta", "condividi", "vota la ricetta", "vota questa ricetta", "lascia un commento", "commenti", "pubblicità", "salva ricetta", "salva",
        "印刷", "印刷する", "レシピを印刷", "シェア", "シェアする", "コメント", "レビュー", "広告", "保存する",
    };

    private static readonly HashSet<string> Menus = new(StringComparer.OrdinalIgnoreCase)
    {
        "home", "recipes", "about", "about me", "about us", "blog", "shop", "contact", "search", "menu", "login", "log in", "sign in", "sign up", "newsletter", "print", "save", "share", "pin", "rate", "comments", "videos", "desserts", "dinner", "breakfast", "jump to recipe", "print recipe", "all recipes", "cart", "basket", "bag", "account", "my account", "favourites", "favorites",
        "panier", "mon compte", "warenkorb", "konto", "mein konto", "carrito", "mi cuenta", "carrello", "カート",
        "accueil", "recettes", "à propos", "boutique", "rechercher", "connexion", "imprimer", "partager", "startseite", "rezepte", "über uns", "über mich", "kontakt", "suche", "anmelden", "drucken", "teilen", "merken", "inicio", "recetas", "acerca de", "tienda", "contacto", "buscar", "imprimir", "compartir", "ricette", "chi siamo", "contatti", "cerca", "accedi", "stampa", "condividi", "salva", "ホーム", "レシピ", "お問い合わせ",
    };

    private static readonly string[] Tables = ["nutrition", "nutrition facts", "nutrition information", "nutritional information", "nutritional values", "nutrition per serving", "nutrition per portion", "valeurs nutritionnelles", "information nutritionnelle", "nährwerte", "nährwerte pro portion", "nährwertangaben", "información nutricional", "valores nutricionales", "valori nutrizionali", "informazioni nutrizionali", "栄養成分"];
    private static readonly Beginnings FirstOfTables = new(Tables);

    /// <summary>True for a line that belongs to the page and not to the card.</summary>
    public static bool Is(string body)
    {
        if (body.Length == 0)
        {
            // A cell of nothing but strokes.
            return false;
        }

        if (body.Length is > 1 and <= LongestButton && Buttons.Contains(body.Trimmed(" .!?:…→»>|↓↑")))
        {
            return true;
        }

        if (body.Length is >= 80 and < 120 && Labelled(body) || body.Length < 80 && (Menu(body) || Row(body) || Labelled(body) || Votes(body) || Rated(body) || Scales(body) || Paged(body)))
        {
            return true;
        }

        foreach (string t in FirstOfTables.May(body, 0) ? Tables : [])
        {
            // "Nutrition: kcal 512, fat 42 g"; "Nutritional yeast, 20 g" is a food.
            if (body.Length > t.Length + 2 && body.StartsWith(t, StringComparison.OrdinalIgnoreCase) && body[t.Length] is ':' or '：' or '(' or ' ' && (body[t.Length] is ':' or '：' || Energy(body)) && body.AsSpan(t.Length).IndexOfAnyInRange('0', '9') >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"4,8 Sterne (341 Bewertungen)   Drucken   Merken": votes and buttons side by side, and nothing else.</summary>
    private static bool Row(string body) =>
        body.Contains("  ", StringComparison.Ordinal) && body.Split("  ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is { Length: > 1 } cells && Array.TrueForAll(cells, c => Buttons.Contains(c) || Votes(c)) && Array.Exists(cells, Buttons.Contains);

    /// <summary>"Home   Recipes   About", "Startseite | Rezepte | Kontakt": the menu of a site, all of its words.</summary>
    private static bool Menu(string body)
    {
        if (body.AsSpan().IndexOfAny("|·»>/") < 0 && !body.Contains("  ", StringComparison.Ordinal) || body.AsSpan().IndexOfAnyInRange('0', '9') is >= 0 and var figure && body[Math.Max(0, figure - 1)] != '(')
        {
            return false;
        }

        string[] cells = body.Split(["  ", " | ", "|", " · ", " » ", " > ", " / "], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return cells.Length > 1 && cells.Count(c => Menus.Contains(Uncounted(c))) is var known && known > 1 && known * 3 >= cells.Length * 2;
    }

    /// <summary>"Cart (0)": how many lie in it is no part of the word.</summary>
    private static string Uncounted(string cell) => cell.EndsWith(')') && cell.IndexOf(" (", StringComparison.Ordinal) is > 0 and var open ? cell[..open] : cell;

    /// <summary>"Menu: spring 24   Station: fish   Portions: 8": the head of a kitchen's form, no weight or volume in it.</summary>
    private static bool Labelled(string body)
    {
        if (body.IndexOf(':') is < 2 or > 16 || body.IndexOf(':') == body.LastIndexOf(':') || !body.Contains("  ", StringComparison.Ordinal) && body.AsSpan().IndexOfAny("|·\t") < 0)
        {
            return false;
        }

        string[] cells = body.Split(["  ", "|", "·", "\t"], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return cells.Length > 1 && cells.All(c => c.IndexOf(':') is > 1 and < 17 and var colon && char.IsLetter(c[0]) && c.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 && Reading.Amounts.At(c, colon + 1, "en") is not { Unit.Kind: "mass" or "volume" or "spoon" or "cup" });
    }

    /// <summary>"★★★★★ 4.8 (36 ratings)", "4,7 von 5 Sternen".</summary>
    private static bool Votes(string body) => (body[0] is '★' or '☆' || (body[0] == '(' || char.IsAsciiDigit(body[0])) && Voted.In(body) && !Places.HasAny(body, "star anise")) && body.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && body.Count(' ') < 8;

    /// <summary>"Bewertung: 4,6 von 5 (98)", "Rating: 4.8 / 5": how a page's readers liked it.</summary>
    private static bool Rated(string body) =>
        body.IndexOf(':') is > 2 and < 16 and var colon && body.Length < 40 && Rating.Contains(body.AsSpan(0, colon).TrimEnd()) && body.AsSpan(colon + 1).TrimStart(' ') is { Length: > 0 } rest && (char.IsAsciiDigit(rest[0]) || rest[0] is '★' or '☆');

    private static readonly WordSet Rating = new(anyCase: true, "rating", "ratings", "votes", "stars", "reviews", "avis", "bewertung", "bewertungen", "wertung", "valoración", "valoraciones", "puntuación", "valutazione", "voti", "評価");

    private static readonly WordList Voted = new("ratings", "reviews", "votes", "stars", "rating", "avis", "Bewertungen", "Sternen", "Sterne", "valoraciones", "votos", "opiniones", "recensioni", "voti", "stelle");

    /// <summary>"1x  2x  3x", "US Customary - Metric": buttons that scale the list.</summary>
    private static bool Scales(string body)
    {
        if (body.Length > 40 || !(body[^1] is 'x' or 'X' or '×' ? body.AsSpan().IndexOfAnyExcept(Factors) < 0 : Units(body)))
        {
            return false;
        }

        string[] cells = body.Split([' ', '|', '/', '-', '·'], StringSplitOptions.RemoveEmptyEntries);
        return cells.Length > 1 && cells.All(c => c.Length is 2 or 3 or 4 && c[^1] is 'x' or 'X' or '×' && (char.IsAsciiDigit(c[0]) || c[0] == '½')) || cells.Length > 1 && cells.All(c => c.ToLowerInvariant() is "us" or "customary" or "metric" or "imperial" or "units");
    }

    private static readonly System.Buffers.SearchValues<char> Factors = System.Buffers.SearchValues.Create("0123456789.,½xX× |/-·");

    /// <summary>True for a line whose last word is one of such a button.</summary>
    private static bool Units(ReadOnlySpan<char> body)
    {
        ReadOnlySpan<char> last = body[(body.LastIndexOfAny(" |/-·") + 1)..];
        foreach (string word in (ReadOnlySpan<string>)["us", "customary", "metric", "imperial", "units"])
        {
            if (last.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Page 1 of 2", "- 38 -", "Winter menu - Page 41 of 96": a line that ends with the number of its page.</summary>
    public static bool Page(string body) =>
        body.Length < 80 && (Paged(body) || body.LastIndexOf(' ') is > 4 and var last && char.IsAsciiDigit(body[^1]) && Paged(body.AsSpan(body.LastIndexOf(" - ", StringComparison.Ordinal) is > 0 and var dash && dash < last ? dash + 3 : 0)));

    /// <summary>"Page 1 of 2", "Seite 3", "- 2 -": what a printer adds.</summary>
    private static bool Paged(ReadOnlySpan<char> body)
    {
        int figure = body.IndexOfAnyInRange('0', '9');
        if (figure <= 0 || body.Length >= LongestPage)
        {
            return false;
        }

        ReadOnlySpan<char> word = body[..figure].Trim(" -–—|");
        if (word.IsEmpty)
        {
            return figure > 1 && body[0] is '-' or '–' or '—' && body[^1] == body[0];
        }

        foreach (string page in Pages)
        {
            if (word.Equals(page, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Energy(string body) => Places.HasAny(body, "kcal", "calories", "kJ", "cal");
}
