namespace Coulisse.Cards.Layout;

/// <summary>What a heading does to what follows it.</summary>
internal sealed partial class Shaper
{
    /// <summary>Level of the heading over the method: what stands deeper names a part of the work, and no list begins there.</summary>
    private int _methodLevel = int.MaxValue;

    private void Head(string name, int level, Span span)
    {
        if (name.Length == 0)
        {
            return;
        }

        bool title = level == 1 && !_titled;
        string? section = title ? null : Sections.Of(name, lang);
        _mode = title ? _mode : section ?? "";
        _named |= !title && section is null;
        _titled |= title;
        (_plain, _bulleted) = (0, false);
        _steps &= !_marked || title || level > _methodLevel;
        _methodLevel = section == "method" ? level : level <= _methodLevel ? int.MaxValue : _methodLevel;
        Add(new Piece(PieceKind.Heading, name, span, level));
    }
}
