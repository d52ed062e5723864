using System.Collections.Immutable;

namespace Coulisse.Matter.Reference;

/// <summary>The head of one of our tables while it is read: keys and values, a later line over an earlier one.</summary>
/// <remarks>Every command loads tables and hardly one asks for a head, so the dictionary is made only when it is asked for.</remarks>
internal sealed class TableHead
{
    private static readonly string[] Required = ["Title", "Source", "Licence", "Opened", "Units"];
    private readonly List<string> _keys = [];
    private readonly List<string> _values = [];

    /// <summary>Takes a line that starts with <c>#</c>; one without a key is a remark.</summary>
    public void Take(ReadOnlySpan<char> line)
    {
        int colon = line.IndexOf(':');
        if (colon > 1)
        {
            _keys.Add(new string(line[1..colon].Trim()));
            _values.Add(new string(line[(colon + 1)..].Trim()));
        }
    }

    /// <summary>The first key that every table must have and this one has not, or has empty; null when all are there.</summary>
    public string? Lacks()
    {
        foreach (string key in Required)
        {
            int at = _keys.LastIndexOf(key);
            if (at < 0 || _values[at].Length == 0)
            {
                return key;
            }
        }

        return null;
    }

    /// <summary>The entries by key.</summary>
    public ImmutableDictionary<string, string> ToDictionary()
    {
        ImmutableDictionary<string, string>.Builder entries = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        for (int i = 0; i < _keys.Count; i++)
        {
            entries[_keys[i]] = _values[i];
        }

        return entries.ToImmutable();
    }
}
