using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas;

/// <summary>What a line's food holds: the table's figures, at the fat the line names.</summary>
public static class LineComposition
{
    /// <summary>Composition per 100 g; null when the food is not in the table.</summary>
    /// <remarks>"3.6 % fat" on a line thins or thickens the fat-free part in its own proportions; a fat the food cannot have is ignored.</remarks>
    public static Composition? Of(FoodAmount food)
    {
        ArgumentNullException.ThrowIfNull(food);
        if (food.FoodId is null || FoodTable.Default.Find(food.FoodId) is not { } known)
        {
            return null;
        }

        return FatPercent(food.Grade) is { } fat && known.Composition.Fat is > 0 and < 100 ? known.Composition.WithFat(fat) : known.Composition;
    }

    /// <summary>The figure of a fat grade ("3.6 % fat", "35% fat"); null when the grade is of something else.</summary>
    internal static double? FatPercent(string? grade)
    {
        if (grade is null)
        {
            return null;
        }

        int sign = grade.IndexOf('%', StringComparison.Ordinal);
        string after = sign < 0 ? "" : grade[(sign + 1)..].Trim().ToLowerInvariant();
        bool fat = after is "fat" or "milk fat" or "milkfat" or "butterfat" or "fett" or "mg" or "matière grasse" or "materia grasa" or "grassi";
        return fat && double.TryParse(grade[..sign].Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double percent) && percent is >= 0 and < 100 ? percent : null;
    }
}
