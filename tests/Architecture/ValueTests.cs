using System.Reflection;
using System.Runtime.CompilerServices;

namespace Coulisse.Architecture.Tests;

/// <summary>What travels is immutable: no settable property in the computing rooms (init is allowed).</summary>
public sealed class ValueTests
{
    private static readonly Assembly[] Pure =
    [
        typeof(Coulisse.Matter.Quantities.Mass).Assembly,
        typeof(Coulisse.Cards.Dish).Assembly,
        typeof(Coulisse.Kitchen.Planning.Plan).Assembly,
    ];

    [Fact]
    public void No_public_property_of_a_computing_room_can_be_set_after_birth()
        => Assert.Empty(Pure.SelectMany(a => a.GetExportedTypes()).SelectMany(Settable));

    [Fact]
    public void A_planted_setter_is_seen()
        => Assert.Single(Settable(typeof(Planted.Lower.Low)));

    [Fact]
    public void No_public_field_of_a_computing_room_can_be_written()
        => Assert.Empty(Pure.SelectMany(a => a.GetExportedTypes()).Where(t => !t.IsEnum)
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(f => !f.IsInitOnly && !f.IsLiteral).Select(f => $"{f.DeclaringType}.{f.Name}"));

    private static IEnumerable<string> Settable(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        .Where(p => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
        .Select(p => $"{p.DeclaringType}.{p.Name}");
}
