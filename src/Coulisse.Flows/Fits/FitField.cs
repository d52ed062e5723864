using System.Collections.Immutable;

namespace Coulisse.Flows.Fits;

/// <summary>How a field of a fit is read.</summary>
public enum FitInput
{
    /// <summary>Millimetres joined by x: "330x220x18".</summary>
    Sizes,

    /// <summary>One length, more than 0 mm.</summary>
    Millimetres,

    /// <summary>One length, 0 mm or more.</summary>
    Room,

    /// <summary>A plain number more than 0.</summary>
    Number,

    /// <summary>Per cent, 0 to under 100.</summary>
    Percent,

    /// <summary>A whole number, 1 or more.</summary>
    Count,

    /// <summary>A whole number, 0 or more.</summary>
    Spare,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>A tin as a cook writes it: "200x50", "GN 1/2 65".</summary>
    Tin,
}

/// <summary>One thing a fit asks for: an argument or option of the command, a field of the page.</summary>
/// <param name="Name">Its name, as the option is written.</param>
/// <param name="Label">What it is, with its unit.</param>
/// <param name="Input">How it is read.</param>
/// <param name="Default">Taken when nothing is given; empty for none.</param>
public sealed record FitField(string Name, string Label, FitInput Input, string Default = "")
{
    /// <summary>Must be given; an argument of the command, in this order.</summary>
    public bool Needed { get; init; }

    /// <summary>What the page shows to begin with.</summary>
    public string Example { get; init; } = "";

    /// <summary>Fewest and most numbers of <see cref="FitInput.Sizes"/>.</summary>
    public (int Least, int Most) Numbers { get; init; } = (1, 1);

    /// <summary>Words to choose from.</summary>
    public ImmutableArray<string> Words { get; init; } = [];
}

/// <summary>A question of what fits: its fields and how it is worked out.</summary>
/// <param name="Name">Word of the command.</param>
/// <param name="Title">What the page calls it.</param>
/// <param name="What">What it answers, one line.</param>
/// <param name="Example">The command with an example that works, without the program's name.</param>
/// <param name="Fields">What it asks for.</param>
/// <param name="Work">From read values to the answer; a shape that cannot be is refused by an <see cref="ArgumentOutOfRangeException"/> whose message is written for the person.</param>
public sealed record FitKind(string Name, string Title, string What, string Example, ImmutableArray<FitField> Fields, Func<FitValues, FitAnswer> Work)
{
    /// <summary>The values of the example, by field: what the page begins with.</summary>
    public ImmutableDictionary<string, string> ExampleValues
    {
        get
        {
            ImmutableDictionary<string, string>.Builder values = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
            string[] words = [.. Example.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Skip(2)];
            Queue<FitField> needed = new(Fields.Where(f => f.Needed));
            for (int i = 0; i < words.Length; i++)
            {
                bool option = words[i].StartsWith("--", StringComparison.Ordinal);
                FitField asked = option ? Fields.First(f => f.Name == words[i][2..]) : needed.Dequeue();
                values[asked.Name] = option && asked.Input != FitInput.Flag ? words[++i] : option ? "yes" : words[i];
            }

            return values.ToImmutable();
        }
    }
}
