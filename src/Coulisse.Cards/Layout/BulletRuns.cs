namespace Coulisse.Cards.Layout;

/// <summary>Bullets that stand right over numbered lines: the numbers are the steps, so each bullet is an item, whatever it tells.</summary>
/// <param name="lines">The lines of the card; asked for in order.</param>
internal sealed class BulletRuns(List<RawLine> lines)
{
    private int _end;

    /// <summary>True for a bullet of such a run.</summary>
    public bool Numbered(int i)
    {
        if (i >= _end)
        {
            _end = i;
            while (_end < lines.Count && Looks.Bullet(lines[_end].Text))
            {
                _end++;
            }
        }

        return _end < lines.Count && Reading.Marks.ListNumber(lines[_end].Text, 0) > 0;
    }
}
