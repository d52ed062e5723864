namespace Coulisse.Web.Tests;

public sealed class WordsTests
{
    [Fact]
    public void Every_language_of_the_briefs_has_every_phrase_of_the_live_page_with_the_same_gaps()
    {
        Dictionary<string, string> english = Words.Read("en");
        Assert.Equal(7, Words.Languages.Count());
        foreach (string language in Words.Languages)
        {
            Dictionary<string, string> words = Words.Read(language);
            Assert.Equal(english.Keys.Order(), words.Keys.Order());
            Assert.All(english, e => Assert.True(Words.Holes(e.Value).SequenceEqual(Words.Holes(words[e.Key])), $"{language}: {e.Key}"));
            Assert.All(words.Where(w => w.Key != "marked"), w => Assert.NotEqual("", w.Value));
            // only English was written by a person; the others say so
            Assert.Equal(language == "en", words["marked"].Length == 0);
        }
    }
}
