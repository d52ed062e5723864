using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Needs;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Load of circuits, shelves and trays minute by minute against their limits, as figures and as a drawing.</summary>
public static class LoadPaper
{
    public const string Kind = "loads";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Plan is not { } plan || bundle.Occasion is not { } occasion)
        {
            return null;
        }

        ImmutableArray<LoadProfile> loads = [.. LoadProfile.Circuits(plan, occasion.Kit, occasion.Circuits), .. ShelfLoads.Of(plan, occasion), .. occasion.Dishes.Length == bundle.Batches.Length ? WaitingLoads.Of(plan, occasion, bundle.Batches) : []];
        LoadProfile[] loaded = [.. loads.Where(l => !l.Stretches.IsEmpty)];
        if (loaded.Length == 0)
        {
            return null;
        }

        CultureInfo culture = bundle.Culture;
        List<Block> blocks = [.. bundle.Warnings(all: false)];
        blocks.Add(new TableBlock([new("What"), new("Limit", Side.Right), new("Most", Side.Right, Strong: true), new("From"), new("To"), new("Room left", Side.Right), new("")],
            [.. loaded.Select(l => Row(l, culture))]));
        foreach (LoadProfile l in loaded)
        {
            foreach (IGrouping<LocalDate, LoadStretch> day in l.Stretches.Where(s => s.Amount > 0).GroupBy(s => s.Start.Date))
            {
                LoadProfile own = l with { Stretches = [.. l.Stretches.Where(s => s.Start.Date == day.Key && s.End.Date == day.Key)] };
                if (own.Stretches.IsEmpty)
                {
                    continue;
                }

                blocks.Add(new HeadingBlock(2, $"{l.Title}, {Days.Long(day.Key, culture)}"));
                blocks.Add(new FigureBlock(LoadDrawing.Of(own), $"{l.Title}: from {Days.Hour(own.Stretches[0].Start.TimeOfDay)} to {Days.Hour(own.Stretches[^1].End.TimeOfDay)}, most {Amount(own.Peak!.Amount, l.Unit, culture)} of {Amount(l.Limit, l.Unit, culture)}", 0.22, ToScale: false));
            }

            blocks.Add(new HeadingBlock(2, $"{l.Title}, by the minute"));
            blocks.Add(new TableBlock([new("From"), new("To"), new("Load", Side.Right, Strong: true), new("Of which")],
                [.. l.Stretches.Where(s => s.Amount > 0).Select(s => new PaperRow([Days.Moment(s.Start, culture), Days.Until(s.End, s.Start.Date, culture), Amount(s.Amount, l.Unit, culture) + (s.Amount > l.Limit + 1e-9 ? " TOO MUCH" : ""), string.Join(", ", s.What.Distinct())]))]));
        }

        return bundle.Sheet(Kind, "Loads", [.. blocks]) with { TextSize = 9.5 };
    }

    private static string Amount(double amount, string unit, CultureInfo culture) => Figures.Number(Math.Round(amount, 3), culture) + "\u202F" + (Math.Abs(amount - 1) > 1e-9 ? unit : unit switch { "shelves" => "shelf", "slots" => "slot", "trays" => "tray", _ => unit });

    private static PaperRow Row(LoadProfile l, CultureInfo culture)
    {
        LoadStretch peak = l.Peak!;
        return new([l.Title, Amount(l.Limit, l.Unit, culture), Amount(peak.Amount, l.Unit, culture), Days.Moment(peak.Start, culture), Days.Until(peak.End, peak.Start.Date, culture), l.Over.IsEmpty ? Amount(l.Limit - peak.Amount, l.Unit, culture) : "", l.Over.IsEmpty ? "" : new PaperCell("TOO MUCH", true)]);
    }
}
