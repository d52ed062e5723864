using System.Collections.Immutable;
using Coulisse.Matter.Shapes;

namespace Coulisse.Kitchen.Plating;

/// <summary>How a part lies on the plate.</summary>
public abstract record PlateForm
{
    private PlateForm()
    {
    }

    /// <summary>A bar, its near long side at the distance from the middle.</summary>
    /// <param name="LengthMillimetres">Along the rim.</param>
    /// <param name="WidthMillimetres">Outwards.</param>
    public sealed record Bar(double LengthMillimetres, double WidthMillimetres) : PlateForm;

    /// <summary>A half-disc whose fold stands across the line to the middle, bulging outwards.</summary>
    /// <param name="RadiusMillimetres">Radius.</param>
    public sealed record HalfDisc(double RadiusMillimetres) : PlateForm;

    /// <summary>A dot: half a ball.</summary>
    /// <param name="Grams">Weight.</param>
    /// <param name="GramsPerMillilitre">Density.</param>
    public sealed record Dot(double Grams, double GramsPerMillilitre) : PlateForm
    {
        /// <summary>Diameter on the plate: m/ρ = ⅔ π r³.</summary>
        public double Across => 2 * Math.Cbrt(3 * Grams / GramsPerMillilitre * 1000 / (2 * Math.PI));
    }
}

/// <summary>One part of the plate, in the order it goes on.</summary>
/// <param name="Name">Part.</param>
/// <param name="Grams">Weight on one plate.</param>
/// <param name="Allowed">Grams it may be out.</param>
/// <param name="Tool">Tool.</param>
/// <param name="Form">Shape of one piece.</param>
/// <param name="OutMillimetres">Distance of its near side, fold or centre from the middle of the plate.</param>
/// <param name="Clock">Where each piece lies, hours on a clock face; 12 is away from the guest.</param>
public sealed record PlatedPart(string Name, double Grams, double Allowed, string Tool, PlateForm Form, double OutMillimetres, ImmutableArray<double> Clock)
{
    /// <summary>Goes on before the plate is chilled.</summary>
    public bool BeforeChill { get; init; } = true;

    /// <summary>Pieces of the part may overlap each other (shingled).</summary>
    public bool Shingled { get; init; }

    /// <summary>Clock positions of a fan: so many pieces about a middle, so many degrees apart.</summary>
    /// <param name="middle">Hours.</param>
    /// <param name="pieces">How many.</param>
    /// <param name="degrees">Apart.</param>
    public static ImmutableArray<double> Fan(double middle, int pieces, double degrees) => [.. Enumerable.Range(0, pieces).Select(i => middle + ((i - ((pieces - 1) / 2.0)) * degrees / 30))];
}

/// <summary>A plate that another hand can copy: parts, places, and whether they clear each other and the rim.</summary>
/// <param name="FlatMillimetres">Diameter of the flat.</param>
/// <param name="Parts">Parts in plating order.</param>
public sealed record PlateGuide(double FlatMillimetres, ImmutableArray<PlatedPart> Parts)
{
    /// <summary>Weight of the plate.</summary>
    public double Grams => Parts.Sum(p => p.Grams);

    /// <summary>Farthest point of a part from the middle of the plate, mm.</summary>
    /// <param name="part">One of the parts.</param>
    public static double Reach(PlatedPart part) => Outlines(part).SelectMany(o => o).Max(p => Math.Sqrt((p.X * p.X) + (p.Y * p.Y)));

    /// <summary>Parts that reach over the flat, with the millimetres by which they do.</summary>
    public ImmutableArray<(string Part, double Millimetres)> OverRim => [.. Parts.Select(p => (p.Name, Reach(p) - (FlatMillimetres / 2))).Where(x => x.Item2 > 1e-6)];

    /// <summary>Room between every two parts, mm; below 0 they overlap by as much. Pieces of one part are counted against each other unless it is shingled.</summary>
    public ImmutableArray<(string One, string Other, double Millimetres)> Clearances
    {
        get
        {
            ImmutableArray<(string, string, double)>.Builder found = ImmutableArray.CreateBuilder<(string, string, double)>();
            ImmutableArray<ImmutableArray<DrawnPoint>>[] outlines = [.. Parts.Select(Outlines)];
            for (int a = 0; a < Parts.Length; a++)
            {
                for (int b = a; b < Parts.Length; b++)
                {
                    double least = double.PositiveInfinity;
                    for (int i = 0; i < outlines[a].Length; i++)
                    {
                        for (int j = a == b ? i + 1 : 0; j < outlines[b].Length && !(a == b && Parts[a].Shingled); j++)
                        {
                            least = Math.Min(least, ConvexGap.Between(outlines[a][i], outlines[b][j]));
                        }
                    }

                    if (!double.IsInfinity(least))
                    {
                        found.Add((Parts[a].Name, Parts[b].Name, least));
                    }
                }
            }

            return found.ToImmutable();
        }
    }

    /// <summary>Parts that lie on each other although neither is laid on the other.</summary>
    public ImmutableArray<(string One, string Other, double Millimetres)> Overlaps => [.. Clearances.Where(c => c.Millimetres < -1e-6).Select(c => (c.One, c.Other, -c.Millimetres))];

    /// <summary>The plate from above, to scale.</summary>
    /// <param name="plateMillimetres">Diameter of the whole plate.</param>
    /// <param name="labels">What stands on each part; null numbers them in plating order.</param>
    public Drawing Draw(double plateMillimetres, IReadOnlyList<string>? labels = null)
    {
        double c = plateMillimetres / 2;
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new CircleMark(c, c, c, Ink.Outline));
        marks.Add(new CircleMark(c, c, FlatMillimetres / 2, Ink.Guide));
        for (int i = 0; i < Parts.Length; i++)
        {
            ImmutableArray<ImmutableArray<DrawnPoint>> pieces = Outlines(Parts[i]);
            marks.AddRange(pieces.Select(o => new PolygonMark([.. o.Select(p => new DrawnPoint(c + p.X, c + p.Y))], Closed: true, i % 2 == 0 ? Ink.Piece : Ink.PieceTwo)));
            DrawnPoint at = pieces[pieces.Length / 2].Aggregate(new DrawnPoint(0, 0), (s, p) => new(s.X + (p.X / pieces[pieces.Length / 2].Length), s.Y + (p.Y / pieces[pieces.Length / 2].Length)));
            marks.Add(new TextMark(c + at.X, c + at.Y + 2, labels?[i] ?? (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), 6, Ink.Guide));
        }

        return new(FormattableString.Invariant($"Plate of {plateMillimetres:0} mm from above, 12 o'clock at the top: {string.Join(", ", Parts.Select((p, i) => FormattableString.Invariant($"{i + 1} {p.Name} {p.Grams:0.0} g")))}"), plateMillimetres, plateMillimetres, marks.ToImmutable());
    }

    /// <summary>Outline of each piece of a part, middle of the plate at 0, y downwards.</summary>
    private static ImmutableArray<ImmutableArray<DrawnPoint>> Outlines(PlatedPart part) => [.. part.Clock.Select(hour => Turned(part, hour * Math.PI / 6))];

    private static ImmutableArray<DrawnPoint> Turned(PlatedPart part, double angle) => [.. Upright(part).Select(p => new DrawnPoint((p.X * Math.Cos(angle)) - (p.Y * Math.Sin(angle)), (p.X * Math.Sin(angle)) + (p.Y * Math.Cos(angle))))];

    // A piece at 12 o'clock: out is upwards, so y is negative.
    private static IEnumerable<DrawnPoint> Upright(PlatedPart part)
    {
        double o = part.OutMillimetres;
        return part.Form switch
        {
            PlateForm.Bar b => [new(-b.LengthMillimetres / 2, -o), new(b.LengthMillimetres / 2, -o), new(b.LengthMillimetres / 2, -o - b.WidthMillimetres), new(-b.LengthMillimetres / 2, -o - b.WidthMillimetres)],
            PlateForm.HalfDisc h => Arc(-o, h.RadiusMillimetres, -90, 90),
            PlateForm.Dot d => Arc(-o, d.Across / 2, 0, 357),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    // A point every 3 degrees, on a circle a hair too wide, so that a clearance is never told too large.
    private static IEnumerable<DrawnPoint> Arc(double y, double radius, int from, int to)
    {
        double r = radius / Math.Sqrt(Math.Cos(1.5 * Math.PI / 180));
        for (int a = from; a <= to; a += 3)
        {
            yield return new(r * Math.Sin(a * Math.PI / 180), y - (r * Math.Cos(a * Math.PI / 180)));
        }
    }
}
