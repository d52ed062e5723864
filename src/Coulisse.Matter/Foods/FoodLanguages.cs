using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>The languages our foods have names in, each a column of the table.</summary>
internal static class FoodLanguages
{
    /// <summary>ISO 639-1 codes; English first, as its names are taken before those of a third language.</summary>
    public static readonly string[] Codes = ["en", "fr", "de", "es", "it", "ja"];

    /// <summary>Place of a code; -1 when our foods have no names in it.</summary>
    public static int Place(string language) => Array.IndexOf(Codes, language);

    /// <summary>The column of each language in a table.</summary>
    /// <exception cref="FormatException">The table lacks one.</exception>
    public static int[] Columns(ReferenceTable table)
    {
        int[] columns = new int[Codes.Length];
        for (int i = 0; i < columns.Length; i++)
        {
            columns[i] = table.Column(Codes[i]);
        }

        return columns;
    }
}
