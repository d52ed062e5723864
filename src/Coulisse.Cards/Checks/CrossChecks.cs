namespace Coulisse.Cards.Checks;

/// <summary>What a card says against itself. Each check tells both figures and corrects nothing.</summary>
internal static class CrossChecks
{
    private const int MostLines = 3000;

    /// <summary>All remarks of a dish.</summary>
    public static IEnumerable<Remark> Of(Dish dish)
    {
        // Looking every food up in every step is quadratic; a text this long is no card of one dish.
        int lines = dish.Components.Sum(c => c.Ingredients.Length + c.Steps.Length);
        if (lines > MostLines)
        {
            return [new Remark(0, "too long to check", System.FormattableString.Invariant($"The card has {lines} lines and steps; more than {MostLines} are read but not checked against each other."))];
        }

        return [.. ListedUsed.Of(dish), .. UsedUnlisted.Of(dish), .. PrintedSums.Of(dish), .. HeadedSums.Of(dish), .. Pieces.Of(dish), .. DividedInto.Of(dish), .. DividedUses.Of(dish), .. TakenMore.Of(dish), .. Clashes.Of(dish), .. Plausible.Of(dish), .. Wetness.Of(dish), .. HeaderTimes.Of(dish)];
    }
}
