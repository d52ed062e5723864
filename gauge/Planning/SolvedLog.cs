using System.Text;

namespace Coulisse.Gauge.Planning;

/// <summary>A log that grows by one line an instance and way, written through at once: a run that is cut off loses nothing and is gone on with by the same command.</summary>
internal sealed class SolvedLog
{
    private readonly string? _path;
    private readonly Dictionary<(string, string, string, double, int, int), Solved> _known = [];

    public SolvedLog(string? path)
    {
        _path = path;
        string text = path is not null && File.Exists(path) ? File.ReadAllText(path) : "";
        foreach (Solved s in text.Split('\n').Select(Solved.Read).OfType<Solved>())
        {
            _known[s.Key] = s;
        }

        // A last line that was cut off while it was written is ended, so that the next stands alone.
        if (text.Length > 0 && text[^1] != '\n')
        {
            File.AppendAllText(path!, "\n");
        }
    }

    public Solved? Find(Solved like) => _known.GetValueOrDefault(like.Key);

    public void Add(Solved solved)
    {
        _known[solved.Key] = solved;
        if (_path is not null)
        {
            using FileStream file = new(_path, FileMode.Append, FileAccess.Write, FileShare.Read);
            file.Write(Encoding.UTF8.GetBytes(solved.Line() + "\n"));
            file.Flush(flushToDisk: true);
        }
    }
}
