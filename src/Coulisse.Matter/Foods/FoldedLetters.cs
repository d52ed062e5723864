namespace Coulisse.Matter.Foods;

/// <summary>What <see cref="FoodName.Fold(string)"/> makes of one character, for the scripts our names are written in.</summary>
/// <remarks>
/// Stands for compatibility decomposition, the loss of Latin accents and lower case, which ask the platform's Unicode library: its first use costs more than all our names.
/// A test holds every entry against that library. Other scripts are not here and go through it.
/// </remarks>
internal static class FoldedLetters
{
    /// <summary>Ends a word.</summary>
    public const char Break = ' ';

    /// <summary>Goes without a trace.</summary>
    public const char Gone = '\'';

    /// <summary>Stands for more than one letter, or none of the scripts here: <see cref="Several"/> knows.</summary>
    public const char Opens = '+';

    /// <summary><see cref="Of"/> for U+0000 to U+024F, sixty-four a line. All but % stand above <see cref="Opens"/>.</summary>
    public const string Latin =
        "                                     % '        0123456789      " +
        " abcdefghijklmnopqrstuvwxyz      abcdefghijklmnopqrstuvwxyz     " +
        "                                          a       23 μ   1o +++ " +
        "aaaaaa+ceeeeiiiiðnooooo øuuuuyþ+aaaaaa+ceeeeiiiiðnooooo øuuuuyþy" +
        "aaaaaaccccccccddđđeeeeeeeeeegggggggghhħħiiiiiiiiiı++jjkkĸllllll+" +
        "+łłnnnnnn+ŋŋoooooo++rrrrrrssssssssttttŧŧuuuuuuuuuuuuwwyyyzzzzzzs" +
        "ƀɓƃƃƅƅɔƈƈɖɗƌƌƍǝəɛƒƒɠɣƕɩɨƙƙƚƛɯɲƞɵooƣƣƥƥʀƨƨʃƪƫƭƭʈuuʊʋƴƴƶƶʒƹƹƺƻƽƽƾƿ" +
        "ǀǁǂǃ+++++++++aaiioouuuuuuuuuuǝaaaa++ǥǥggkkooooʒʒj+++ggƕƿnnaa++øø" +
        "aaaaeeeeiiiioooorrrruuuussttȝȝhhƞȡȣȣȥȥaaeeooooooooyyȴȵȶȷȸȹⱥȼȼƚⱦȿ" +
        "ɀɂɂƀʉʌɇɇɉɉɋɋɍɍɏɏ";

    private const char Voiced = '\u3099';
    private const char HalfVoiced = '\u309A';

    /// <summary>The letter, digit or % a character becomes; <see cref="Break"/>, <see cref="Gone"/> or <see cref="Opens"/> for the others.</summary>
    public static char Of(char c) => c < Latin.Length ? Latin[c]
        : c is >= '\u4E00' and <= '\u9FFF' or 'ー' or Voiced or HalfVoiced ? c
        : c is >= '\u3041' and <= '\u3096' ? (IsVoiced(c) ? Opens : c)
        : c is >= '\u30A1' and <= '\u30F6' ? (IsVoiced((char)(c - 0x60)) ? Opens : c)
        : c is >= '\u0300' and <= '\u036F' or '\u2019' ? Gone
        : c is >= '\u2000' and <= '\u206F' or >= '\u3000' and <= '\u3002' or '・' ? Break
        : Opens;

    /// <summary>The letters of a character that opens, a <see cref="Break"/> where a word ends between them; 0 when it is of none of the scripts here.</summary>
    /// <param name="c">Character.</param>
    /// <param name="to">Room for three.</param>
    public static int Several(char c, Span<char> to)
    {
        char hiragana = c is >= '\u30A1' and <= '\u30F6' ? (char)(c - 0x60) : c;
        if (IsVoiced(hiragana))
        {
            bool half = hiragana is >= '\u306F' and <= '\u307D' && (hiragana - '\u306F') % 3 == 2;
            to[0] = (char)(hiragana == '\u3094' ? c - 0x4E : half ? c - 2 : c - 1);
            to[1] = half ? HalfVoiced : Voiced;
            return 2;
        }

        string letters = c switch
        {
            'æ' or 'Æ' or 'ǣ' or 'Ǣ' or 'ǽ' or 'Ǽ' => "ae",
            'œ' or 'Œ' => "oe",
            'ß' => "ss",
            '¼' => "1 4",
            '½' => "1 2",
            '¾' => "3 4",
            'Ĳ' or 'ĳ' => "ij",
            'Ŀ' or 'ŀ' => "l ",
            'ŉ' => "ʼn",
            'Ǆ' or 'ǅ' or 'ǆ' or 'Ǳ' or 'ǲ' or 'ǳ' => "dz",
            'Ǉ' or 'ǈ' or 'ǉ' => "lj",
            'Ǌ' or 'ǋ' or 'ǌ' => "nj",
            _ => "",
        };
        letters.CopyTo(to);
        return letters.Length;
    }

    /// <summary>Hiragana that is another with a mark: が to ぢ, づ to ど, the は row, ゔ.</summary>
    private static bool IsVoiced(char c) => c switch
    {
        >= '\u304B' and <= '\u3062' => (c & 1) == 0,
        >= '\u3065' and <= '\u3069' => (c & 1) == 1,
        >= '\u306F' and <= '\u307D' => (c - '\u306F') % 3 > 0,
        _ => c == '\u3094',
    };
}
