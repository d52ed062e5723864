namespace Coulisse.Matter.Foods;

/// <summary>A number for a name, the same for the same letters: where an index looks first.</summary>
/// <remarks>The indexes hold our own tables only, so nobody from outside can crowd them.</remarks>
internal static class NameHash
{
    /// <summary>The number of a text.</summary>
    public static int Of(ReadOnlySpan<char> text)
    {
        unchecked
        {
            uint hash = 2166136261;
            for (int i = 0; i < text.Length; i++)
            {
                hash = (hash ^ text[i]) * 16777619;
            }

            // The low bits choose the slot; let the high ones have a say.
            return (int)(hash ^ (hash >> 15));
        }
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
