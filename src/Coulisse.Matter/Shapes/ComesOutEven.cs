namespace Coulisse.Matter.Shapes;

/// <summary>An amount that comes out even: so many whole units use it up.</summary>
/// <param name="Units">Whole trays, tins, turns, roots or packs; or how many pieces of that size fill the place.</param>
/// <param name="Amount">The amount, in the unit of what was asked.</param>
public readonly record struct EvenAmount(int Units, double Amount);

/// <summary>An asked amount among those that come out even: itself when it does, and the next on either side.</summary>
/// <param name="Asked">What was asked.</param>
/// <param name="Smaller">The next smaller that comes out even; null when there is none.</param>
/// <param name="Exactly">What was asked, when it comes out even.</param>
/// <param name="Larger">The next larger that comes out even; null when there is none.</param>
/// <remarks>
/// The one idea behind every "next smaller and larger": even amounts stand in a row by their whole number of units, and the row either rises (plates on whole trays,
/// grams in whole tins, strips of whole turns) or falls (the widest round of which three, four, five stand in a ring). Nothing that comes out even lies between what was asked and its two neighbours.
/// </remarks>
public sealed record ComesOutEven(double Asked, EvenAmount? Smaller, EvenAmount? Exactly, EvenAmount? Larger)
{
    private const double Slack = 1e-8;

    /// <summary>Units that what was asked takes: its own when it comes out even, else those of the next larger.</summary>
    public int? Taken => (Exactly ?? Larger)?.Units;

    /// <summary>What is left when the units it takes are used whole.</summary>
    public double Over => Exactly is not null || Larger is not { } larger ? 0 : larger.Amount - Asked;

    /// <summary>Whole units that each give or hold the same.</summary>
    /// <param name="asked">More than 0.</param>
    /// <param name="each">What one unit gives, more than 0.</param>
    public static ComesOutEven Multiples(double asked, double each)
        => Among(asked, k => k * Positive(each, nameof(each)), Enough(asked / each));

    /// <summary>A whole shared out into equal pieces, none over.</summary>
    /// <param name="asked">Size of a piece, more than 0.</param>
    /// <param name="whole">What is shared out, more than 0.</param>
    /// <param name="between">Lost between two pieces.</param>
    public static ComesOutEven Shares(double asked, double whole, double between = 0)
        => Among(asked, k => ((Positive(whole, nameof(whole)) + between) / k) - between, Enough((whole + between) / (asked + between)));

    /// <summary>Any row of even amounts.</summary>
    /// <param name="asked">More than 0.</param>
    /// <param name="amount">Amount for 1, 2 … units: rising, or falling with equal neighbours allowed.</param>
    /// <param name="most">Most units looked at, 1 or more.</param>
    public static ComesOutEven Among(double asked, Func<int, double> amount, int most)
    {
        Positive(asked, nameof(asked));
        ArgumentNullException.ThrowIfNull(amount);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        bool rising = amount(most) > amount(1);
        double slack = Slack * asked;

        // places in the row at which it passes what was asked: first that is no longer before it, first that is after it
        int reaches = First(k => rising ? amount(k) >= asked - slack : amount(k) <= asked + slack, most);
        int passes = First(k => rising ? amount(k) > asked + slack : amount(k) < asked - slack, most);
        EvenAmount? before = reaches > 1 ? new(reaches - 1, amount(reaches - 1)) : null;
        EvenAmount? exactly = passes > reaches ? new(passes - 1, asked) : null;
        EvenAmount? after = passes > most || amount(passes) <= 0 ? null : Last(passes, amount, most, slack);
        return rising ? new(asked, before, exactly, after) : new(asked, after, exactly, before);
    }

    // Of pieces that are equally large the greatest number counts: seven rounds stand where six do.
    private static EvenAmount Last(int at, Func<int, double> amount, int most, double slack)
    {
        double value = amount(at);
        return new(First(k => k > at && Math.Abs(amount(k) - value) > slack, most) - 1, value);
    }

    private static int First(Func<int, bool> holds, int most)
    {
        int low = 1;
        int high = most + 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (holds(middle))
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return low;
    }

    private static int Enough(double units) => (int)Math.Clamp(Math.Ceiling(units) + 2, 2, 1e8);

    private static double Positive(double value, string name) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "What comes out even is more than 0.");
}
