using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>What if something fails, and what one more of something would save.</summary>
/// <param name="Plan">Plan.</param>
/// <param name="Title">Occasion.</param>
/// <param name="Says">How far it is.</param>
/// <param name="Running">True while more is being solved.</param>
/// <param name="Fails">Failures with their answers, as they are solved.</param>
/// <param name="Worth">One more of each.</param>
public sealed record WhatIfView(string Plan, string Title, string Says, bool Running, ImmutableArray<WhatIfRow> Fails, ImmutableArray<WorthRow> Worth)
{
    /// <summary>Nothing was asked yet.</summary>
    public static WhatIfView Unasked(string plan, string title) => new(plan, title, "", false, [], []);

    /// <summary>Whether anybody asked.</summary>
    public bool Asked => Says.Length > 0;
}

/// <summary>A failure with its answer.</summary>
/// <param name="Kind">kit, person or delay.</param>
/// <param name="What">What fails.</param>
/// <param name="Answer">What to do.</param>
/// <param name="Holds">False when something is given up.</param>
/// <param name="Changes">What changes, a sentence for each person.</param>
public sealed record WhatIfRow(string Kind, string What, string Answer, bool Holds, ImmutableArray<string> Changes);

/// <summary>One more of something.</summary>
/// <param name="What">Of what.</param>
/// <param name="Words">What it would save.</param>
/// <param name="Saves">Whether it saves anything.</param>
public sealed record WorthRow(string What, string Words, bool Saves);
