using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What stands over the first list: a title that counts ("Lemon cups, 10 glasses") or is numbered ("4.7  Terrine"), the yield or the tin on a line of its own, the rows of a form. Their figures weigh nothing, and none is a food.</summary>
internal static class Front
{
    private const int Longest = 120;
    private const int LongestCount = 40;
    private const int LastFar = 8;

    /// <summary>How far two marks stand apart on a form.</summary>
    private const string Gap = "  ";

    private static readonly System.Buffers.SearchValues<char> Numbering = System.Buffers.SearchValues.Create("0123456789.");

    private static readonly string[] Sheets = ["fiche technique", "fiche recette", "ficha técnica", "ficha tecnica", "scheda tecnica", "scheda ricetta", "rezeptblatt", "rezeptkarte", "recipe card", "recipe sheet", "recipe no", "production sheet", "produktionskarte", "arbeitskarte", "scheda", "ficha", "配合表", "仕込み表", "仕込表"];
    private static readonly Beginnings FirstOfSheets = new(Sheets);

    private static readonly HashSet<string> Namers = new(StringComparer.OrdinalIgnoreCase) { "recipe", "dish", "name", "item", "product", "title", "intitulé", "appellation", "recette", "plat", "nom", "produit", "bezeichnung", "gericht", "rezept", "rezeptur", "titel", "produkt", "receta", "plato", "nombre", "denominación", "elaboración", "ricetta", "piatto", "nome", "denominazione", "prodotto", "producto", "artículo", "品名", "料理名", "商品名", "製品名" };
    private static readonly HashSet<string> LabelWords = new(StringComparer.OrdinalIgnoreCase) { "number", "no", "quantity", "qty", "batch", "section", "station", "code", "ref", "date", "chef", "version", "course", "menu", "portions", "servings", "covers", "nombre", "nb", "quantité", "poste", "réf", "référence", "saison", "matériel", "couverts", "anzahl", "menge", "stück", "stückzahl", "posten", "stand", "datum", "koch", "art.-nr", "partida", "código", "fecha", "utensilios", "material", "raciones", "coperti", "personen", "pax", "partita", "lote", "lot", "lotto", "charge", "fournée", "reparto", "data", "codice", "attrezzatura", "porzioni", "担当", "日付", "数量", "分類" };

    private static readonly string[] Needs = ["you need", "you'll need", "you will need", "il faut", "il vous faut", "man braucht", "du brauchst", "sie brauchen", "se necesita", "hace falta", "serve", "occorre", "equipment", "kit", "tools"];
    private static readonly Beginnings FirstOfNeeds = new(Needs);
    private static readonly WordList Tools = new("mould", "tin", "tray", "thermometer", "cling film", "piping bag", "ring", "rings", "whisk", "blender", "mixer", "siphon", "sieve", "moule", "moules", "cercle", "cercles", "poche", "douille", "thermomètre", "film", "Form", "Springform", "Spritzbeutel", "Ring", "Ringe", "Thermometer", "molde", "aro", "aros", "manga", "termómetro", "stampo", "stampi", "anello", "sac à poche", "termometro");

    private static readonly WordList Editions = new("rev", "ver", "vers", "version", "ed", "edition", "issue", "page", "sheet", "card", "vol", "fiche", "folio", "Blatt", "Karte", "Seite", "Stand", "hoja", "página", "ficha", "foglio", "pagina", "scheda");

    /// <summary>The name on the first line of a card, where the line also counts or numbers, and what else it says; null for any other line.</summary>
    public static (string Name, string Beside)? Title(List<RawLine> lines, int i, string lang)
    {
        string s = lines[i].Text;
        if (s.Length is < 5 or > Longest || s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && !s.Contains(':') || Looks.Bullet(s) || s[0] is '#' or '*' or '|')
        {
            return null;
        }

        if (i == 0 && Titles.Numbered(lines) is { } numbered)
        {
            return (numbered, "");
        }

        if (!Last(lines, i, lang))
        {
            // A manual pasted without its empty lines: the number and the name, and right under them the yield or the word for the list.
            return i + 1 < lines.Count && Sectioned(s) is { } section && (Kin(lines[i + 1].Text, lang) || Sections.Of(lines[i + 1].Text.TrimmedEnd(": "), lang) is not null) ? section : null;
        }

        return Row(s) is { } row ? Namers.Contains(row.Label) && row.Value.Length > 2 && char.IsLetter(row.Value[0]) && (!Looks.Amounted(row.Value, lang) || YieldClauses.OfName(row.Value, default, lang) is not null) ? (row.Value, "") : null
            : Sheet(s) ?? (Housed(s) ? ("", "") : ((string, string)?)null) ?? Cells(s, lang) ?? Sectioned(s) ?? Sentenced(s, lang) ?? (Counts(lines, i, Folding.Line(s), lang) ? (Folding.Line(s), "") : null);
    }

    /// <summary>True for a line over the list, or alone, that tells the yield, the tin, the kit or a row of a form.</summary>
    /// <param name="lines">The lines of the card.</param>
    /// <param name="i">Which.</param>
    /// <param name="over">True while no food and no step was read.</param>
    /// <param name="lang">The language of the card.</param>
    public static bool Tells(List<RawLine> lines, int i, bool over, string lang)
    {
        string s = lines[i].Text;
        // "_Two trays of 12_": slanted letters change nothing
        s = s.Length > 3 && s[0] is '_' or '*' && s[^1] == s[0] && s[1] != s[0] ? s[1..^1] : s;
        if (s.Length is < 3 or > Longest || !over && !Alone(lines, i) || Looks.Bullet(s))
        {
            return false;
        }

        if (over && (DoughYield(s) || HeadLines.Is(s, lang)) && Last(lines, i, lang))
        {
            return true;
        }

        if (over && i is 1 && TitleCount.Of(lines[0].Text, s, default, lang) is not null && Last(lines, i, lang))
        {
            return true;
        }

        if (over && i is > 0 and < LastFar && Cells(s, lang) is not null && Last(lines, i, lang))
        {
            // "MEATLOAF        Serves: 6" under a line that took its place as the title
            return true;
        }

        bool counts = char.IsAsciiDigit(s[0]) || s[0] is 'x' or '×' || s.Length <= LongestCount && Lexicon.Longest("num", s, 0, 1, lang, out _) is not null;
        return (counts ? YieldWords.Leads(s, default, lang) is not null && Last(lines, i, lang) : s.AsSpan().IndexOfAnyInRange('0', '9') > 0 && Mould(s, lang) && Last(lines, i, lang))
            || over && (Row(s) is { } row && LabelWords.Contains(row.Label) && (!Looks.Amounted(row.Value, lang) || YieldWords.In(s, default, lang) is not null) && Last(lines, i, lang) || FirstOfNeeds.May(s, 0) && Kit(s) || Sheeted(s));
    }

    /// <summary>"Dish", "Recette": the row of a form that names it.</summary>
    public static bool Names(string label) => Namers.Contains(label);

    /// <summary>"FICHE TECHNIQUE", "SCHEDA PIATTO": what a house calls the sheet itself, and beside it in the row of a spreadsheet the dish.</summary>
    public static bool Called(string label) => Array.Exists(Sheets, w => w.Equals(label, StringComparison.OrdinalIgnoreCase)) || SheetWords.Contains(label);

    private static readonly HashSet<string> SheetWords = new(StringComparer.OrdinalIgnoreCase) { "sheet", "card", "dish sheet", "dish card", "costing sheet", "cost sheet", "batch sheet", "fiche", "fiche plat", "fiche de fabrication", "fiche de production", "tellerblatt", "rezeptur", "kalkulation", "kalkulationsblatt", "ficha de plato", "ficha de producción", "escandallo", "scheda piatto", "scheda costo", "scheda di produzione", "料理カード", "原価表", "仕込表" };

    /// <summary>"Dish", "Portions", "Chef": what a form calls its rows.</summary>
    public static bool Labels(string label) => Namers.Contains(label) || LabelWords.Contains(label);

    /// <summary>"Teigausbeute 160 · 40 Stück", "TA 165": parts of dough to a hundred of flour, and no food.</summary>
    public static bool DoughYield(string s) => s.StartsWith("Teigausbeute", StringComparison.OrdinalIgnoreCase) ? s.Length == 12 || !char.IsLetter(s[12]) : s.Length > 5 && s.StartsWith("TA ", StringComparison.Ordinal) && s[3] == '1' && char.IsAsciiDigit(s[4]) && char.IsAsciiDigit(s[5]) && (s.Length == 6 || !char.IsLetterOrDigit(s[6]) && s[6..].TrimStart() is not ['g' or 'k', ..]);

    /// <summary>"FICHE TECHNIQUE N° 27": the words and the number of a sheet, and nothing else.</summary>
    public static bool Sheeted(string s) => FirstOfSheets.May(s, 0) && Sheet(s) is { Name.Length: 0 } || Housed(s);

    private static readonly HashSet<string> SheetNumbers = new(StringComparer.OrdinalIgnoreCase) { "fiche", "fiche n°", "fiche nº", "fiche no", "fiche n", "fiche technique n°", "scheda", "scheda n", "scheda n°", "ficha", "ficha n", "ficha n°", "ficha nº", "ficha no", "rezept", "rezept nr", "rezeptblatt", "blatt", "blatt nr", "karte", "karte nr", "recette n°", "ricetta n", "ricetta n°", "receta n", "receta n°", "receta nº", "recipe no", "recipe", "sheet", "sheet no", "card no" };

    /// <summary>"CANTINE SCOLAIRE – FICHE N° 22": the house, and the number of its sheet.</summary>
    private static bool Housed(string s)
    {
        int dash = s.Length is > 6 and < Longest && char.IsAsciiDigit(s[^1]) ? Math.Max(s.LastIndexOf(" - ", StringComparison.Ordinal), s.LastIndexOf(" – ", StringComparison.Ordinal)) : -1;
        if (dash < 3 || s.AsSpan(0, dash).IndexOfAnyInRange('0', '9') >= 0)
        {
            return false;
        }

        string tail = s[(dash + 3)..];
        int figure = tail.AsSpan().IndexOfAnyInRange('0', '9');
        return figure > 3 && tail.AsSpan(figure).IndexOfAnyExceptInRange('0', '9') < 0 && SheetNumbers.Contains(tail[..figure].TrimEnd(' ', '.'));
    }

    /// <summary>"Intitulé : Tarte au citron": a label and its value, the value no list.</summary>
    private static (string Label, string Value)? Row(string s) =>
        s.AsSpan().IndexOfAny(':', '：') is > 1 and < 20 and var colon && !s.Contains(Gap, StringComparison.Ordinal) && !s.Contains('\t') ? (s[..colon].Trim(), s[(colon + 1)..].Trim()) : null;

    /// <summary>"FICHE TECHNIQUE N° 18 – Tarte aux poireaux": what stands behind the words and the number of a sheet; an empty name when nothing does.</summary>
    private static (string Name, string Beside)? Sheet(string s)
    {
        foreach (string w in FirstOfSheets.May(s, 0) ? Sheets : [])
        {
            if (!s.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            string rest = s[w.Length..].TrimmedStart(" ：:");
            foreach (string mark in (ReadOnlySpan<string>)["N°", "Nº", "No.", "Nr.", "no.", "#", "n°", "n."])
            {
                rest = rest.StartsWith(mark, StringComparison.Ordinal) ? rest[mark.Length..].TrimStart() : rest;
            }

            if (rest.Length > 0 && !char.IsAsciiDigit(rest[0]))
            {
                // "Ficha de cocina", "Scheda piatti": a heading of the house's own
                continue;
            }

            int figures = rest.AsSpan().IndexOfAnyExceptInRange('0', '9');
            figures = figures > 0 && figures + 1 < rest.Length && rest[figures] is '/' or '-' && char.IsAsciiLetterOrDigit(rest[figures + 1]) ? figures + 2 : figures;
            rest = figures < 0 ? "" : rest[figures..].TrimmedStart(" -–—:|.");
            string[] cells = Split(rest);
            if (cells.Length > 0 && Row(cells[0]) is { } row && LabelWords.Contains(row.Label))
            {
                // "Produktionskarte 112            Stand: Herbst": rows of the form, and no name
                return ("", "");
            }

            return cells.Length == 0 ? ("", "") : (cells[0], string.Join(" · ", cells.Skip(1)));
        }

        return null;
    }

    /// <summary>"PAN DE CENTENO            4 piezas", "Canteen | Menu 2      Portions: 100": the name, and far from it a yield.</summary>
    private static (string Name, string Beside)? Cells(string s, string lang)
    {
        string[] cells = Split(s);
        if (cells.Length < 2 || cells[0].Contains(':') || Looks.Amounted(cells[0], lang) || !char.IsLetter(cells[0][0]) || cells[0].Length < 3)
        {
            return null;
        }

        return cells.Skip(1).Any(c => YieldWords.PiecesOf(c, lang) is not null || (Row(c) is not null || char.IsLetter(c[0])) && YieldWords.In(c, default, lang) is not null) || Apart(s, cells, lang) ? (cells[0], string.Join(" · ", cells.Skip(1))) : null;
    }

    /// <summary>"Passion fruit tart, torched meringue                 PASTRY MANUAL rev. 4": two ends of a page, neither of them an amount.</summary>
    private static bool Apart(string s, string[] cells, string lang) => cells.Length == 2 && s.Contains("        ", StringComparison.Ordinal) && cells[0].Contains(' ') && char.IsLetter(cells[1][0]) && Looks.Capitals(cells[1][..Places.WordEnd(cells[1], 0)]) && (!Looks.Amounted(cells[1], lang) || Editions.In(cells[1])) || Paged(s, cells);

    /// <summary>"FOCACCIA ALTA                 Quaderno del forno, p. 8": the name in capitals, and at the other end of the page the book and its page.</summary>
    private static bool Paged(string s, string[] cells) => cells.Length == 2 && s.Contains("        ", StringComparison.Ordinal) && (Furniture.Page(cells[1]) || cells[1].LastIndexOf(", ", StringComparison.Ordinal) is > 3 and var comma && Furniture.Page(cells[1][(comma + 2)..])) && Looks.Capitals(cells[0]);

    /// <summary>"Chicken liver parfait. 1 terrine, 14 slices.": a name, and in a sentence behind it nothing but what it makes.</summary>
    private static (string Name, string Beside)? Sentenced(string s, string lang)
    {
        int stop = s.IndexOf(". ", StringComparison.Ordinal);
        return stop > 3 && char.IsLetter(s[0]) && s.AsSpan(0, stop).IndexOfAnyInRange('0', '9') < 0 && (s.IndexOf('(') is var open && (open < 0 || open > stop || s.IndexOf(')') < stop)) && !s.AsSpan(0, stop).Contains(':') && s[(stop + 2)..].Trim().TrimEnd('.') is { Length: > 0 } rest && YieldClauses.Only(rest, lang) ? (s[..stop], rest) : null;
    }

    private static string[] Split(string s) => s.Contains(Gap, StringComparison.Ordinal) || s.Contains('|') || s.Contains('\t') ? s.Split([Gap, "|", "\t"], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) : s.Length > 0 ? [s] : [];

    /// <summary>"4.7  Pork terrine": the number of a chapter, far from its name.</summary>
    private static (string Name, string Beside)? Sectioned(string s)
    {
        int gap = s.IndexOf(Gap, StringComparison.Ordinal);
        int dot = s.IndexOf('.');
        gap = gap < 0 && dot is 1 or 2 ? Close(s, dot) : gap;
        if (gap is < 3 or > 6 || dot is < 1 || dot > gap - 2 || s.AsSpan(0, gap).ContainsAnyExcept(Numbering))
        {
            return null;
        }

        string name = s[gap..].Trim();
        return name.Length > 3 && char.IsUpper(name[0]) && name.Contains(' ') && name.AsSpan().IndexOfAnyInRange('0', '9') < 0 ? (name, "") : null;
    }

    /// <summary>"2.14 Chicken liver parfait": two figures behind the stop that count nothing ("2.25", "1.50" do), one blank, a capital.</summary>
    private static int Close(string s, int dot) => dot + 4 < s.Length && s[dot + 3] == ' ' && char.IsAsciiDigit(s[dot + 1]) && char.IsAsciiDigit(s[dot + 2]) && s.AsSpan(dot + 1, 2) is not ("25" or "33" or "66" or "67" or "75") && s[dot + 2] != '0' && s[dot + 2] != '5' && char.IsUpper(s[dot + 4]) ? dot + 3 : -1;

    /// <summary>A name that ends with how many it makes, over more than one line of another block: "Ham 2 slices" over "Cheese 3 slices" is a list with room between its lines.</summary>
    private static bool Counts(List<RawLine> lines, int i, string body, string lang)
    {
        if (body.Length == 0 || !char.IsLetter(body[0]) || body[^1] is '.' or ';' or ',' || i + 1 >= lines.Count || !Looks.Amounted(body, lang) || Looks.Work(body, lang) || lines[i + 1].Block == lines[i].Block && !Tells(lines, i + 1, over: true, lang))
        {
            return false;
        }

        bool spaced = (i + 2 >= lines.Count || lines[i + 2].Block != lines[i + 1].Block) && lines[i + 1].Text[0] is not '#' and not '*' and not '|' && Looks.Amounted(Folding.Line(lines[i + 1].Text), lang);
        return !spaced && YieldClauses.OfName(body, default, lang) is not null;
    }

    /// <summary>"Springform 26 cm, 12 Stücke", "1.5斤型 2本分": a tin, and how large it is.</summary>
    private static bool Mould(string s, string lang)
    {
        int end = Places.WordEnd(s, 0);
        return end > 2 && end < s.Length && YieldWords.Form(s[..end]) && s.AsSpan(end).IndexOfAnyInRange('0', '9') is >= 0 and < 14 && (Places.HasAny(s, "cm", "mm", "inch") || s.Contains('Ø')) && !s.Contains(". ", StringComparison.Ordinal) && !Looks.Work(s, lang);
    }

    /// <summary>"You need: a terrine mould of 1.2 litres, a thermometer": kit, and no weight.</summary>
    private static bool Kit(string s)
    {
        foreach (string w in Needs)
        {
            if (Places.WordAt(s, 0, w) && Tools.In(s))
            {
                return s.AsSpan().IndexOf(" g ") < 0 && s.AsSpan().IndexOf(" kg") < 0;
            }
        }

        return false;
    }

    private static bool Alone(List<RawLine> lines, int i) => (i == 0 || lines[i - 1].Block != lines[i].Block) && (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block);

    /// <summary>True where nothing of its block stands below it but lines of its own kind.</summary>
    private static bool Last(List<RawLine> lines, int i, string lang)
    {
        int end = i + 1;
        while (end < lines.Count && end < i + 6 && lines[end].Block == lines[i].Block && Kin(lines[end].Text, lang))
        {
            end++;
        }

        return end >= lines.Count || lines[end].Block != lines[i].Block;
    }

    /// <summary>True for a line that may stand in the head of a form.</summary>
    private static bool Kin(string s, string lang) => Row(s) is { } row && (Namers.Contains(row.Label) || LabelWords.Contains(row.Label)) || YieldWords.Leads(s, default, lang) is not null || Looks.Statement(s, lang) || Mould(s, lang) || HeadLines.Is(s, lang);
}
