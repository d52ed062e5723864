using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>What a cook's words mean among the foods of a table.</summary>
internal sealed class FoodNames
{
    // Longer than nearly all names, so that looking one up needs no array.
    private const int Short = 128;

    private readonly ReferenceTable _table;
    private readonly FoodRows _rows;
    private readonly NameIndex _index;
    private readonly FormIndex?[] _forms = new FormIndex?[FoodLanguages.Codes.Length];

    /// <summary>The names of a table.</summary>
    public FoodNames(ReferenceTable table, FoodRows rows)
    {
        (_table, _rows) = (table, rows);
        _index = new NameIndex(table, rows.NameColumns);
    }

    /// <summary>The food the words mean; null when none is sure enough.</summary>
    /// <param name="name">As written.</param>
    /// <param name="language">ISO 639-1 code of the card.</param>
    public FoodMatch? Match(string name, string language)
    {
        ReadOnlySpan<char> folded = FoodName.Fold(name, name.Length <= Short ? stackalloc char[FoodName.Room(Short)] : new char[FoodName.Room(name.Length)]);
        return folded.Length == 0 || UnsureNames.Has(folded, language) ? null
            : Named(folded, language, 1, 0.97, 0.95) ?? Bare(folded, language);
    }

    /// <summary>The food of a name without its harmless words: taken from both ends, one at a time, nearest to the written form first.</summary>
    private FoodMatch? Bare(ReadOnlySpan<char> folded, string language)
    {
        // Where each word begins; the last one begins behind the end of the name.
        int words = 1;
        foreach (char c in folded)
        {
            words += c == ' ' ? 1 : 0;
        }

        Span<int> starts = words < Short ? stackalloc int[Short] : new int[words + 1];
        for (int word = 1; word <= words; word++)
        {
            int blank = folded[starts[word - 1]..].IndexOf(' ');
            starts[word] = blank < 0 ? folded.Length + 1 : starts[word - 1] + blank + 1;
        }

        for (int dropped = 1; dropped < words; dropped++)
        {
            double confidence = Math.Max(0.7, (95 - (5 * dropped)) / 100.0);
            for (int front = dropped; front >= 0; front--)
            {
                int end = words - (dropped - front);
                ReadOnlySpan<char> kept = folded[starts[front]..(starts[end] - 1)];
                if (MayGo(folded, starts[..(words + 1)], front, end, language, out bool cut)
                    && !UnsureNames.Has(kept, language)
                    && Named(kept, language, confidence, confidence, confidence) is { } bare
                    && (!cut || _rows.Find(bare.Id)?.Class == "fish"))
                {
                    return bare;
                }
            }
        }

        return null;
    }

    /// <summary>True when all words before one and from another on may go; some may go only with a fish.</summary>
    private static bool MayGo(ReadOnlySpan<char> folded, ReadOnlySpan<int> starts, int front, int end, string language, out bool cut)
    {
        ReadOnlySpan<char> kept = folded[starts[front]..(starts[end] - 1)];
        cut = false;
        for (int word = 0; word < starts.Length - 1; word++)
        {
            if (word == front)
            {
                word = end;
                if (word == starts.Length - 1)
                {
                    break;
                }
            }

            ReadOnlySpan<char> let = folded[starts[word]..(starts[word + 1] - 1)];
            if (!FoodModifiers.Is(let, kept, language))
            {
                cut = true;
                if (!FoodModifiers.CutsFish(let))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>The food of a whole name: as written, in its singular, in another form of its language; another language's word comes last, and less sure.</summary>
    private FoodMatch? Named(ReadOnlySpan<char> folded, string language, double exact, double one, double form)
    {
        int wanted = FoodLanguages.Place(language);
        int hash = NameHash.Of(folded);
        ReadOnlySpan<char> singular = FoodName.Singular(folded, folded.Length <= Short ? stackalloc char[Short] : new char[folded.Length]);
        int singularHash = singular.Length == folded.Length ? hash : NameHash.Of(singular);

        int found = _index.Own(folded, hash, wanted);
        if (found >= 0)
        {
            return Entry(found, exact);
        }

        if (singular.Length < folded.Length && (found = _index.Own(singular, singularHash, wanted)) >= 0)
        {
            return Entry(found, one);
        }

        if (wanted > 0 && Forms(wanted).Row(folded, out int start) is >= 0 and int row)
        {
            return new FoodMatch(_rows.Id(row), form, new string(NameCells.At(_table.Text, start)));
        }

        if ((found = _index.Any(folded, hash, wanted)) >= 0)
        {
            return Entry(found, exact * 0.9);
        }

        return singular.Length < folded.Length && (found = _index.Any(singular, singularHash, wanted)) >= 0 ? Entry(found, one * 0.9) : null;
    }

    private FoodMatch Entry(int entry, double confidence) => new(_rows.Id(_index.Row(entry)), confidence, _index.Alias(entry));

    /// <summary>The forms of a language, made only when a card of that language has a word its plain names do not answer.</summary>
    private FormIndex Forms(int language) => Volatile.Read(ref _forms[language])
        ?? Interlocked.CompareExchange(ref _forms[language], new FormIndex(_table, _table.Column(FoodLanguages.Codes[language]), FoodLanguages.Codes[language]), null)
        ?? _forms[language]!;
}
