using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Finds an oven or bath for what is begun live and goes on by itself: one set point a piece of kit at a time, the stage's own first.</summary>
internal static class SlotKit
{
    /// <summary>Kit for each segment that needs some, by position; what found none is said in <paramref name="said"/>.</summary>
    public static ImmutableDictionary<int, KitNeed> Assign(Occasion occasion, ImmutableArray<SegmentDraft> segments, ImmutableArray<int> seconds, List<string> said)
    {
        ImmutableDictionary<int, KitNeed>.Builder found = ImmutableDictionary.CreateBuilder<int, KitNeed>();
        Dictionary<string, (double Celsius, int Used)> set = new(StringComparer.Ordinal);
        int at = 0;
        for (int i = 0; i < segments.Length; i++)
        {
            at += seconds[i];
            if (segments[i].GoesOn is not { } step)
            {
                continue;
            }

            StepTemperature heat = step.Temperatures.First(t => t.Of is TemperatureOf.Oven or TemperatureOf.Bath);
            double minutes = step.Times.Where(t => t.Kind is TimeKind.Oven or TimeKind.Cook).Max(t => t.MinutesMin ?? 0);
            string type = heat.Of == TemperatureOf.Oven ? "oven" : "bath";
            SheetKit? kit = occasion.Kit
                .Where(k => k.Type == type && (k.CelsiusMax is null || k.CelsiusMax >= heat.Celsius))
                .OrderBy(k => k.Place != occasion.SlotPlace)
                .FirstOrDefault(k => !set.TryGetValue(k.Code, out (double Celsius, int Used) s) || (Math.Abs(s.Celsius - heat.Celsius) < 0.5 && s.Used < (k.Shelves ?? 1) * k.Number));
            string what = segments[i].Items[0].Name;
            string celsius = heat.Celsius.ToString("0.#", CultureInfo.InvariantCulture);
            if (kit is null)
            {
                said.Add($"No {type} is free at {celsius} °C for what is begun of {what}: it is set aside in the cold and said to be finished another day.");
                continue;
            }

            if (set.Count > 0 && kit.Place != occasion.SlotPlace && set.Keys.Any(code => occasion.Kit.Any(k => k.Code == code && k.Type == type && k.Place == occasion.SlotPlace)))
            {
                string first = set.Keys.First(code => occasion.Kit.Any(k => k.Code == code && k.Type == type && k.Place == occasion.SlotPlace));
                said.Add($"{first} holds {set[first].Celsius.ToString("0.#", CultureInfo.InvariantCulture)} °C and cannot hold {celsius} °C too: {what} goes to {kit.Code} ({kit.Place}), preheated.");
            }

            set[kit.Code] = (heat.Celsius, set.TryGetValue(kit.Code, out (double Celsius, int Used) before) ? before.Used + 1 : 1);
            found[i] = new KitNeed(kit.Code, heat.Celsius, at, minutes, what);
        }

        return found.ToImmutable();
    }
}
