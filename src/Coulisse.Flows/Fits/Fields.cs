namespace Coulisse.Flows.Fits;

/// <summary>Fields that several fits share.</summary>
internal static class Fields
{
    public static readonly FitField Gap = new("gap", "Room between two pieces, or lost at a cut, mm", FitInput.Room);
    public static readonly FitField Edge = new("edge", "Trimmed from every side first, mm", FitInput.Room);
    public static readonly FitField Density = new("density", "Density, g/mL", FitInput.Number, "1");
    public static readonly FitField Count = new("count", "Pieces wanted", FitInput.Count);
    public static readonly FitField Each = new("each", "Weight of one piece, g", FitInput.Number);
    public static readonly FitField Have = new("have", "Filling there is, g", FitInput.Number);
    public static readonly FitField Sheet = new("sheet", "Sheet to take them from, length x width, mm", FitInput.Sizes) { Numbers = (2, 2), Example = "530x325" };
    public static readonly FitField Lost = new("lost", "Lost, per cent", FitInput.Percent, "10");
    public static readonly FitField Peel = new("peel", "Peeled all round, mm", FitInput.Room, "3");

    /// <summary>A field that must be given.</summary>
    public static FitField Needed(string name, string label, FitInput input, string example, int least = 1, int most = 1)
        => new(name, label, input) { Needed = true, Example = example, Numbers = (least, most) };
}
