using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Coulisse.Store;
using Coulisse.Web.People;
using static Coulisse.Web.Tests.NetworkBench;

namespace Coulisse.Web.Tests;

/// <summary>How people come in, stay in and are put out.</summary>
public sealed class PeopleTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_first_owner_comes_in_by_a_link_that_works_once()
    {
        await using NetworkBench bench = await StartAsync();
        string link = Assert.IsType<string>(await bench.Bench.OwnerLinkAsync());
        string second = Assert.IsType<string>(await bench.Bench.OwnerLinkAsync());
        using HttpClient owner = bench.Browser();
        Assert.Contains("Own this kitchen", await owner.GetStringAsync(link, Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(owner, "/owner", ("t", link["/owner?t=".Length..]), ("name", "Ada"), ("password", Password))).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/people", Cancel)).StatusCode);

        using HttpClient thief = bench.Browser();
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(thief, "/owner", ("t", link["/owner?t=".Length..]), ("name", "Eve"), ("password", Password))).StatusCode);
        Assert.NotEqual(HttpStatusCode.Redirect, (await PostAsync(thief, "/owner", ("t", second["/owner?t=".Length..]), ("name", "Eve"), ("password", Password))).StatusCode);
        Assert.Null(await bench.Bench.OwnerLinkAsync());
        Assert.Single(await bench.Store.PeopleAsync(Cancel));
    }

    [Theory]
    [InlineData("Ada", "short")]
    [InlineData("Ada", "aaaaaaaaaaaaaaaaaaaa")]
    [InlineData("Adelheid", "my name is adelheid yes")]
    [InlineData("", Password)]
    public async Task A_weak_password_or_no_name_makes_no_owner(string name, string password)
    {
        await using NetworkBench bench = await StartAsync();
        string link = (await bench.Bench.OwnerLinkAsync())!;
        using HttpClient browser = bench.Browser();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await PostAsync(browser, "/owner", ("t", link["/owner?t=".Length..]), ("name", name), ("password", password))).StatusCode);
        Assert.Empty(await bench.Store.PeopleAsync(Cancel));
    }

    [Theory]
    [InlineData("admin", "admin")]
    [InlineData("owner", "")]
    [InlineData("' OR 1=1 --", "' OR 1=1 --")]
    [InlineData("Ada", "' OR '1'='1")]
    public async Task No_password_is_there_before_one_is_set_and_no_words_open_the_door(string name, string password)
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient browser = bench.Browser();
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, name, password)).StatusCode);
        using HttpClient owner = await bench.OwnerAsync();
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, name, password)).StatusCode);
    }

    [Fact]
    public async Task Whoever_was_let_in_but_has_not_set_a_password_cannot_sign_in_with_none()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        await PostAsync(owner, "/people", ("name", "Ben"), ("role", "helper"));
        using HttpClient browser = bench.Browser();
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, "Ben", "")).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, "Ben", " ")).StatusCode);
    }

    [Fact]
    public async Task After_signing_out_the_old_cookie_opens_nothing()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient browser = bench.Browser();
        string cookie = string.Join("; ", DoorTests.Cookies(await SignInAsync(browser, "ÁDA", Password)));
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/cards", Cancel)).StatusCode);
        await PostAsync(browser, "/sign-out");
        using HttpClient bare = new(new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false }) { BaseAddress = bench.Bench.Address };
        using HttpRequestMessage replay = new(HttpMethod.Get, "/cards") { Headers = { { "Cookie", cookie } } };
        Assert.Equal(HttpStatusCode.Redirect, (await bare.SendAsync(replay, Cancel)).StatusCode);
    }

    [Fact]
    public async Task Five_wrong_passwords_make_a_person_wait_and_a_machine_gun_is_stopped_sooner_than_it_gets_far()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient browser = bench.Browser();
        for (int i = 0; i < PeopleServices.Tries; i++)
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, "Ada", $"wrong {i}")).StatusCode);
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(browser, "Ada", Password)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/cards", Cancel)).StatusCode);
        HttpStatusCode last = HttpStatusCode.OK;
        for (int i = 0; i < PeopleServices.TriesAMinute && last != HttpStatusCode.TooManyRequests; i++)
        {
            last = (await SignInAsync(browser, "Ben", $"wrong {i}")).StatusCode;
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, last);
    }

    [Fact]
    public async Task A_new_role_ends_the_session_and_a_person_taken_out_is_out_at_once()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient ben = await bench.JoinAsync(owner, "Ben", "chef");
        string id = (await bench.Store.PersonByNameAsync("ben", Cancel))!.Id;
        Assert.Equal(HttpStatusCode.OK, (await ben.GetAsync("/cards", Cancel)).StatusCode);
        await PostAsync(owner, $"/people/{id}/role", ("role", "helper"));
        Assert.Equal(HttpStatusCode.Redirect, (await ben.GetAsync("/cards", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await SignInAsync(ben, "Ben", Password)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(ben, "/cards", ("text", "# x"))).StatusCode);
        await PostAsync(owner, $"/people/{id}/out");
        Assert.Equal(HttpStatusCode.Redirect, (await ben.GetAsync("/cards", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(ben, "Ben", Password)).StatusCode);
    }

    [Fact]
    public async Task The_owner_can_neither_be_taken_out_nor_made_a_helper()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        string id = (await bench.Store.PersonByNameAsync("Ada", Cancel))!.Id;
        Assert.Equal(HttpStatusCode.NotFound, (await PostAsync(owner, $"/people/{id}/out")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await PostAsync(owner, $"/people/{id}/role", ("role", "helper"))).StatusCode);
        Assert.True((await bench.Store.PersonAsync(id, Cancel))!.Owner);
    }

    [Fact]
    public async Task A_changed_password_ends_every_other_session()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient phone = bench.Browser();
        await SignInAsync(phone, "Ada", Password);
        Assert.Contains("not that", await (await PostAsync(owner, "/me/password", ("old", "wrong"), ("password", "another four words here"))).Content.ReadAsStringAsync(Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(owner, "/me/password", ("old", Password), ("password", "another four words here"))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await phone.GetAsync("/cards", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/cards", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await SignInAsync(phone, "Ada", Password)).StatusCode);
    }

    [Fact]
    public async Task The_log_says_who_did_what_is_a_chain_and_holds_no_secret()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        string page = await (await PostAsync(owner, "/people", ("name", "Ben"), ("role", "helper"))).Content.ReadAsStringAsync(Cancel);
        await SignInAsync(bench.Browser(), "Ada", "a wrong password typed");
        List<ControlEntry> log = await bench.Store.AuditLogAsync(Cancel);
        string all = string.Join('\n', log.Select(e => e.Who + e.Json));
        Assert.Contains("became the owner", all);
        Assert.Contains("let in as helper", all);
        Assert.Contains("sign-in refused", all);
        Assert.DoesNotContain(Password, all);
        Assert.DoesNotContain("a wrong password typed", all);
        Assert.DoesNotContain(Token(page), all);
        Assert.Empty((await bench.Store.CheckAuditLogAsync(Cancel)).Broken);
        Assert.DoesNotContain(Password, (await bench.Store.PersonByNameAsync("Ada", Cancel))!.Password);
    }

    [Fact]
    public async Task Markup_in_a_name_is_shown_as_text()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        string page = await (await PostAsync(owner, "/people", ("name", "<script>alert(1)</script>"), ("role", "helper"))).Content.ReadAsStringAsync(Cancel);
        Assert.DoesNotContain("<script>alert", page);
        Assert.Contains("&lt;script&gt;alert", page);
    }

    [Fact]
    public async Task The_cookie_is_kept_from_scripts_and_other_sites_and_by_https_from_the_open_wire()
    {
        await using NetworkBench plain = await StartAsync();
        using HttpClient first = await plain.OwnerAsync();
        string cookie = Assert.Single((await SignInAsync(plain.Browser(), "Ada", Password)).Headers.GetValues("Set-Cookie"), c => c.StartsWith("coulisse=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);

        using RSA key = RSA.Create(2048);
        using X509Certificate2 made = new CertificateRequest("CN=bench", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1).CreateSelfSigned(DateTimeOffset.UnixEpoch, DateTimeOffset.MaxValue);
        await using NetworkBench secure = await StartAsync(new WebBenchOptions { Certificate = made });
        Assert.Equal("https", secure.Bench.Address.Scheme);
        using HttpClient owner = await secure.OwnerAsync();
        HttpResponseMessage signed = await SignInAsync(secure.Browser(), "Ada", Password);
        cookie = Assert.Single(signed.Headers.GetValues("Set-Cookie"), c => c.StartsWith("__Host-coulisse=", StringComparison.Ordinal));
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("max-age", string.Join("", signed.Headers.GetValues("Strict-Transport-Security")));
        Assert.Contains("Add a passkey", await owner.GetStringAsync("/me", Cancel));
        HttpResponseMessage asked = await owner.PostAsync("/me/passkeys/ask", null, Cancel);
        Assert.Contains("challenge", await asked.Content.ReadAsStringAsync(Cancel));
        HttpResponseMessage forged = await owner.PostAsync("/me/passkeys", new StringContent("{\"id\":\"x\"}", System.Text.Encoding.UTF8, "application/json"), Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, forged.StatusCode);
    }
}
