using System.Net;
using Coulisse.Store;
using Coulisse.Web.Live;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using static Coulisse.Web.Tests.NetworkBench;

namespace Coulisse.Web.Tests;

/// <summary>What an attacker tries on a bench that is open to a network.</summary>
public sealed class DoorTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Every address the bench answers, by method, with something in the place of its names.</summary>
    private static IEnumerable<(string Method, string Path)> Addresses(NetworkBench bench)
        => bench.Bench.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().SelectMany(e =>
            (e.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]).Select(m => (m, "/" + string.Join('/', e.RoutePattern.PathSegments.Select(s => string.Concat(s.Parts.Select(p => p is Microsoft.AspNetCore.Routing.Patterns.RoutePatternLiteralPart l ? l.Content : "x")))))));

    [Fact]
    public async Task Nothing_but_the_door_itself_answers_somebody_who_has_not_signed_in()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient stranger = bench.Browser();
        (string Method, string Path)[] all = [.. Addresses(bench)];
        Assert.True(all.Length > 20);
        List<string> answered = [];
        foreach ((string method, string path) in all.Where(a => !DoorPlan.IsOpen(a.Path)))
        {
            using HttpRequestMessage request = new(new HttpMethod(method), path);
            HttpResponseMessage answer = await stranger.SendAsync(request, Cancel);
            bool shut = answer.StatusCode == HttpStatusCode.Unauthorized || (answer.StatusCode == HttpStatusCode.Redirect && answer.Headers.Location!.OriginalString.StartsWith("/sign-in?to=", StringComparison.Ordinal));
            if (!shut)
            {
                answered.Add($"{method} {path}: {answer.StatusCode}");
            }
        }

        Assert.Empty(answered);
        // and what is open is only what is named here
        Assert.Equal(["/a", "/healthz", "/join", "/owner", "/readyz", "/sign-in"], all.Where(a => DoorPlan.IsOpen(a.Path)).Select(a => "/" + a.Path.Split('/')[1]).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("helper", "GET", "/cards", true)]
    [InlineData("helper", "POST", "/cards", false)]
    [InlineData("helper", "POST", "/occasions", false)]
    [InlineData("helper", "POST", "/plan/x/live", false)]
    [InlineData("helper", "GET", "/people", false)]
    [InlineData("helper", "POST", "/people", false)]
    [InlineData("helper", "GET", "/audit", false)]
    [InlineData("helper", "POST", "/api/live/x", true)]
    [InlineData("helper", "GET", "/prices", false)]
    [InlineData("buyer", "GET", "/cards", true)]
    [InlineData("buyer", "POST", "/cards", false)]
    [InlineData("buyer", "POST", "/api/live/x", false)]
    [InlineData("buyer", "GET", "/records", false)]
    [InlineData("auditor", "GET", "/audit", true)]
    [InlineData("auditor", "GET", "/cards", true)]
    [InlineData("auditor", "POST", "/cards", false)]
    [InlineData("auditor", "POST", "/api/live/x", false)]
    [InlineData("auditor", "GET", "/people", false)]
    [InlineData("chef", "POST", "/cards", true)]
    [InlineData("chef", "GET", "/people", false)]
    [InlineData("chef", "POST", "/people", false)]
    public async Task Each_role_is_let_do_what_is_its_own(string role, string method, string path, bool may)
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpClient person = await bench.JoinAsync(owner, "Ben", role);
        using HttpRequestMessage request = new(new HttpMethod(method), path) { Content = method == "POST" ? new StringContent("[]", System.Text.Encoding.UTF8, path.StartsWith("/api", StringComparison.Ordinal) ? "application/json" : "application/x-www-form-urlencoded") : null };
        HttpResponseMessage answer = await person.SendAsync(request, Cancel);
        Assert.Equal(may, answer.StatusCode is not (HttpStatusCode.Forbidden or HttpStatusCode.Unauthorized or HttpStatusCode.Redirect));
    }

    [Fact]
    public async Task A_post_that_carries_a_session_but_comes_from_elsewhere_or_hides_where_it_comes_from_is_not_done()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using HttpRequestMessage foreign = new(HttpMethod.Post, "/cards") { Content = new FormUrlEncodedContent([new("text", "# x")]) };
        owner.DefaultRequestHeaders.Remove("Origin");
        foreign.Headers.Add("Origin", "http://elsewhere.test");
        Assert.Equal(HttpStatusCode.Forbidden, (await owner.SendAsync(foreign, Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(owner, "/cards", ("text", "# x"))).StatusCode);
        using HttpRequestMessage nulled = new(HttpMethod.Post, "/cards") { Content = new FormUrlEncodedContent([new("text", "# x")]) };
        nulled.Headers.Add("Origin", "null");
        Assert.Equal(HttpStatusCode.Forbidden, (await owner.SendAsync(nulled, Cancel)).StatusCode);
        Assert.Empty(await bench.Store.DocumentsAsync(DocumentKind.Card, cancel: Cancel));
    }

    [Fact]
    public async Task Nobody_is_sent_elsewhere_by_a_link_to_the_sign_in()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        foreach (string to in new[] { "//evil.test", "http://evil.test", "/\\evil.test", "javascript:alert(1)", "/\t/evil.test", "\\evil" })
        {
            using HttpClient browser = bench.Browser();
            HttpResponseMessage answer = await SignInAsync(browser, "Ada", Password, to);
            Assert.Equal("/", answer.Headers.Location!.OriginalString);
        }

        using HttpClient wanted = bench.Browser();
        Assert.Equal("/cards?q=leek", (await SignInAsync(wanted, "Ada", Password, "/cards?q=leek")).Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task A_link_opens_its_own_run_and_nothing_else_until_it_is_taken_back()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        string plan = await bench.Bench.KeepAsync(HandPlan.Tart);
        string mine = await bench.Store.StartRunAsync(plan, DateTimeOffset.UnixEpoch, true, Cancel);
        string other = await bench.Store.StartRunAsync(plan, DateTimeOffset.UnixEpoch, true, Cancel);
        string token = await bench.Bench.Services.GetRequiredService<RoleLinks>().MakeAsync(mine, "Ben", Cancel);
        using HttpClient tablet = bench.Browser();

        Assert.Equal(HttpStatusCode.OK, (await tablet.GetAsync($"/live/{mine}?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.GetAsync($"/live/{other}?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.GetAsync($"/live/{mine}/links?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await PostAsync(tablet, $"/live/{mine}/links/end?t={token}", ("who", "Ben"))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await tablet.GetAsync($"/cards?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await PostAsync(tablet, $"/cards?t={token}", ("text", "# x"))).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.GetAsync($"/join?t={token}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.GetAsync($"/live/{mine}?t={token[..^2]}AA", Cancel)).StatusCode);

        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(owner, $"/live/{mine}/links/end", ("who", "Ben"))).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.GetAsync($"/live/{mine}?t={token}", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_link_that_asks_without_end_is_slowed_and_another_is_not()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        string run = await bench.Store.StartRunAsync(await bench.Bench.KeepAsync(HandPlan.Tart), DateTimeOffset.UnixEpoch, true, Cancel);
        RoleLinks links = bench.Bench.Services.GetRequiredService<RoleLinks>();
        string noisy = await links.MakeAsync(run, "Ben", Cancel);
        using HttpClient tablet = bench.Browser();
        HttpStatusCode last = HttpStatusCode.OK;
        for (int i = 0; i <= PeopleServices.LinkRequestsAMinute && last == HttpStatusCode.OK; i++)
        {
            last = (await tablet.GetAsync($"/api/live/{run}?t={noisy}", Cancel)).StatusCode;
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, last);
        Assert.Equal(HttpStatusCode.OK, (await tablet.GetAsync($"/api/live/{run}?t={await links.MakeAsync(run, "Cem", Cancel)}", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_session_of_one_kitchen_opens_no_other_and_a_card_of_one_is_not_found_in_the_other()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-two-").FullName;
        try
        {
            await using NetworkBench north = await StartAsync(new WebBenchOptions { Kitchen = "north" }, folder);
            await using NetworkBench south = await StartAsync(new WebBenchOptions { Kitchen = "south" }, folder);
            using HttpClient ada = await north.OwnerAsync("Ada");
            using HttpClient bea = await south.OwnerAsync("Bea");
            HttpResponseMessage kept = await PostAsync(ada, "/cards", ("text", "# Secret\n\n- 1 g salt"));
            string card = kept.Headers.Location!.OriginalString;
            Assert.Equal(HttpStatusCode.OK, (await ada.GetAsync(card, Cancel)).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await bea.GetAsync(card, Cancel)).StatusCode);

            using HttpClient borrowed = south.Browser();
            using HttpRequestMessage request = new(HttpMethod.Get, "/cards");
            request.Headers.Add("Cookie", string.Join("; ", Cookies(await SignInAsync(north.Browser(), "Ada", Password))));
            Assert.Equal(HttpStatusCode.Redirect, (await borrowed.SendAsync(request, Cancel)).StatusCode);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Fact]
    public async Task On_this_machine_alone_a_name_turned_to_point_here_and_a_proxy_are_refused()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        using HttpRequestMessage turned = new(HttpMethod.Get, "/cards") { Headers = { Host = "evil.test" } };
        Assert.Equal(HttpStatusCode.MisdirectedRequest, (await bench.Client.SendAsync(turned, Cancel)).StatusCode);
        using HttpRequestMessage forwarded = new(HttpMethod.Get, "/cards");
        forwarded.Headers.Add("X-Forwarded-For", "10.0.0.9");
        Assert.Equal(HttpStatusCode.MisdirectedRequest, (await bench.Client.SendAsync(forwarded, Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await bench.Client.GetAsync("/cards", Cancel)).StatusCode);
    }

    [Fact]
    public async Task Every_answer_carries_the_headers_that_keep_a_browser_safe()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        foreach (string path in new[] { "/", "/cards", "/sign-in", "/nowhere", "/people", "/healthz" })
        {
            HttpResponseMessage answer = await owner.GetAsync(path, Cancel);
            string Header(string name) => string.Join(",", answer.Headers.TryGetValues(name, out IEnumerable<string>? v) ? v : []);
            Assert.Contains("default-src 'self'", Header("Content-Security-Policy"));
            Assert.DoesNotContain("unsafe", Header("Content-Security-Policy"));
            Assert.Contains("frame-ancestors 'none'", Header("Content-Security-Policy"));
            Assert.Equal("nosniff", Header("X-Content-Type-Options"));
            Assert.Equal("same-origin", Header("Referrer-Policy"));
            Assert.Equal("DENY", Header("X-Frame-Options"));
            Assert.Equal("same-origin", Header("Cross-Origin-Resource-Policy"));
            Assert.Contains("camera=()", Header("Permissions-Policy"));
            Assert.Equal("", Header("Server"));
        }

        Assert.Equal("no-store", (await owner.GetAsync("/cards", Cancel)).Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task A_body_that_is_too_large_is_cut_off()
    {
        await using NetworkBench bench = await StartAsync();
        using HttpClient owner = await bench.OwnerAsync();
        using ByteArrayContent bomb = new(new byte[13 * 1024 * 1024]);
        bomb.Headers.ContentType = new("application/x-www-form-urlencoded");
        HttpStatusCode? status;
        try
        {
            status = (await owner.PostAsync("/cards", bomb, Cancel)).StatusCode;
        }
        catch (HttpRequestException)
        {
            status = null; // the server hung up while it was still being sent
        }

        Assert.True(status is null or HttpStatusCode.RequestEntityTooLarge or HttpStatusCode.BadRequest, status.ToString());
        Assert.Empty(await bench.Store.DocumentsAsync(DocumentKind.Card, cancel: Cancel));
        Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/cards", Cancel)).StatusCode);
    }

    internal static IEnumerable<string> Cookies(HttpResponseMessage answer) => answer.Headers.GetValues("Set-Cookie").Select(c => c.Split(';')[0]);
}
