using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Coulisse.Web.Hosting;
using Microsoft.Extensions.Time.Testing;

namespace Coulisse.Web.Tests;

/// <summary>The kitchen's own certificate, judged by the platform's own chain engine as a tablet that trusts the root would.</summary>
public sealed class OwnCertificateTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-own-").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task A_device_that_trusts_the_root_reaches_the_bench_by_address_and_by_name_and_one_that_does_not_is_warned()
    {
        OwnCertificate own = OwnCertificate.InFolder(_folder, ["bench.kitchen.lan"], TimeProvider.System);
        Assert.True(own.NewRoot);
        await using NetworkBench bench = await NetworkBench.StartAsync(new WebBenchOptions { Certificate = own.Server, Root = own.RootPem });
        using HttpClient trusting = Trusting(own.RootPem, bench.Bench.Address);
        string fetched = await trusting.GetStringAsync("/" + OwnCertificate.RootFile, Cancel);
        Assert.Equal(own.RootPem, fetched);
        Assert.Equal(fetched.Trim(), (await File.ReadAllTextAsync(Path.Combine(_folder, OwnCertificate.RootFile), Cancel)).Trim());
        Assert.DoesNotContain("PRIVATE", fetched, StringComparison.Ordinal);
        using HttpClient named = Trusting(own.RootPem, new UriBuilder(bench.Bench.Address) { Host = "bench.kitchen.lan" }.Uri);
        Assert.Equal(HttpStatusCode.OK, (await named.GetAsync("/sign-in", Cancel)).StatusCode);

        using HttpClient stranger = new() { BaseAddress = bench.Bench.Address };
        await Assert.ThrowsAsync<HttpRequestException>(() => stranger.GetAsync("/sign-in", Cancel));
        using HttpClient elsewhere = Trusting(own.RootPem, new UriBuilder(bench.Bench.Address) { Host = "other.kitchen.lan" }.Uri);
        await Assert.ThrowsAsync<HttpRequestException>(() => elsewhere.GetAsync("/sign-in", Cancel));
    }

    [Theory]
    [InlineData("www.example.com", false)]
    [InlineData("kitchen.lan", false)]
    [InlineData("bench.kitchen.lan", true)]
    public void Who_steals_the_roots_key_can_vouch_for_nothing_but_this_kitchen(string name, bool good)
    {
        _ = OwnCertificate.InFolder(_folder, ["bench.kitchen.lan"], TimeProvider.System);
        using X509Certificate2 root = X509Certificate2.CreateFromPemFile(Path.Combine(_folder, OwnCertificate.RootFile), Path.Combine(_folder, "kitchen-root.key"));
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=thief", key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder also = new();
        also.AddDnsName(name);
        request.CertificateExtensions.Add(also.Build());
        using X509Certificate2 forged = request.Create(root, TimeProvider.System.GetUtcNow().AddHours(-1), TimeProvider.System.GetUtcNow().AddDays(1), [1, 2, 3]);
        using X509Chain chain = Chain(root);
        Assert.Equal(good, chain.Build(forged));
    }

    [Fact]
    public void It_is_kept_until_it_runs_out_or_a_name_is_new_and_its_keys_are_for_this_user_only()
    {
        FakeTimeProvider clock = new(TimeProvider.System.GetUtcNow());
        OwnCertificate first = OwnCertificate.InFolder(_folder, [], clock), again = OwnCertificate.InFolder(_folder, [], clock);
        Assert.False(again.NewRoot);
        Assert.Equal(first.Server.Thumbprint, again.Server.Thumbprint);
        if (!OperatingSystem.IsWindows())
        {
            foreach (string key in Directory.GetFiles(_folder, "*.key"))
            {
                Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(key));
            }
        }

        clock.Advance(TimeSpan.FromDays(370));
        OwnCertificate renewed = OwnCertificate.InFolder(_folder, [], clock);
        Assert.NotEqual(first.Server.Thumbprint, renewed.Server.Thumbprint);
        Assert.Equal(first.RootPem, renewed.RootPem);
        OwnCertificate named = OwnCertificate.InFolder(_folder, ["pass.kitchen.lan"], clock);
        Assert.True(named.NewRoot);
        Assert.NotEqual(first.Fingerprint, named.Fingerprint);
        Assert.Equal(95, named.Fingerprint.Length);
    }

    private static HttpClient Trusting(string root, Uri at) => new(new SocketsHttpHandler
    {
        SslOptions = { CertificateChainPolicy = new X509ChainPolicy { TrustMode = X509ChainTrustMode.CustomRootTrust, CustomTrustStore = { X509Certificate2.CreateFromPem(root) }, RevocationMode = X509RevocationMode.NoCheck } },
        // names resolve to this machine; the certificate is judged by the name asked for
        ConnectCallback = async (_, cancel) =>
        {
            System.Net.Sockets.Socket socket = new(System.Net.Sockets.SocketType.Stream, System.Net.Sockets.ProtocolType.Tcp) { NoDelay = true };
            await socket.ConnectAsync(IPAddress.Loopback, at.Port, cancel);
            return new System.Net.Sockets.NetworkStream(socket, ownsSocket: true);
        },
    }) { BaseAddress = at };

    private static X509Chain Chain(X509Certificate2 root) => new() { ChainPolicy = { TrustMode = X509ChainTrustMode.CustomRootTrust, CustomTrustStore = { root }, RevocationMode = X509RevocationMode.NoCheck } };
}
