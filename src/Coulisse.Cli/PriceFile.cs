using System.Text;
using Coulisse.Formats.In;
using Coulisse.Kitchen.Needs;
using NodaTime;

namespace Coulisse.Cli;

/// <summary>Price lists of the commands: CSV or XLSX, with heads that were explained once and are remembered beside the list.</summary>
internal static class PriceFile
{
    /// <summary>File beside a list that says what its heads stand for, "meaning TAB head" a line.</summary>
    public const string HeadsName = "price-heads.tsv";

    public static LocalDate Today => LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().Date);

    /// <summary>The price list with the prices of a day (today when none is given); null, with the exit code, when it cannot be read.</summary>
    public static PriceList? Read(string path, string? currency, out int exit, LocalDate? on = null)
    {
        if (Input.Bytes(path, out exit) is not { } bytes || Heads(path, out exit) is not { } heads)
        {
            return null;
        }

        int failed = Exit.Done;
        PriceList? list = TableFile.Text(bytes).Match(text => PriceList.Read(text, currency, heads, on ?? Today), p => new Coulisse.Cards.Parsed<PriceList>.Failed(p)).Match<PriceList?>(l => l, problems =>
        {
            failed = Input.Fail(path, problems);
            return null;
        });
        exit = failed;
        return list;
    }

    /// <summary>Heads explained for the lists of this folder; null, with the exit code, when their file cannot be read.</summary>
    public static PriceHeads? Heads(string list, out int exit)
    {
        exit = Exit.Done;
        string file = HeadsFile(list);
        return !File.Exists(file) ? PriceHeads.None : Input.Bytes(file, out exit) is { } bytes ? PriceHeads.Read(Encoding.UTF8.GetString(bytes)) : null;
    }

    /// <summary>Remembers what a head stands for, for every list of this folder.</summary>
    public static void Remember(string list, PriceHeads heads) => File.WriteAllText(HeadsFile(list), heads.Write(), new UTF8Encoding(false));

    private static string HeadsFile(string list) => Path.Combine(list == "-" ? "." : Path.GetDirectoryName(Path.GetFullPath(list)) ?? ".", HeadsName);
}
