using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Cli.Commands;

/// <summary>What moves, as text and as JSON; shared by substitute and reach.</summary>
internal static class MovesText
{
    public static Option<string> Code()
    {
        Option<string> code = new("--code") { Description = "Whose law names allergens and panel: au, nz, uk, eu, us", DefaultValueFactory = _ => "au" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        return code;
    }

    /// <summary>Reads the price list, when one is named; an exit code when it cannot be read.</summary>
    public static int? Prices(string? path, out PriceList? list)
    {
        list = null;
        return path is not null && (list = PriceFile.Read(path, null, out int exit)) is null ? exit : null;
    }

    public static void Utf8() => Console.OutputEncoding = new UTF8Encoding(false);

    public static object Json(WhatMoves m) => new
    {
        components = m.Parts.Select(p => new { name = p.Component, figures = p.Figures.Select(f => new { f.Name, f.Unit, before = Round(f.Before), after = Round(f.After) }), set = p.Set }),
        allergensIn = m.AllergensIn, allergensOut = m.AllergensOut, ingredientsBefore = m.IngredientsBefore, ingredientsAfter = m.IngredientsAfter,
        panel = m.Panel.Select(r => new { r.Name, r.Unit, r.Before, r.After }),
        cost = m.CostBefore is { } a && m.CostAfter is { } b ? new { before = Math.Round(a.Amount, 4), after = Math.Round(b.Amount, 4), currency = a.Currency } : null,
        notPriced = m.NotPriced,
    };

    public static void Print(WhatMoves m)
    {
        if (m.Parts.IsEmpty)
        {
            Console.Out.WriteLine("\nNo figure of the mixture moves.");
        }

        foreach (MovedPart p in m.Parts)
        {
            Console.Out.WriteLine($"\n{(p.Component.Length > 0 ? p.Component : "(the dish)")}:");
            foreach (MovedFigure f in p.Figures)
            {
                Console.Out.WriteLine($"  {f.Name,-16} {Figure(f.Before, f.Decimals),10} → {Figure(f.After, f.Decimals),10} {f.Unit}");
            }

            foreach (string s in p.Set)
            {
                Console.Out.WriteLine("  " + s);
            }
        }

        Console.Out.WriteLine(m.AllergensIn.IsEmpty && m.AllergensOut.IsEmpty ? "\nAllergens: none come, none go." : "");
        foreach (string a in m.AllergensIn)
        {
            Console.Out.WriteLine("comes: " + a);
        }

        foreach (string a in m.AllergensOut)
        {
            Console.Out.WriteLine("goes: " + a);
        }

        Console.Out.WriteLine(m.IngredientsAfter);
        if (!m.Panel.IsEmpty)
        {
            Console.Out.WriteLine("Label per 100 g: " + string.Join(", ", m.Panel.Select(r => $"{r.Name} {r.Before} → {r.After} {r.Unit}")));
        }

        if (m.CostBefore is { } before && m.CostAfter is { } after)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Cost of the card{(m.NotPriced.IsEmpty ? "" : ", without the lines that are not priced")}: {before.Amount:0.00} → {after.Amount:0.00} {after.Currency}"));
        }

        foreach (string n in m.NotPriced)
        {
            Console.Out.WriteLine("  not priced: " + n);
        }
    }

    public static string Figure(double? x, int decimals) => x is { } v ? v.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : "not held";

    private static double? Round(double? x) => x is { } v ? Math.Round(v, 4, MidpointRounding.AwayFromZero) : null;
}
