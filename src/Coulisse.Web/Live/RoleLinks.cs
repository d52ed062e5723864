using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Store;
using Microsoft.AspNetCore.WebUtilities;

namespace Coulisse.Web.Live;

/// <summary>Links that open one person's page of one run for a short time. Signed with a key that only this kitchen's store holds; no account, no password.</summary>
internal sealed class RoleLinks(KitchenStore store, TimeProvider clock)
{
    /// <summary>How long a link opens.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromHours(12);

    /// <summary>A link's token.</summary>
    public async Task<string> MakeAsync(string run, string role, CancellationToken cancel)
    {
        string body = string.Create(CultureInfo.InvariantCulture, $"{run}|{clock.GetUtcNow().Add(Lasts).ToUnixTimeSeconds()}|{role}");
        return WebEncoders.Base64UrlEncode(Encoding.UTF8.GetBytes(body)) + "." + WebEncoders.Base64UrlEncode(HMACSHA256.HashData(await KeyAsync(cancel), Encoding.UTF8.GetBytes(body)));
    }

    /// <summary>Whose link it is; null when it is not ours, not of this run, or has run out.</summary>
    public async Task<string?> RoleAsync(string run, string token, CancellationToken cancel)
    {
        string[] parts = token.Split('.');
        if (parts.Length != 2)
        {
            return null;
        }

        byte[] body;
        byte[] signed;
        try
        {
            body = WebEncoders.Base64UrlDecode(parts[0]);
            signed = WebEncoders.Base64UrlDecode(parts[1]);
        }
        catch (FormatException)
        {
            return null;
        }

        byte[] key = await KeyAsync(cancel);
        if (!CryptographicOperations.FixedTimeEquals(signed, HMACSHA256.HashData(key, body)))
        {
            return null;
        }

        string[] said = Encoding.UTF8.GetString(body).Split('|', 3);
        return said.Length == 3 && said[0] == run && long.TryParse(said[1], NumberStyles.None, CultureInfo.InvariantCulture, out long until) && clock.GetUtcNow().ToUnixTimeSeconds() < until ? said[2] : null;
    }

    private async Task<byte[]> KeyAsync(CancellationToken cancel)
    {
        const string key = "live.key";
        if (await store.SettingAsync(key, cancel) is { } held)
        {
            return Convert.FromHexString(held);
        }

        await store.SetAsync(key, Convert.ToHexString(RandomNumberGenerator.GetBytes(32)), cancel);
        return Convert.FromHexString((await store.SettingAsync(key, cancel))!);
    }
}
