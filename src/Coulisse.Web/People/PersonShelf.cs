using System.Text.Json;
using Coulisse.Store;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.WebUtilities;

namespace Coulisse.Web.People;

/// <summary>People for ASP.NET Core Identity, kept in the kitchen's own store (decision 0250).</summary>
internal sealed class PersonShelf(KitchenStore store) : IUserPasswordStore<BenchPerson>, IUserSecurityStampStore<BenchPerson>, IUserLockoutStore<BenchPerson>, IUserPasskeyStore<BenchPerson>
{
    public Task<string> GetUserIdAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult(user.Kept.Id);

    public Task<string?> GetUserNameAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.Kept.Name);

    public Task SetUserNameAsync(BenchPerson user, string? userName, CancellationToken cancellationToken) => Task.CompletedTask; // a name is what a person's work stands under; it stays

    public Task<string?> GetNormalizedUserNameAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.Kept.Name);

    public Task SetNormalizedUserNameAsync(BenchPerson user, string? normalizedName, CancellationToken cancellationToken) => Task.CompletedTask; // the store folds names itself

    public async Task<IdentityResult> CreateAsync(BenchPerson user, CancellationToken cancellationToken)
        => await store.AddPersonAsync(user.Kept, cancellationToken) ? IdentityResult.Success : IdentityResult.Failed(new IdentityError { Code = "Taken", Description = user.Kept.Owner ? "This kitchen has an owner already." : "Somebody of that name is here already." });

    public async Task<IdentityResult> UpdateAsync(BenchPerson user, CancellationToken cancellationToken)
        => await store.ChangePersonAsync(user.Kept, cancellationToken) ? IdentityResult.Success : IdentityResult.Failed(new IdentityError { Code = "Gone", Description = "This person is no longer here." });

    public async Task<IdentityResult> DeleteAsync(BenchPerson user, CancellationToken cancellationToken)
        => await store.RemovePersonAsync(user.Kept.Id, cancellationToken) ? IdentityResult.Success : IdentityResult.Failed(new IdentityError { Code = "Owner", Description = "The owner cannot be taken out." });

    public async Task<BenchPerson?> FindByIdAsync(string userId, CancellationToken cancellationToken) => Of(await store.PersonAsync(userId, cancellationToken));

    public async Task<BenchPerson?> FindByNameAsync(string normalizedUserName, CancellationToken cancellationToken) => Of(await store.PersonByNameAsync(normalizedUserName, cancellationToken));

    public Task SetPasswordHashAsync(BenchPerson user, string? passwordHash, CancellationToken cancellationToken) => Changed(user, p => p with { Password = passwordHash ?? "" });

    public Task<string?> GetPasswordHashAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.Kept.Password.Length > 0 ? user.Kept.Password : null);

    public Task<bool> HasPasswordAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult(user.Kept.Password.Length > 0);

    public Task SetSecurityStampAsync(BenchPerson user, string stamp, CancellationToken cancellationToken) => Changed(user, p => p with { Stamp = stamp });

    public Task<string?> GetSecurityStampAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult<string?>(user.Kept.Stamp);

    public Task<DateTimeOffset?> GetLockoutEndDateAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult(user.Kept.LockedUntil);

    public Task SetLockoutEndDateAsync(BenchPerson user, DateTimeOffset? lockoutEnd, CancellationToken cancellationToken) => Changed(user, p => p with { LockedUntil = lockoutEnd });

    public async Task<int> IncrementAccessFailedCountAsync(BenchPerson user, CancellationToken cancellationToken)
    {
        int failed = await store.CountFailureAsync(user.Kept.Id, cancellationToken);
        user.Change(p => p with { Failed = failed });
        return failed;
    }

    public Task ResetAccessFailedCountAsync(BenchPerson user, CancellationToken cancellationToken) => Changed(user, p => p with { Failed = 0 });

    public Task<int> GetAccessFailedCountAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult(user.Kept.Failed);

    public Task<bool> GetLockoutEnabledAsync(BenchPerson user, CancellationToken cancellationToken) => Task.FromResult(true);

    public Task SetLockoutEnabledAsync(BenchPerson user, bool enabled, CancellationToken cancellationToken) => Task.CompletedTask; // nobody is exempt

    public Task AddOrUpdatePasskeyAsync(BenchPerson user, UserPasskeyInfo passkey, CancellationToken cancellationToken)
        => store.KeepPasskeyAsync(user.Kept.Id, Key(passkey.CredentialId), JsonSerializer.Serialize(KeptPasskey.From(passkey)), cancellationToken);

    public async Task<IList<UserPasskeyInfo>> GetPasskeysAsync(BenchPerson user, CancellationToken cancellationToken)
        => [.. (await store.PasskeysAsync(user.Kept.Id, cancellationToken)).Select(j => JsonSerializer.Deserialize<KeptPasskey>(j)!.ToInfo())];

    public async Task<BenchPerson?> FindByPasskeyIdAsync(byte[] credentialId, CancellationToken cancellationToken) => Of(await store.PersonByPasskeyAsync(Key(credentialId), cancellationToken));

    public async Task<UserPasskeyInfo?> FindPasskeyAsync(BenchPerson user, byte[] credentialId, CancellationToken cancellationToken)
        => (await GetPasskeysAsync(user, cancellationToken)).FirstOrDefault(p => p.CredentialId.AsSpan().SequenceEqual(credentialId));

    public Task RemovePasskeyAsync(BenchPerson user, byte[] credentialId, CancellationToken cancellationToken) => store.RemovePasskeyAsync(user.Kept.Id, Key(credentialId), cancellationToken);

    public void Dispose()
    {
        // the store is the bench's, not ours
    }

    internal static string Key(byte[] credential) => WebEncoders.Base64UrlEncode(credential);

    private static BenchPerson? Of(KeptPerson? kept) => kept is null ? null : new BenchPerson(kept);

    private static Task Changed(BenchPerson user, Func<KeptPerson, KeptPerson> change)
    {
        user.Change(change);
        return Task.CompletedTask;
    }

    /// <summary>A passkey as it is kept: its public half and its counter.</summary>
    internal sealed record KeptPasskey(byte[] Id, byte[] PublicKey, DateTimeOffset Made, uint Count, string[]? Transports, bool Verified, bool Eligible, bool BackedUp, byte[] Attestation, byte[] ClientData, string? Name)
    {
        public static KeptPasskey From(UserPasskeyInfo p) => new(p.CredentialId, p.PublicKey, p.CreatedAt, p.SignCount, p.Transports, p.IsUserVerified, p.IsBackupEligible, p.IsBackedUp, p.AttestationObject, p.ClientDataJson, p.Name);

        public UserPasskeyInfo ToInfo() => new(Id, PublicKey, Made, Count, Transports, Verified, Eligible, BackedUp, Attestation, ClientData) { Name = Name };
    }
}
