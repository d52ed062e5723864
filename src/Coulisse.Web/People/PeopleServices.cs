using System.Security.Claims;
using System.Threading.RateLimiting;
using Coulisse.Store;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;

namespace Coulisse.Web.People;

/// <summary>Sign-in by ASP.NET Core Identity over the kitchen's store: passwords, passkeys, lock-out, sessions, throttles.</summary>
internal static class PeopleServices
{
    /// <summary>Name of the throttle on everything where a secret is tried.</summary>
    public const string DoorThrottle = "door";

    /// <summary>Least length of a password. Length counts, not signs and digits: 15 where the password is the only factor (NIST SP 800-63B-4, 2025, from memory).</summary>
    public const int LeastPassword = 15;

    /// <summary>Wrong passwords before a person must wait.</summary>
    public const int Tries = 5;

    /// <summary>Tries at one door from one address in a minute.</summary>
    public const int TriesAMinute = 12;

    /// <summary>Requests by one link in a minute.</summary>
    public const int LinkRequestsAMinute = 240;

    /// <summary>How long a session lasts without use.</summary>
    public static readonly TimeSpan SessionLasts = TimeSpan.FromHours(12);

    /// <summary>How long a person waits after too many wrong passwords.</summary>
    public static readonly TimeSpan LockedFor = TimeSpan.FromMinutes(5);

    public static void AddPeople(this IServiceCollection services, WebBenchOptions options)
    {
        services.AddSingleton<SignedLinks>();
        services.AddRateLimiter(Throttle);
        if (!options.Network)
        {
            return;
        }

        services.AddDataProtection().SetApplicationName("coulisse");
        services.AddSingleton<IConfigureOptions<KeyManagementOptions>>(s => new ConfigureOptions<KeyManagementOptions>(o => o.XmlRepository = new KeyShelf(s.GetRequiredService<KitchenStore>())));
        services.AddSingleton<SessionShelf>();
        services.AddSingleton<IPostConfigureOptions<CookieAuthenticationOptions>>(s => new PostConfigureOptions<CookieAuthenticationOptions>(IdentityConstants.ApplicationScheme, o => o.SessionStore = s.GetRequiredService<SessionShelf>()));
        services.AddScoped<IUserClaimsPrincipalFactory<BenchPerson>, Claims>();
        // two hundred thousand rounds of PBKDF2-HMAC-SHA512, above the library's own default (OWASP Password Storage Cheat Sheet, from memory: 210,000)
        services.Configure<PasswordHasherOptions>(o => o.IterationCount = 210_000);
        services.AddIdentityCore<BenchPerson>(o =>
        {
            o.Password.RequiredLength = LeastPassword;
            o.Password.RequireDigit = o.Password.RequireLowercase = o.Password.RequireUppercase = o.Password.RequireNonAlphanumeric = false;
            o.Password.RequiredUniqueChars = 5;
            o.Lockout.MaxFailedAccessAttempts = Tries;
            o.Lockout.DefaultLockoutTimeSpan = LockedFor;
            o.User.AllowedUserNameCharacters = ""; // names are people's names, in any script
        }).AddUserStore<PersonShelf>().AddSignInManager().AddPasswordValidator<NotTheName>();
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddIdentityCookies(c =>
        {
            c.ApplicationCookie!.Configure(o => Cookie(o, options.Secure ? "__Host-coulisse" : "coulisse", options.Secure, SessionLasts));
            c.TwoFactorUserIdCookie!.Configure(o => Cookie(o, options.Secure ? "__Host-coulisse-step" : "coulisse-step", options.Secure, TimeSpan.FromMinutes(5)));
        });
    }

    private static void Cookie(CookieAuthenticationOptions o, string name, bool secure, TimeSpan lasts)
    {
        o.Cookie.Name = name;
        o.Cookie.HttpOnly = true;
        o.Cookie.SameSite = SameSiteMode.Lax; // a link in a message may open the bench; a post from elsewhere never carries the cookie
        o.Cookie.SecurePolicy = secure ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
        o.ExpireTimeSpan = lasts;
        o.SlidingExpiration = true;
    }

    private static void Throttle(RateLimiterOptions o)
    {
        o.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        o.OnRejected = async (rejected, cancel) =>
        {
            rejected.HttpContext.Response.Headers.RetryAfter = "60";
            await rejected.HttpContext.Response.WriteAsync("Too many tries. Wait a minute.", cancel);
        };
        o.AddPolicy(DoorThrottle, context => RateLimitPartition.GetFixedWindowLimiter(context.Connection.RemoteIpAddress?.ToString() ?? "", _ => new FixedWindowRateLimiterOptions { PermitLimit = TriesAMinute, Window = TimeSpan.FromMinutes(1) }));
        o.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context => context.Request.Query["t"].ToString() is { Length: > 0 } token
            ? RateLimitPartition.GetFixedWindowLimiter("t:" + token[..Math.Min(32, token.Length)], _ => new FixedWindowRateLimiterOptions { PermitLimit = LinkRequestsAMinute, Window = TimeSpan.FromMinutes(1) })
            : RateLimitPartition.GetNoLimiter(""));
    }

    /// <summary>What a session knows of a person.</summary>
    private sealed class Claims(IOptions<IdentityOptions> options) : IUserClaimsPrincipalFactory<BenchPerson>
    {
        public Task<ClaimsPrincipal> CreateAsync(BenchPerson user)
        {
            List<Claim> claims = [new(ClaimTypes.NameIdentifier, user.Kept.Id), new(ClaimTypes.Name, user.Kept.Name), new(ClaimTypes.Role, user.Kept.Role), new(options.Value.ClaimsIdentity.SecurityStampClaimType, user.Kept.Stamp)];
            if (user.Kept.Owner)
            {
                claims.Add(new Claim(Doors.OwnerClaim, "yes"));
            }

            return Task.FromResult(new ClaimsPrincipal(new ClaimsIdentity(claims, IdentityConstants.ApplicationScheme)));
        }
    }

    /// <summary>A password that holds the person's own name is guessed first.</summary>
    private sealed class NotTheName : IPasswordValidator<BenchPerson>
    {
        public Task<IdentityResult> ValidateAsync(UserManager<BenchPerson> manager, BenchPerson user, string? password)
            => Task.FromResult(user.Kept.Name.Length > 2 && password is not null && password.Contains(user.Kept.Name, StringComparison.OrdinalIgnoreCase)
                ? IdentityResult.Failed(new IdentityError { Code = "Name", Description = "The password holds the name; take other words." })
                : IdentityResult.Success);
    }
}
