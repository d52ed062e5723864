namespace Coulisse.Store;

/// <summary>What a person may do in a kitchen that is open to a network.</summary>
public static class PersonRole
{
    public const string Chef = "chef";
    public const string Helper = "helper";
    public const string Buyer = "buyer";
    public const string Auditor = "auditor";

    /// <summary>The four, in the order in which they are offered.</summary>
    public static readonly string[] All = [Chef, Helper, Buyer, Auditor];
}

/// <summary>Somebody who may sign in.</summary>
/// <param name="Id">Key.</param>
/// <param name="Name">As they are called; also what they sign in with.</param>
/// <param name="Role">One of <see cref="PersonRole"/>.</param>
/// <param name="Owner">Decides who else may come in; one to a kitchen.</param>
/// <param name="Password">Hash; empty until the person has set one.</param>
/// <param name="Stamp">Changes when sessions must end.</param>
/// <param name="Failed">Wrong passwords in a row.</param>
/// <param name="LockedUntil">No sign-in before; null when not locked.</param>
/// <param name="Made">When they were added.</param>
public sealed record KeptPerson(string Id, string Name, string Role, bool Owner, string Password, string Stamp, int Failed, DateTimeOffset? LockedUntil, DateTimeOffset Made);

/// <summary>A link that opens one thing for a short time.</summary>
/// <param name="Id">Key; not the secret, which is signed from it.</param>
/// <param name="Purpose">What it is for: one thing only.</param>
/// <param name="Subject">What it opens.</param>
/// <param name="Who">For whom.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Expires">When it stops.</param>
/// <param name="Ended">When it was used up or taken back; null while it holds.</param>
public sealed record KeptLink(string Id, string Purpose, string Subject, string Who, DateTimeOffset Made, DateTimeOffset Expires, DateTimeOffset? Ended);

/// <summary>A file beside a document: a photograph, a probe's readings.</summary>
public sealed record KeptFile(string Id, string DocumentId, string Name, string Type, int Bytes, string Hash, DateTimeOffset Made);
