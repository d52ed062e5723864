using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Safety;

/// <summary>How grave a finding is.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Should be changed or checked.</summary>
    Warn,

    /// <summary>Must not be done so.</summary>
    Stop,
}

/// <summary>What a rule found, with the figure, the limit and what would make it right.</summary>
/// <param name="Severity">How grave.</param>
/// <param name="Rule">Stable code of the rule (SAF…).</param>
/// <param name="Component">Component; empty for the whole dish.</param>
/// <param name="Line">Card line of the step; 0 when none.</param>
/// <param name="What">One sentence.</param>
/// <param name="Value">Figure found, with unit; empty when it cannot be shown.</param>
/// <param name="Limit">Limit, with unit.</param>
/// <param name="Margin">How far off, with unit.</param>
/// <param name="Remedy">What would make it right, computed where it can be.</param>
/// <param name="Source">The rule's source.</param>
public sealed record Finding(Severity Severity, string Rule, string Component, int Line, string What, string Value, string Limit, string Margin, string Remedy, string Source)
{
    /// <summary>How the figure came about.</summary>
    public Origin? Working { get; init; }
}

/// <summary>The verdict of a code of practice on a dish or a plan.</summary>
/// <param name="Code">Code of practice: au, nz, uk, eu, us.</param>
/// <param name="All">Findings, gravest first.</param>
/// <param name="ControlPoints">Drafted control points.</param>
public sealed record Findings(string Code, ImmutableArray<Finding> All, ImmutableArray<ControlPoint> ControlPoints)
{
    /// <summary>Bath steps judged a second time with the bath 1 °C low and the piece 10 % thicker, kept or not.</summary>
    public ImmutableArray<JudgedAgain> Again { get; init; } = [];

    /// <summary>The caution that goes with every verdict.</summary>
    public const string Caution = "Worked out from the figures shown; it certifies nothing. Local food law, your own food safety plan and a probe in the coldest place come first.";
}

/// <summary>A core limit judged as written and once more with the bath 1 °C low and the piece 10 % thicker.</summary>
/// <param name="Component">Component.</param>
/// <param name="Line">Card line of the step.</param>
/// <param name="Limit">The limit in words.</param>
/// <param name="Minutes">Minutes given.</param>
/// <param name="Needed">Minutes needed as written, cautious; null for never.</param>
/// <param name="Off">Minutes needed with both off; null for never.</param>
public sealed record JudgedAgain(string Component, int Line, string Limit, double Minutes, double? Needed, double? Off)
{
    /// <summary>Kept even so.</summary>
    public bool Kept => Off <= Minutes;

    /// <summary>In words, with the figures.</summary>
    public string Words
    {
        get
        {
            static string M(double? minutes) => minutes is { } m ? FormattableString.Invariant($"{Math.Ceiling(Math.Round(m, 6)):0} min") : "never";
            return FormattableString.Invariant($"{Component}: {Limit}. {Minutes:0.#} min given; {M(Needed)} needed as written; {M(Off)} with the bath 1 °C low and the piece 10 % thicker: {(Kept ? "kept" : "not kept")}.");
        }
    }
}

/// <summary>A control point in Codex terms.</summary>
/// <param name="Component">Component.</param>
/// <param name="Line">Card line of the step.</param>
/// <param name="Hazard">What may go wrong.</param>
/// <param name="Limit">Critical limit.</param>
/// <param name="Monitoring">What, how, when, who.</param>
/// <param name="Action">Corrective action.</param>
/// <param name="Record">What is written down.</param>
public sealed record ControlPoint(string Component, int Line, string Hazard, string Limit, string Monitoring, string Action, string Record)
{
    /// <summary>A reading keeps the limit from here up, °C; null where the limit is not one reading (cooling is, by stages).</summary>
    public double? LeastCelsius { get; init; }

    /// <summary>A reading keeps the limit from here down, °C; null likewise.</summary>
    public double? MostCelsius { get; init; }

    /// <summary>What a bath that stays low costs, the set point first left out; empty for what is in no bath or whose minutes cannot be shown.</summary>
    [JsonIgnore]
    public ImmutableArray<LowBath> WhenLow { get; init; } = [];
}

/// <summary>A bath below its set point.</summary>
/// <param name="Celsius">What it reads, °C.</param>
/// <param name="Minutes">Minutes in all until the limit is kept, the cautious case and the piece a tenth thicker, rounded up, never less than the card leaves it in; null when the middle never gets there.</param>
public sealed record LowBath(double Celsius, double? Minutes);
