using System.Text;

namespace Coulisse.Views.Papers;

/// <summary>Names made fit for files, in any script.</summary>
internal static class Slug
{
    public static string Of(string text)
    {
        StringBuilder b = new();
        foreach (Rune rune in text.ToLowerInvariant().EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune))
            {
                b.Append(rune.ToString());
            }
            else if (b.Length > 0 && b[^1] != '-')
            {
                b.Append('-');
            }
        }

        string slug = b.ToString().Trim('-');
        return slug.Length == 0 ? "sheet" : slug.Length > 60 ? slug[..60].Trim('-') : slug;
    }
}
