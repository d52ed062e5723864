using System.Formats.Tar;
using System.IO.Compression;
using System.Text;

namespace Coulisse.Gauge.Planning.Reading;

/// <summary>The instances of one archive, read in memory: nothing is unpacked to disk.</summary>
internal static class InstanceArchive
{
    /// <summary>No single instance of the sets is near this size; a larger entry is refused rather than read.</summary>
    private const long MostBytes = 4 * 1024 * 1024;

    public static IEnumerable<(string Name, string Text)> Read(string path, Func<string, bool> wanted)
    {
        using FileStream file = File.OpenRead(path);
        using GZipStream unzipped = new(file, CompressionMode.Decompress);
        using TarReader tar = new(unzipped);
        while (tar.GetNextEntry() is { } entry)
        {
            string name = Path.GetFileName(entry.Name);
            if (entry.DataStream is null || !wanted(name))
            {
                continue;
            }

            if (entry.Length > MostBytes)
            {
                throw new InvalidDataException($"{path}: {entry.Name} is larger than any instance of these sets.");
            }

            using StreamReader text = new(entry.DataStream, Encoding.Latin1);
            yield return (name, text.ReadToEnd());
        }
    }
}
