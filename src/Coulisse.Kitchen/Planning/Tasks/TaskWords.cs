namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Words that planning puts before a card's own, by which papers know what kind of work they print.</summary>
public static class TaskWords
{
    /// <summary>Words before what is taken out of kit.</summary>
    public const string Out = "out: ";

    /// <summary>Words before what is looked at and left in kit until its cue.</summary>
    public const string StaysIn = "stays in until its cue: ";

    /// <summary>Words before what a step asks for after a wait.</summary>
    public const string Stood = "when it has stood: ";

    /// <summary>Words before the lines of a part whose card only says how it is baked.</summary>
    public const string Fill = "fill it before it goes in: ";
}
