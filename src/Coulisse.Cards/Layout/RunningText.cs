using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A list inside running text: "GLAZE • lemon juice 80 g • isomalt 30 g Boil the juice. Add …".</summary>
internal static class RunningText
{
    private static readonly char[] Dots = ['•', '·', '▪', '●', '◦'];

    /// <summary>True when a line holds a list: two or more dots with amounts behind them.</summary>
    public static bool Is(string s, string lang)
    {
        int first = s.AsSpan(1).IndexOfAny(Dots);
        return first >= 0 && s.AsSpan(first + 2).IndexOfAny(Dots) >= 0 && LineKinds.HasAmount(s, lang);
    }

    /// <summary>The pieces of such a line.</summary>
    public static void Cut(RawLine raw, string lang, List<Piece> into)
    {
        string[] parts = raw.Text.Split(Dots, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i];
            if (i == 0 && !Dots.Contains(raw.Text[0]) && !LineKinds.HasAmount(part, lang))
            {
                into.Add(new Piece(PieceKind.Heading, part.TrimEnd(':'), raw.Span, 2));
                continue;
            }

            int end = i == parts.Length - 1 ? AfterAmount(part, lang) : part.Length;
            into.Add(new Piece(PieceKind.Item, part[..end].Trim(), raw.Span));
            foreach (string sentence in Statements.Sentences(part[end..]))
            {
                into.Add(new Piece(PieceKind.Step, sentence + ".", raw.Span));
            }
        }
    }

    /// <summary>Where the last food ends and the method begins: behind the first amount that a capital follows.</summary>
    private static int AfterAmount(string s, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            bool begins = char.IsAsciiDigit(s[i]) && (i == 0 || s[i - 1] == ' ');
            if (begins && Amounts.At(s, i, lang) is { Unit: not null } m && Places.Skip(s, m.End) is var next && next < s.Length && char.IsUpper(s[next]))
            {
                return m.End;
            }
        }

        return s.Length;
    }
}
