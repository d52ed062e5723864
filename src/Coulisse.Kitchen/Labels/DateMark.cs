using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Labels;

/// <summary>Date mark and storage of a dish, by the shortest keeping its card states.</summary>
/// <param name="Mark">"Use by" for what is kept cold, "Best before" for what is dry, airtight or frozen.</param>
/// <param name="Hours">From making; null when the card gives no figure, and then there is no date.</param>
/// <param name="Celsius">Coldest stated keeping, °C; null when none is stated.</param>
/// <param name="Frozen">True when it is kept frozen.</param>
/// <param name="Component">Part that decides; empty for the dish.</param>
/// <param name="Line">Card line it stands on.</param>
/// <remarks>The card's word, not a test of shelf life: a code of practice may allow less.</remarks>
public sealed record DateMark(string Mark, double? Hours, double? Celsius, bool Frozen, string Component, int Line)
{
    private static readonly string[] Cold = ["fridge", "cold", "chilled"];

    /// <summary>The mark of a dish; null when its card says nothing of keeping.</summary>
    public static DateMark? Of(WeighedDish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        (string Component, Keeping Keeping, double? Hours)[] all = [.. dish.Components.SelectMany(c => c.Component.Keeps.Where(k => !k.Quality).Select(k => (c.Component.Name, k, k.SameDay ? 24 : k.Hours)))];
        if (all.Length == 0)
        {
            return null;
        }

        (string component, Keeping keeping, double? hours) = all.OrderBy(k => k.Hours ?? double.PositiveInfinity).First();
        double? coldest = all.Min(k => k.Keeping.Celsius);
        bool frozen = keeping.Where == "freezer" || keeping.Celsius < -10;
        bool cold = !frozen && (coldest <= 8 || Cold.Contains(keeping.Where));
        return new DateMark(cold ? "Use by" : "Best before", hours, frozen ? keeping.Celsius : all.Where(k => k.Keeping.Celsius >= -10).Select(k => k.Keeping.Celsius).Min(), frozen, component, keeping.Span.Line);
    }

    /// <summary>As it stands on a label, without the day itself.</summary>
    public string Text
    {
        get
        {
            string how = Hours is { } h ? h <= 24 ? "the day it is made" : string.Create(CultureInfo.InvariantCulture, $"{h / 24:0.#} days from making, the first counted") : "no time is stated";
            string store = Frozen ? "Keep frozen" : Celsius is { } t ? string.Create(CultureInfo.InvariantCulture, $"Keep at {t:0.#} °C or below") : Mark == "Use by" ? "Keep refrigerated" : "Keep dry and airtight";
            return $"{Mark}: {how}{(Component.Length > 0 ? $" ({Component})" : "")}. {store}.";
        }
    }
}
