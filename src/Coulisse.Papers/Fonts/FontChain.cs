using System.Collections.Immutable;
using System.Text;

namespace Coulisse.Papers.Fonts;

/// <summary>A stretch of text in one face.</summary>
/// <param name="Text">The characters; never changed or dropped.</param>
/// <param name="Face">Its face; null when no face has the signs, which are then drawn as boxes and remarked on.</param>
public sealed record FaceRun(string Text, FontFace? Face);

/// <summary>Faces in the order in which a sign is looked for, rune by rune.</summary>
public sealed class FontChain
{
    private static readonly Lazy<FontFace> Japanese = new(() => FontFace.Open("NotoSansJP_400Regular"));
    private static readonly Lazy<FontFace> Signs = new(() => FontFace.Open("DejaVuSansCondensed"));

    /// <summary>Code points whose face is looked up once: all alphabets up to the signs of trade and the kana.</summary>
    private const int Remembered = 0x3100;

    private readonly Lazy<FontFace>[] _faces;
    private readonly Found?[] _found = new Found?[Remembered];

    private FontChain(string first) => _faces = [new(() => FontFace.Open(first)), Japanese, Signs];

    private sealed record Found(FontFace? Face, double Em);

    /// <summary>For running text.</summary>
    public static FontChain Regular { get; } = new("SourceSans3_400Regular");

    /// <summary>For heads; what its first face lacks is set in the regular weight of the others.</summary>
    public static FontChain Bold { get; } = new("SourceSans3_700Bold");

    /// <summary>First face that has the rune; null when none has.</summary>
    public FontFace? FaceFor(Rune rune) => Find(rune).Face;

    /// <summary>Width of a rune at a size, in the unit of the size; null when no face has it.</summary>
    public double? Width(Rune rune, double size) => Find(rune) is { Face: not null } found ? found.Em * size : null;

    // Every letter is measured many times over; two threads that find the same face write the same thing.
    private Found Find(Rune rune)
    {
        if (rune.Value < Remembered && _found[rune.Value] is { } known)
        {
            return known;
        }

        FontFace? face = _faces.FirstOrDefault(f => f.Value.Has(rune))?.Value;
        Found found = new(face, face?.Width(rune, 1) ?? 0);
        if (rune.Value < Remembered)
        {
            _found[rune.Value] = found;
        }

        return found;
    }

    /// <summary>Splits a text into runs of one face; joined again they are the text.</summary>
    public ImmutableArray<FaceRun> Split(string text)
    {
        ImmutableArray<FaceRun>.Builder runs = ImmutableArray.CreateBuilder<FaceRun>();
        int start = 0;
        int at = 0;
        FontFace? current = null;
        foreach (Rune rune in text.EnumerateRunes())
        {
            FontFace? face = FaceFor(rune);
            if (at > start && !ReferenceEquals(face, current))
            {
                runs.Add(new FaceRun(text[start..at], current));
                start = at;
            }

            current = face;
            at += rune.Utf16SequenceLength;
        }

        if (at > start)
        {
            runs.Add(new FaceRun(text[start..at], current));
        }

        return runs.ToImmutable();
    }
}
