using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>The sign-in page.</summary>
/// <param name="To">Where to go after.</param>
/// <param name="Says">What went wrong; empty at first.</param>
/// <param name="Passkeys">Whether a passkey may be used here.</param>
public sealed record SignInView(string To, string Says, bool Passkeys);

/// <summary>The page on which a person sets a password: the owner at first, others by a link of the owner's.</summary>
/// <param name="At">Where it is sent.</param>
/// <param name="Token">The link's token.</param>
/// <param name="Name">The person; empty when they choose their name here.</param>
/// <param name="Says">What went wrong; empty at first.</param>
/// <param name="Least">Least length of a password.</param>
public sealed record JoinView(string At, string Token, string Name, string Says, int Least);

/// <summary>Everybody who may come in.</summary>
/// <param name="People">Rows.</param>
/// <param name="Roles">Roles to choose from.</param>
/// <param name="Says">What was done, or what went wrong.</param>
/// <param name="Link">A link just made, to be given to its person; empty for none.</param>
public sealed record PeopleView(ImmutableArray<PersonRow> People, ImmutableArray<string> Roles, string Says, string Link);

/// <summary>A person in the list.</summary>
public sealed record PersonRow(string Id, string Name, string Role, bool Owner, string Detail);

/// <summary>One's own page.</summary>
public sealed record MeView(string Name, string Role, string Says, int Least, bool Passkeys, ImmutableArray<PasskeyRow> Keys);

/// <summary>A passkey in the list.</summary>
public sealed record PasskeyRow(string Id, string Detail);

/// <summary>A log that only grows.</summary>
/// <param name="Title">Its name.</param>
/// <param name="Says">Whether its chain is whole.</param>
/// <param name="Rows">Entries, the newest first.</param>
public sealed record ChainView(string Title, string Says, ImmutableArray<ChainRow> Rows);

/// <summary>An entry.</summary>
public sealed record ChainRow(string At, string Who, string What);
