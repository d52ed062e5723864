using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards.Occasions;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>What one tray of the kitchen holds: as its row says, else by the sizes of tray, plate and box.</summary>
public static partial class TrayRoom
{
    /// <summary>Plates on a tray; null when neither number nor sizes are known.</summary>
    /// <param name="kit">The kit.</param>
    public static int? Plates(IEnumerable<SheetKit> kit)
    {
        SheetKit[] all = [.. kit];
        return Said(all) is { } said ? said
            : Tray(all) is var (along, across) && all.FirstOrDefault(k => k.Type == "plate" && k.Millimetres.Length > 0) is { } plate ? Positive(RoundsOnTray.Fit(along, across, Length.FromMillimetres(plate.Millimetres[0]), Length.FromMillimetres(0)).Count)
            : null;
    }

    /// <summary>Plates on a tray as a row of the kit says it ("6 plates of 160 mm"); null when none does.</summary>
    /// <param name="kit">The kit.</param>
    public static int? Said(IEnumerable<SheetKit> kit) => kit.Where(k => k.Type == "tray").Select(k => PlatesOn().Match(k.CapacityText)).Where(m => m.Success).Select(m => (int?)int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture)).FirstOrDefault(n => n > 0);

    /// <summary>Boxes on a tray, from the sizes the kit gives; null when it gives none.</summary>
    /// <param name="kit">The kit.</param>
    public static int? Boxes(IEnumerable<SheetKit> kit)
    {
        SheetKit[] all = [.. kit];
        return Tray(all) is var (along, across) && all.FirstOrDefault(k => k.What.StartsWith("box", StringComparison.OrdinalIgnoreCase) && k.Millimetres.Length > 1) is { } box
            ? Positive(BoxesOnTray.Fit(along, across, Length.FromMillimetres(box.Millimetres[0]), Length.FromMillimetres(box.Millimetres[1])).PerTray)
            : null;
    }

    private static (Length Along, Length Across)? Tray(SheetKit[] kit) => kit.FirstOrDefault(k => k.Type == "tray" && k.Millimetres.Length > 1) is { } tray ? (Length.FromMillimetres(tray.Millimetres[0]), Length.FromMillimetres(tray.Millimetres[1])) : null;

    private static int? Positive(int n) => n > 0 ? n : null;

    [GeneratedRegex(@"^(?<n>\d{1,3}) plates\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PlatesOn();
}
