using System.Text;

namespace Coulisse.Gauge.Reading.Fuzz;

/// <summary>Spoils a real text the way hands, scanners and web pages do: by piece, by letter, by line, by cutting and by doubling. Deterministic by its random source.</summary>
internal static class Mutation
{
    /// <summary>Real pieces that change what stands beside them.</summary>
    private static readonly string[] Pieces =
    [
        "200 g ", "½", "1/2 ", "(", ")", "((", "))", "¹", "|", "|--|", "# ", "## ", "- ", "* ", "1. ", "\n", "\r\n", "\n\n", "\r", "\u2028", "\\uD83C", ":", "%", "°C", "°F", "180°C (400°F)", " or ", " and ", "salt", "2 x 400 g tin", "−", "1,5", "1.500", "３", "㏄", "大さじ2", "少々", "各", "œufs", "Eßlöffel", "-5 g", "200-", "–",
        "over night", "until", "•", "·", "\u0301", "\uD83C", "\uDF4B", "\u0000", "\u0007", "\u200B", "\u200E", "\uFEFF", "&deg;", "&#x110000;", "<b>", "</b>", "<script>", "</li>", "<!--", "[a](b)", "Serves 4", "Makes 12", "Keeps 3 days", "Total: ", "The same for two", "---", "===", "to taste", "#10 can", "9999999999999999999", "1e308", "0/0", "NaN", "∞", "Method", "Ingredients", "Notes", "Day 1", "one plate: ",
        "{", "}", "[", "]", "\"", "\\", "\"@type\"", "\"Recipe\"", "PT1H", "null", ",,", "plus extra for ", "divided", "each ", " x ", "×", "l0O g", "\t",
    ];

    /// <summary>One to eight changes.</summary>
    public static string Of(string seed, Random random, int longest)
    {
        int from = seed.Length > longest ? random.Next(seed.Length - longest) : 0;
        StringBuilder b = new(seed, from, Math.Min(longest, seed.Length - from), longest + 256);
        for (int k = random.Next(1, 9); k > 0 && b.Length > 0; k--)
        {
            int at = random.Next(b.Length);
            switch (random.Next(9))
            {
                case 0: b[at] = (char)random.Next(1, 0x3200); break;
                case 1: b.Remove(at, Math.Min(random.Next(1, 12), b.Length - at)); break;
                case 2: b.Insert(at, b.ToString(at, Math.Min(random.Next(1, 40), b.Length - at))); break;
                case 3: b[at] = (char)random.Next(0x20, 0x7F); break;
                case 4: Swap(b, at, random.Next(b.Length)); break;
                case 5: Line(b, at, random); break;
                default: b.Insert(at, Pieces[random.Next(Pieces.Length)]); break;
            }
        }

        return b.ToString();
    }

    /// <summary>The same for the bytes of a file.</summary>
    public static byte[] Bytes(byte[] file, Random random)
    {
        List<byte> b = [.. file.AsSpan(0, Math.Min(file.Length, 2000))];
        for (int k = random.Next(0, 6); k > 0 && b.Count > 1; k--)
        {
            int at = random.Next(b.Count);
            switch (random.Next(4))
            {
                case 0: b[at] = (byte)random.Next(256); break;
                case 1: b.RemoveAt(at); break;
                case 2: b.Insert(at, (byte)random.Next(256)); break;
                default: b.RemoveRange(at, Math.Min(random.Next(1, 9), b.Count - at)); break;
            }
        }

        return [.. b];
    }

    private static void Swap(StringBuilder b, int i, int j) => (b[i], b[j]) = (b[j], b[i]);

    /// <summary>Breaks a line, joins it to the next, or puts one in twice.</summary>
    private static void Line(StringBuilder b, int at, Random random)
    {
        string s = b.ToString();
        int end = s.IndexOf('\n', at);
        if (end < 0)
        {
            b.Insert(at, '\n');
        }
        else if (random.Next(2) == 0)
        {
            b[end] = ' ';
        }
        else
        {
            int start = s.LastIndexOf('\n', at) + 1;
            b.Insert(end, string.Concat("\n", s.AsSpan(start, Math.Min(120, Math.Max(0, end - start)))));
        }
    }
}
