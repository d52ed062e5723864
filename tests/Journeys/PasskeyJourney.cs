using System.Text.Json;
using Coulisse.Web;
using Coulisse.Web.Hosting;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>Passkeys by the browser's own dialogue, with the browser's own virtual authenticator (W3C Web Authentication, section 11) in place of a finger.</summary>
public sealed class PasskeyJourney
{
    private const string Password = "four words by the pass";

    [Fact]
    public async Task The_owner_adds_a_passkey_signs_out_and_comes_in_by_it_and_a_finger_that_is_not_theirs_does_not()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-own-").FullName;
        try
        {
            OwnCertificate own = OwnCertificate.InFolder(folder, ["kitchen.test"], TimeProvider.System);
            await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Network = true, Certificate = own.Server, Root = own.RootPem });
            IPage page = await bench.PageAsync(820);
            ICDPSession browser = await page.Context.NewCDPSessionAsync(page);
            await browser.SendAsync("WebAuthn.enable");
            JsonElement made = (await browser.SendAsync("WebAuthn.addVirtualAuthenticator", new Dictionary<string, object>
            {
                ["options"] = new Dictionary<string, object> { ["protocol"] = "ctap2", ["transport"] = "internal", ["hasResidentKey"] = true, ["hasUserVerification"] = true, ["isUserVerified"] = true },
            }))!.Value;
            string authenticator = made.GetProperty("authenticatorId").GetString()!;

            await page.GotoAsync(bench.Named + await bench.OwnerLinkAsync());
            await page.GetByLabel("Name").FillAsync("Ada");
            await page.GetByLabel("Password").First.FillAsync(Password);
            await page.Locator("main button[type=submit], main form button").First.ClickAsync();
            await page.GotoAsync(bench.Named + "/me");
            await page.GetByRole(AriaRole.Button, new() { Name = "Add a passkey" }).ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Remove" }).WaitForAsync();
            await Bench.PictureAsync(page, "me-passkey");

            await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
            await page.GotoAsync(bench.Named + "/cards");
            Assert.Contains("/sign-in", page.Url, StringComparison.Ordinal);
            await page.GetByRole(AriaRole.Button, new() { Name = "passkey" }).ClickAsync();
            await page.ArriveAsync("^(?!.*/sign-in)");
            Assert.Equal("Ada", (await page.Locator("a[href='/me']").InnerTextAsync()).Trim());

            // the finger is no longer the owner's: the browser does not confirm, and the door stays shut
            await page.GotoAsync(bench.Named + "/me");
            await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
            await browser.SendAsync("WebAuthn.setUserVerified", new Dictionary<string, object> { ["authenticatorId"] = authenticator, ["isUserVerified"] = false });
            await page.GotoAsync(bench.Named + "/sign-in");
            await page.GetByRole(AriaRole.Button, new() { Name = "passkey" }).ClickAsync();
            await page.Locator("pass-key [role=status]:not(:empty)").WaitForAsync();
            await page.GotoAsync(bench.Named + "/cards");
            Assert.Contains("/sign-in", page.Url, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
