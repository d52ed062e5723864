namespace Coulisse.Matter.Quantities;

/// <summary>An amount of money, decimal and with its currency, so that cents add exactly and currencies never mix.</summary>
/// <param name="Amount">The amount; may be negative (a credit).</param>
/// <param name="Currency">ISO 4217 code, or the sheet's own sign.</param>
public readonly record struct Money(decimal Amount, string Currency)
{
    /// <summary>Sum in one currency.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator +(Money a, Money b) => new(a.Amount + b.Amount, Same(a, b));

    /// <summary>Difference in one currency.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator -(Money a, Money b) => new(a.Amount - b.Amount, Same(a, b));

    /// <summary>Scaled by a plain number.</summary>
    public static Money operator *(Money a, decimal factor) => a with { Amount = a.Amount * factor };

    /// <summary>Rounded to cents, half away from zero (common practice, no source).</summary>
    public Money ToCents() => this with { Amount = Math.Round(Amount, 2, MidpointRounding.AwayFromZero) };

    private static string Same(Money a, Money b) => a.Currency == b.Currency
        ? a.Currency
        : throw new InvalidOperationException($"{a.Currency} and {b.Currency} cannot be added.");
}
