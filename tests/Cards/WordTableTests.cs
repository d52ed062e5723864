using System.Globalization;
using Coulisse.Cards.Words;
using Coulisse.Matter.Reference;

namespace Coulisse.Cards.Tests;

/// <summary>Our own table of words against a plain dictionary: for every word of our tables in every form, and for what lies beside one.</summary>
public sealed class WordTableTests
{
    private static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja", "*", "pt"];

    [Fact]
    public void Every_word_of_every_class_means_in_every_language_what_its_rows_say()
    {
        List<string[]> rows = [.. ReferenceTable.Load("reading/words.tsv").Rows];
        Dictionary<string, Dictionary<string, List<(string Lang, string Value)>>> told = new(StringComparer.Ordinal);
        foreach (string[] r in rows)
        {
            foreach (string form in r[2] == "prep" ? Bent(r[0], r[1]) : [r[0]])
            {
                At(At(told, r[2]), Folding.Key(form)).Add((r[1], r[3]));
            }
        }

        int asked = 0;
        foreach ((string kind, Dictionary<string, List<(string Lang, string Value)>> words) in told)
        {
            Assert.Equal(words.Keys.Order(StringComparer.Ordinal), Lexicon.Keys(kind).Order(StringComparer.Ordinal));
            foreach (string key in words.Keys.SelectMany(Near).ToHashSet(StringComparer.Ordinal))
            {
                foreach (string lang in Languages)
                {
                    string? want = words.TryGetValue(key, out List<(string Lang, string Value)>? of) ? of.FirstOrDefault(v => v.Lang == lang || v.Lang == "*").Value : null;
                    Assert.True(Lexicon.Word(kind, key, lang) == want, $"{kind} “{key}” in {lang} is {Lexicon.Word(kind, key, lang)}, not {want}");
                    asked++;
                }
            }
        }

        Assert.True(rows.Count > 2_600 && asked > 500_000, asked.ToString(CultureInfo.InvariantCulture));
        Assert.Throws<KeyNotFoundException>(() => Lexicon.Word("no such class", "salt", "en"));
    }

    [Fact]
    public void Every_unit_means_in_every_language_what_its_rows_say()
    {
        Dictionary<string, List<UnitWord>> units = new(StringComparer.Ordinal);
        Dictionary<string, List<string>> langs = new(StringComparer.Ordinal);
        foreach (string[] r in ReferenceTable.Load("reading/units.tsv").Rows)
        {
            At(units, Folding.Key(r[0])).Add(new UnitWord(r[2], r[3], ReferenceTable.Number(r[4])));
            At(langs, Folding.Key(r[0])).Add(r[1]);
        }

        Assert.True(units.Count > 1_000);
        foreach (string key in units.Keys.SelectMany(Near).ToHashSet(StringComparer.Ordinal))
        {
            foreach (string lang in Languages)
            {
                UnitWord? want = null;
                if (units.TryGetValue(key, out List<UnitWord>? of))
                {
                    int own = langs[key].IndexOf(lang);
                    int any = lang == "en" ? 0 : langs[key].IndexOf("*");
                    want = own >= 0 ? of[own] : any >= 0 ? of[any] : of.Count == 1 && key.Length > 2 ? of[0] : null;
                }

                Assert.True(Lexicon.Unit(key, lang) == want, $"“{key}” in {lang} is {Lexicon.Unit(key, lang)}, not {want}");
            }
        }
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void A_table_holds_what_a_dictionary_does(bool anyCase, bool ofText)
    {
        SpanTable<int> own = new(anyCase, ofText);
        Dictionary<string, int> plain = new(anyCase ? StringComparer.OrdinalIgnoreCase : StringComparer.Ordinal);
        string[] words = [.. ReferenceTable.Load("reading/operations.tsv").Rows.Concat(ReferenceTable.Load("reading/words.tsv").Rows).Select(r => r[0]).SelectMany(w => (string[])[w, w.ToUpperInvariant()]), "", "a", "É", "é", "ſ", "S", "İ", "ı", "I", "\u212A", "K", "ß", "ẞ", "Σ", "ς", "σ", new string('x', 63), new string('x', 64), new string('x', 300)];
        for (int i = 0; i < words.Length; i++)
        {
            own.At(words[i]) = i;
            plain[words[i]] = i;
        }

        Assert.Equal(plain.Count, own.Count);
        Assert.Equal(plain.Keys, own.Keys);
        foreach (string word in words.SelectMany(Near).SelectMany(w => (string[])[w, w.ToLowerInvariant()]))
        {
            bool there = plain.TryGetValue(word, out int want);
            Assert.True(own.TryGetValue(word, out int got) == there && got == want && own.Contains(word) == there, word);
        }
    }

    /// <summary>A word is told by some of its letters, those beyond ASCII left out where case is nothing: right only while none of them is an ASCII letter in another case.</summary>
    [Fact]
    public void No_letter_beyond_ASCII_is_one_within_it_in_another_case()
    {
        string[] ascii = [.. Enumerable.Range(0, 128).Select(c => ((char)c).ToString())];
        for (int c = 128; c <= char.MaxValue; c++)
        {
            string beyond = ((char)c).ToString();
            Assert.DoesNotContain(ascii, a => a.Equals(beyond, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void A_set_holds_its_words_and_no_others()
    {
        WordSet small = new(anyCase: false, "and", "or", "and", "à");
        WordSet any = new(anyCase: true, "Kühlraum", "TK");

        Assert.True(small.Contains("and") && small.Contains("à") && !small.Contains("And") && !small.Contains("an") && !small.Contains("") && !small.Contains("À"));
        Assert.True(any.Contains("KÜHLRAUM") && any.Contains("tk") && !any.Contains("Kuhlraum") && !any.Contains("tkk"));
    }

    private static T At<T>(Dictionary<string, T> all, string key)
        where T : new() => all.TryGetValue(key, out T? found) ? found : all[key] = new T();

    // The word and what lies beside it: a letter less at either end, one more, one other, two changed about.
    private static IEnumerable<string> Near(string word)
    {
        yield return word;
        yield return word + "s";
        yield return "x" + word;
        for (int i = 0; i < word.Length; i++)
        {
            yield return word.Remove(i, 1);
            yield return $"{word[..i]}{(word[i] == 'e' ? 'a' : 'e')}{word[(i + 1)..]}";
            if (i > 0)
            {
                yield return $"{word[..(i - 1)]}{word[i]}{word[i - 1]}{word[(i + 1)..]}";
            }
        }
    }

    // As a grammar has it, written out once more beside the reader's own.
    private static string[] Bent(string word, string lang) => lang switch
    {
        "fr" when word[^1] is 'é' or 'u' or 'i' or 't' => [word, word + "e", word + "s", word + "es"],
        "de" when char.IsLower(word[0]) && !word.Contains(' ') && word[^1] is 't' or 'n' or 'm' or 'h' => [word, word + "e", word + "er", word + "es", word + "en", word + "em"],
        "es" when word.EndsWith('o') => [word, word[..^1] + "a", word + "s", word[..^1] + "as"],
        "it" when word.EndsWith('o') => [word, word[..^1] + "a", word[..^1] + (word.EndsWith("io", StringComparison.Ordinal) ? "" : "i"), word[..^1] + "e"],
        _ => [word],
    };
}
