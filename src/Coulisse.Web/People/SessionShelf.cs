using System.Security.Claims;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Store;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.WebUtilities;

namespace Coulisse.Web.People;

/// <summary>Sessions in the store: the cookie holds a random secret, the store its hash, so signing out ends it everywhere and a copied database opens no session.</summary>
internal sealed class SessionShelf(KitchenStore store, TimeProvider clock) : ITicketStore
{
    public async Task<string> StoreAsync(AuthenticationTicket ticket)
    {
        string secret = WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(32));
        await RenewAsync(secret, ticket);
        return secret;
    }

    public Task RenewAsync(string key, AuthenticationTicket ticket)
        => store.KeepSessionAsync(Hash(key), ticket.Principal.FindFirstValue(ClaimTypes.NameIdentifier)!, Convert.ToBase64String(TicketSerializer.Default.Serialize(ticket)), ticket.Properties.ExpiresUtc ?? clock.GetUtcNow().Add(PeopleServices.SessionLasts));

    public async Task<AuthenticationTicket?> RetrieveAsync(string key)
        => await store.SessionAsync(Hash(key)) is { } ticket ? TicketSerializer.Default.Deserialize(Convert.FromBase64String(ticket)) : null;

    public Task RemoveAsync(string key) => store.EndSessionAsync(Hash(key));

    private static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
