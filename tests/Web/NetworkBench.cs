using System.Net;
using System.Text.RegularExpressions;
using Coulisse.Store;

namespace Coulisse.Web.Tests;

/// <summary>A bench that is open to the network, with an owner; people come in as they would: by link, password and cookie.</summary>
internal sealed class NetworkBench : IAsyncDisposable
{
    public const string Password = "four words by the pass";

    private readonly BenchServer _bench;

    private NetworkBench(BenchServer bench) => _bench = bench;

    public BenchServer Bench => _bench;

    public KitchenStore Store => _bench.Store;

    public static async Task<NetworkBench> StartAsync(WebBenchOptions? options = null, string? folder = null)
        => new(await BenchServer.StartAsync(options: (options ?? new WebBenchOptions()) with { Network = true }, folder: folder));

    /// <summary>A browser with a jar for cookies of its own; it names its origin on every post, as browsers do.</summary>
    public HttpClient Browser(bool namesOrigin = true)
    {
        HttpClient client = new(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer(), SslOptions = { RemoteCertificateValidationCallback = (_, certificate, _, _) => certificate?.Subject == "CN=bench" } }) { BaseAddress = _bench.Address };
        if (namesOrigin)
        {
            client.DefaultRequestHeaders.Add("Origin", _bench.Address.GetLeftPart(UriPartial.Authority));
        }

        return client;
    }

    public async Task<HttpClient> OwnerAsync(string name = "Ada")
    {
        string link = Assert.IsType<string>(await _bench.OwnerLinkAsync());
        HttpClient owner = Browser();
        HttpResponseMessage set = await PostAsync(owner, "/owner", ("t", link["/owner?t=".Length..]), ("name", name), ("password", Password));
        Assert.Equal(HttpStatusCode.Redirect, set.StatusCode);
        return owner;
    }

    /// <summary>Lets somebody in as the owner and comes in as them.</summary>
    public async Task<HttpClient> JoinAsync(HttpClient owner, string name, string role)
    {
        string page = await (await PostAsync(owner, "/people", ("name", name), ("role", role))).Content.ReadAsStringAsync();
        HttpClient person = Browser();
        HttpResponseMessage set = await PostAsync(person, "/join", ("t", Token(page)), ("password", Password));
        Assert.Equal(HttpStatusCode.Redirect, set.StatusCode);
        return person;
    }

    public static string Token(string page) => Regex.Match(page, @"/join\?t=([\w.-]+)").Groups[1].Value;

    public static Task<HttpResponseMessage> PostAsync(HttpClient client, string at, params (string Name, string Value)[] fields)
        => client.PostAsync(at, new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))));

    public static Task<HttpResponseMessage> SignInAsync(HttpClient client, string name, string password, string to = "/")
        => PostAsync(client, "/sign-in", ("name", name), ("password", password), ("to", to));

    public ValueTask DisposeAsync() => _bench.DisposeAsync();
}
