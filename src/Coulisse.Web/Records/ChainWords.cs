using System.Globalization;
using Coulisse.Store;

namespace Coulisse.Web.Records;

/// <summary>What the check of a log's chain found, as a person says it.</summary>
internal static class ChainWords
{
    public static string Of(ChainCheck check)
        => !check.Broken.IsEmpty ? string.Create(CultureInfo.InvariantCulture, $"Entry {check.Broken[0]} no longer reads as it was written: somebody has changed the log.")
        : check.Entries switch
        {
            0 => "Nothing is written down yet.",
            1 => "One entry, as it was written: not altered since.",
            var n => string.Create(CultureInfo.InvariantCulture, $"{n} entries, each as it was written: none was altered or taken out since."),
        };
}
