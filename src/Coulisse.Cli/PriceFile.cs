using System.Text;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Cli;

/// <summary>Price lists of the order and cost commands.</summary>
internal static class PriceFile
{
    /// <summary>The price list; null, with the exit code, when it cannot be read.</summary>
    public static PriceList? Read(string path, string? currency, out int exit)
    {
        if (Input.Bytes(path, out exit) is not { } bytes)
        {
            return null;
        }

        int failed = Exit.Done;
        PriceList? list = PriceList.Read(Encoding.UTF8.GetString(bytes), currency).Match<PriceList?>(l => l, problems =>
        {
            failed = Input.Fail(path, problems);
            return null;
        });
        exit = failed;
        return list;
    }
}
