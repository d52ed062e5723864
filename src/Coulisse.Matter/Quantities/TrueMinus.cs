namespace Coulisse.Matter.Quantities;

/// <summary>The minus of the house: U+2212 before a figure, never a hyphen.</summary>
public static class TrueMinus
{
    /// <summary>A text in which each hyphen that begins a negative figure is a minus; hyphens between words, dates and ranges stay.</summary>
    public static string In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.Contains('-', StringComparison.Ordinal))
        {
            return text;
        }

        char[] c = text.ToCharArray();
        for (int i = 0; i < c.Length - 1; i++)
        {
            if (c[i] == '-' && char.IsAsciiDigit(c[i + 1]) && (i == 0 || c[i - 1] is ' ' or '(' or '[' or '\u202F' or '\u00A0' or '\n' or '+'))
            {
                c[i] = '\u2212';
            }
        }

        return new string(c);
    }
}
