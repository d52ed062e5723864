namespace Coulisse.Gauge.Reading;

/// <summary>Rights of one kind, and the misses by name.</summary>
internal sealed class Score(string name)
{
    public string Name => name;

    public int Right { get; private set; }

    public int All { get; private set; }

    public List<string> Misses { get; } = [];

    public void Add(bool right, Func<string> miss)
    {
        All++;
        Right += right ? 1 : 0;
        if (!right)
        {
            Misses.Add(miss());
        }
    }
}
