using System.Collections.Immutable;

namespace Coulisse.Matter.Shapes;

/// <summary>A drawing to scale: a plain list of marks in millimetres, x to the right, y downwards. It knows no paper and no screen.</summary>
/// <param name="Title">What is drawn, one line; also the text for those who cannot see it.</param>
/// <param name="Width">Width of the drawn area, mm.</param>
/// <param name="Height">Height of the drawn area, mm.</param>
/// <param name="Marks">What is drawn, in order from back to front.</param>
public sealed record Drawing(string Title, double Width, double Height, ImmutableArray<Mark> Marks)
{
    /// <summary>The same drawing with further marks on top.</summary>
    public Drawing With(params ReadOnlySpan<Mark> marks) => this with { Marks = Marks.AddRange(marks) };
}
