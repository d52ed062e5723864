namespace Coulisse.Cards.Layout;

/// <summary>What was found of the last few texts: layout asks the same of a line for its neighbours before it and behind it.</summary>
/// <param name="find">Finds it; the answer may hang on nothing but the text and the language.</param>
internal sealed class Recent(Func<string, string, bool> find)
{
    private const int Kept = 8;
    private readonly (string? Text, string? Lang, bool Found)[] _kept = new (string?, string?, bool)[Kept];
    private int _next;

    /// <summary>The answer of a text.</summary>
    public bool Of(string text, string lang)
    {
        foreach ((string? known, string? knownLang, bool answer) in _kept)
        {
            if (known == text && knownLang == lang)
            {
                return answer;
            }
        }

        bool found = find(text, lang);
        _kept[_next] = (text, lang, found);
        _next = (_next + 1) % Kept;
        return found;
    }
}
