namespace Coulisse.Matter.Foods;

/// <summary>A number for a name, the same for the same letters: where an index looks first.</summary>
/// <remarks>The indexes hold our own tables only, so nobody from outside can crowd them.</remarks>
internal static class NameHash
{
    /// <summary>What a number starts from; each letter is added, then it is ended.</summary>
    public const uint Start = 2166136261;

    /// <summary>The number with one more letter.</summary>
    public static uint Add(uint mixed, char c) => unchecked((mixed ^ c) * 16777619);

    /// <summary>The number of all letters that were added.</summary>
    /// <remarks>The low bits choose the slot; this lets the high ones have a say.</remarks>
    public static int End(uint mixed) => unchecked((int)(mixed ^ (mixed >> 15)));

    /// <summary>The number of a text.</summary>
    public static int Of(ReadOnlySpan<char> text)
    {
        uint mixed = Start;
        for (int i = 0; i < text.Length; i++)
        {
            mixed = Add(mixed, text[i]);
        }

        return End(mixed);
    }

    /// <summary>The least power of two that is not less than a count.</summary>
    public static int Slots(int count)
    {
        int slots = 16;
        while (slots < count)
        {
            slots *= 2;
        }

        return slots;
    }
}
