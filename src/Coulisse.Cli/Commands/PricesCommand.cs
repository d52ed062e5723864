using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse prices LIST [CARD|FOLDER…]: the prices in force, how they came about, and what a change does to every dish.</summary>
internal static class PricesCommand
{
    private sealed record Asked(string List, string[] Cards, LocalDate On, LocalDate? Before, string? Old, string[] Changes, string? Currency, bool Json);

    public static Command Create()
    {
        Argument<string> list = new("LIST") { Description = "Price list, CSV or XLSX" };
        Argument<string[]> cards = new("CARD|FOLDER") { Description = "Cards, or folders of them, whose cost is asked about", Arity = ArgumentArity.ZeroOrMore };
        Option<string?> on = new("--on") { Description = "Day whose prices are in force, 2026-10-08 (default: today)" };
        Option<string?> before = new("--before") { Description = "Day to compare with (default: the day before the newest change)" };
        Option<string?> old = new("--old") { Description = "Earlier list to compare with" };
        Option<string[]> change = new("--change") { Description = "Another price tried, \"ITEM=2.60\" or \"ITEM=+10%\"; may be given again" };
        Option<string[]> head = new("--head") { Description = $"What a column is, \"COLUMN=MEANING\"; remembered beside the list. Meanings: {string.Join(", ", PriceHeads.Meanings.Where(m => m.Key.Length > 0).Select(m => m.Key))}, ignore" };
        Option<string?> currency = OrderCommand.CurrencyOption();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("prices", "The prices in force, their history, and what a change does to every dish.\nExample: coulisse prices examples/demo/prices.csv examples/demo/cards --change \"butter, unsalted=+20%\"") { list, cards, on, before, old, change, head, currency, json };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(list);
            if (Day(parsed.GetValue(on)) is { Wrong: true } || Day(parsed.GetValue(before)) is { Wrong: true })
            {
                return Input.Fail(Exit.Usage, "--on and --before are days such as 2026-10-08.");
            }

            if ((parsed.GetValue(head) ?? []) is { Length: > 0 } said && Explain(path, said) is > 0 and var wrong)
            {
                return wrong;
            }

            return Run(new Asked(path, parsed.GetValue(cards) ?? [], Day(parsed.GetValue(on)).Day ?? PriceFile.Today, Day(parsed.GetValue(before)).Day, parsed.GetValue(old), parsed.GetValue(change) ?? [], parsed.GetValue(currency), parsed.GetValue(json)));
        });
        return command;
    }

    private static (LocalDate? Day, bool Wrong) Day(string? text) => text is null ? (null, false) : LocalDatePattern.Iso.Parse(text) is { Success: true } d ? (d.Value, false) : (null, true);

    private static int Explain(string list, string[] said)
    {
        if (PriceFile.Heads(list, out int exit) is not { } heads)
        {
            return exit;
        }

        foreach (string text in said)
        {
            int eq = text.LastIndexOf('=');
            string meaning = eq > 0 ? text[(eq + 1)..].Trim() : "?";
            meaning = meaning == "ignore" ? "" : meaning;
            if (!PriceHeads.Meanings.Any(m => m.Key == meaning))
            {
                return Input.Fail(Exit.Usage, $"--head \"{text}\": write \"COLUMN=MEANING\", the meaning one of {string.Join(", ", PriceHeads.Meanings.Where(m => m.Key.Length > 0).Select(m => m.Key))}, ignore.");
            }

            heads = heads.With(text[..eq], meaning);
        }

        try
        {
            PriceFile.Remember(list, heads);
            return Exit.Done;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Input.Fail(Exit.Storage, $"{PriceFile.HeadsName} cannot be written: {e.Message}");
        }
    }

    private static int Run(Asked asked)
    {
        if (PriceFile.Read(asked.List, asked.Currency, out int exit, asked.On) is not { } list || Lists(asked, list, out exit) is not var (before, after) || Dishes(asked.Cards, out exit) is not { } dishes)
        {
            return exit;
        }

        PriceChange change = PriceChange.Of(dishes, before, after);
        return asked.Json ? PricesOutput.Json(list, asked.On, change) : PricesOutput.Print(list, change);
    }

    // What is compared: an earlier list, an earlier day, or the prices in force with a few of them changed.
    private static (PriceList Before, PriceList After)? Lists(Asked asked, PriceList list, out int exit)
    {
        exit = Exit.Done;
        PriceList? before = asked.Old is { } old ? PriceFile.Read(old, asked.Currency ?? list.Currency, out exit, asked.On)
            : asked.Before is { } day ? list.On(day)
            : asked.Changes.Length > 0 ? list
            : list.Rows.Max(r => r.Since) is { } newest ? list.On(newest.PlusDays(-1)) : list;
        if (before is null)
        {
            return null;
        }

        if (before.Currency != list.Currency)
        {
            exit = Input.Fail(Exit.Problems, $"one list is in {before.Currency}, the other in {list.Currency}; prices of two currencies are not compared.");
            return null;
        }

        PriceList after = list;
        foreach (string text in asked.Changes)
        {
            int eq = text.LastIndexOf('=');
            string item = eq > 0 ? text[..eq].Trim() : "";
            string to = eq > 0 ? text[(eq + 1)..].Trim() : "";
            decimal? share = to.EndsWith('%') && decimal.TryParse(to.TrimEnd('%', ' ').TrimStart('+'), NumberStyles.Number, CultureInfo.InvariantCulture, out decimal p) && p > -100 ? 1 + (p / 100) : null;
            decimal? price = share is null && decimal.TryParse(to, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal n) ? n : null;
            if ((share is null && price is null) || item.Length == 0)
            {
                exit = Input.Fail(Exit.Usage, $"--change \"{text}\": write \"ITEM=2.60\" or \"ITEM=+10%\".");
                return null;
            }

            PriceRow[] packs = [.. list.Rows.Where(r => r.Item.Equals(item, StringComparison.OrdinalIgnoreCase))];
            if (packs.Length == 0 || (price is not null && packs.Length > 1))
            {
                exit = Input.Fail(Exit.Problems, packs.Length == 0 ? $"the list has no “{item}”; name it as the list does." : $"“{item}” is sold in {packs.Length} packs; give a change in percent, or change the list.");
                return null;
            }

            after = after.With(r => r.Item.Equals(item, StringComparison.OrdinalIgnoreCase) ? price ?? Math.Round(r.Price.Amount * share!.Value, 4) : null);
        }

        return (before, after);
    }

    private static ImmutableArray<ShelvedDish>? Dishes(string[] cards, out int exit)
    {
        exit = Exit.Done;
        ImmutableArray<ShelvedDish>.Builder dishes = ImmutableArray.CreateBuilder<ShelvedDish>();
        foreach (string path in cards.SelectMany(c => Directory.Exists(c) ? [.. Directory.EnumerateFiles(c, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal)] : new[] { c }))
        {
            exit = WeighCommand.Read(path, null, weighed => Scaling.Scale(weighed, new ScaleTo.Factor(1)).Match(
                batch =>
                {
                    dishes.Add(ShelvedDish.Of(batch));
                    return Exit.Done;
                },
                problems => Input.Fail(path, problems)));
            if (exit != Exit.Done)
            {
                return null;
            }
        }

        return dishes.ToImmutable();
    }
}
