namespace Coulisse.Views.Papers;

/// <summary>Texts of one brief, counted as they are said: how many are the chef's, how many of those the helper cannot read.</summary>
internal sealed class BriefTexts(BriefWords words)
{
    /// <summary>Sentences of the chef.</summary>
    public int Chef { get; private set; }

    /// <summary>Of those, the ones that bear the mark.</summary>
    public int Untranslated { get; private set; }

    public string Of(string text) => Counted(words.Of(text));

    public string Sentences(string text) => Counted(words.Sentences(text));

    private string Counted(BriefWords.Said said)
    {
        Chef += said.Chef;
        Untranslated += said.Untranslated;
        return said.Text;
    }
}
