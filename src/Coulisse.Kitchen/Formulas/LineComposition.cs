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
        return food.FoodId is { } id && FoodTable.Default.Find(id) is { } known ? Of(food, known) : null;
    }

    /// <summary>Composition per 100 g of a weighed line; null when its food is not known.</summary>
    public static Composition? Of(WeighedLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Known is { } known ? Of(line.Food, known) : null;
    }

    /// <summary>A row at the fat a line names.</summary>
    internal static Composition Of(FoodAmount food, Food known)
    {
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
