using System.Security.Cryptography;
using System.Text;
using Coulisse.Store;
using Microsoft.AspNetCore.WebUtilities;

namespace Coulisse.Web.People;

/// <summary>Links that open one thing: kept by key so that they can be taken back, signed with a key that only this kitchen's store holds so that none can be made up.</summary>
internal sealed class SignedLinks(KitchenStore store, TimeProvider clock)
{
    /// <summary>One person's page of one run.</summary>
    public const string Live = "live";

    /// <summary>Setting one's own first or next password.</summary>
    public const string Join = "join";

    /// <summary>Becoming the owner of a kitchen that has none.</summary>
    public const string Owner = "owner";

    /// <summary>Makes a link.</summary>
    public async Task<string> MakeAsync(string purpose, string subject, string who, TimeSpan lasts, CancellationToken cancel)
        => await TokenAsync(await store.MakeLinkAsync(purpose, subject, who, clock.GetUtcNow().Add(lasts), cancel), purpose, cancel);

    /// <summary>The token of a kept link, to show it again.</summary>
    public async Task<string> TokenAsync(string id, string purpose, CancellationToken cancel) => id + "." + WebEncoders.Base64UrlEncode(await SignAsync(id, purpose, cancel));

    /// <summary>The link of a token; null when it is not ours, not for this, has run out or was taken back.</summary>
    public async Task<KeptLink?> OpenAsync(string purpose, string token, CancellationToken cancel)
    {
        string[] parts = token.Split('.');
        if (parts is not [{ Length: 32 } id, { Length: > 0 and < 100 } given])
        {
            return null;
        }

        byte[] signed;
        try
        {
            signed = WebEncoders.Base64UrlDecode(given);
        }
        catch (FormatException)
        {
            return null;
        }

        byte[] right = await SignAsync(id, purpose, cancel);
        return CryptographicOperations.FixedTimeEquals(signed, right) && await store.LinkAsync(id, cancel) is { } link && link.Purpose == purpose ? link : null;
    }

    private async Task<byte[]> SignAsync(string id, string purpose, CancellationToken cancel)
    {
        const string key = "live.key";
        string held = await store.SettingAsync(key, cancel) ?? await store.SetOnceAsync(key, Convert.ToHexString(RandomNumberGenerator.GetBytes(32)), cancel);
        return HMACSHA256.HashData(Convert.FromHexString(held), Encoding.UTF8.GetBytes(purpose + "|" + id));
    }
}
