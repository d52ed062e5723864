using System.Formats.Asn1;
using System.Globalization;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Coulisse.Web.Hosting;

/// <summary>
/// The kitchen's own certificate: a root that is trusted once on each tablet, and the bench's certificate signed by it, made anew when it runs out or the machine's addresses change.
/// The root may vouch for this machine's names and for private addresses only (name constraints, RFC 5280 section 4.2.1.10): whoever steals its key cannot pose as any site of the world.
/// </summary>
public sealed record OwnCertificate
{
    /// <summary>Name of the root's file in the folder; it holds no secret.</summary>
    public const string RootFile = "kitchen-root.crt";

    // browsers refuse a server's certificate that is good for longer (CA/Browser Forum, Baseline Requirements 6.3.2)
    private const int ServerDays = 397;
    private const int RootDays = 3650;
    private static readonly TimeSpan RenewBefore = TimeSpan.FromDays(30);

    // RFC 1918, RFC 3927, RFC 4193, RFC 4291 and loopback; address and mask as name constraints want them
    private static readonly (byte[] Address, byte[] Mask)[] Private =
    [
        ([10, 0, 0, 0], [255, 0, 0, 0]),
        ([172, 16, 0, 0], [255, 240, 0, 0]),
        ([192, 168, 0, 0], [255, 255, 0, 0]),
        ([169, 254, 0, 0], [255, 255, 0, 0]),
        ([127, 0, 0, 0], [255, 0, 0, 0]),
        (Six(0xfc), Six(0xfe)),
        (Six(0xfe, 0x80), Six(0xff, 0xc0)),
        (IPAddress.IPv6Loopback.GetAddressBytes(), [.. Enumerable.Repeat((byte)255, 16)]),
    ];

    /// <summary>What the bench serves with.</summary>
    public required X509Certificate2 Server { get; init; }

    /// <summary>The root as PEM, to be trusted on each device.</summary>
    public required string RootPem { get; init; }

    /// <summary>SHA-256 of the root, in pairs, to be compared before it is trusted.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Whether the root was made just now, so that no device knows it yet.</summary>
    public required bool NewRoot { get; init; }

    /// <summary>Finds or makes both in a folder. Keys are readable by this user only.</summary>
    /// <param name="folder">Folder of its own; made when missing.</param>
    /// <param name="further">Further names this machine is reached by, such as "bench.kitchen.lan".</param>
    /// <param name="clock">The clock.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="CryptographicException">What lies there is no certificate, or a name is not one the root may vouch for.</exception>
    public static OwnCertificate InFolder(string folder, IReadOnlyCollection<string> further, TimeProvider clock)
    {
        Directory.CreateDirectory(folder);
        string rootAt = Path.Combine(folder, RootFile), rootKeyAt = Path.Combine(folder, "kitchen-root.key"), serverAt = Path.Combine(folder, "bench.crt"), serverKeyAt = Path.Combine(folder, "bench.key");
        DateTimeOffset now = clock.GetUtcNow();
        string[] names = [.. new[] { "localhost", Machine(), Machine() + ".local" }.Concat(further).Select(n => n.ToLowerInvariant()).Distinct()];
        IPAddress[] addresses = Addresses();

        X509Certificate2? root = File.Exists(rootAt) && File.Exists(rootKeyAt) ? X509Certificate2.CreateFromPemFile(rootAt, rootKeyAt) : null;
        // the root's own names are fixed when it is made: one that does not cover a name, or has run out, gives way to a new one
        bool newRoot = root is null || root.NotAfter.ToUniversalTime() < now.UtcDateTime + RenewBefore || !names.All(n => Vouches(root, n));
        if (newRoot)
        {
            root = MakeRoot(names, now);
            Keep(rootAt, rootKeyAt, root);
        }

        X509Certificate2? server = !newRoot && File.Exists(serverAt) && File.Exists(serverKeyAt) ? X509Certificate2.CreateFromPemFile(serverAt, serverKeyAt) : null;
        if (server is null || server.NotAfter.ToUniversalTime() < now.UtcDateTime + RenewBefore || !names.All(n => server.MatchesHostname(n)) || !addresses.All(a => server.MatchesHostname(a.ToString())))
        {
            server = MakeServer(root!, names, addresses, now);
            Keep(serverAt, serverKeyAt, server);
        }

        return new OwnCertificate
        {
            // a key that lives in memory only is not accepted by the secure channel of Windows: it goes through a container once
            Server = X509CertificateLoader.LoadPkcs12(server.Export(X509ContentType.Pkcs12), null),
            RootPem = root!.ExportCertificatePem(),
            Fingerprint = string.Join(':', root.GetCertHash(HashAlgorithmName.SHA256).Select(b => b.ToString("X2", CultureInfo.InvariantCulture))),
            NewRoot = newRoot,
        };
    }

    private static X509Certificate2 MakeRoot(string[] names, DateTimeOffset now)
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=Kitchen root of " + Machine(), key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: true, hasPathLengthConstraint: true, pathLengthConstraint: 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign, critical: true));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        request.CertificateExtensions.Add(new X509Extension("2.5.29.30", Constraints(names), critical: true));
        return request.CreateSelfSigned(now.AddHours(-1), now.AddDays(RootDays));
    }

    private static X509Certificate2 MakeServer(X509Certificate2 root, string[] names, IPAddress[] addresses, DateTimeOffset now)
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=" + Machine(), key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder also = new();
        foreach (string name in names)
        {
            also.AddDnsName(name);
        }

        foreach (IPAddress address in addresses)
        {
            also.AddIpAddress(address);
        }

        request.CertificateExtensions.Add(also.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: false, hasPathLengthConstraint: false, pathLengthConstraint: 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], critical: false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(root, includeKeyIdentifier: true, includeIssuerAndSerial: false));
        DateTimeOffset end = new[] { now.AddDays(ServerDays), new DateTimeOffset(root.NotAfter) }.Min();
        using X509Certificate2 signed = request.Create(root, now.AddHours(-1), end, RandomNumberGenerator.GetBytes(16));
        return signed.CopyWithPrivateKey(key);
    }

    /// <summary>NameConstraints ::= SEQUENCE { permittedSubtrees [0] SEQUENCE OF { base GeneralName } }.</summary>
    private static byte[] Constraints(string[] names)
    {
        AsnWriter writer = new(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(new Asn1Tag(TagClass.ContextSpecific, 0)))
        {
            foreach (string name in names)
            {
                using (writer.PushSequence())
                {
                    writer.WriteCharacterString(UniversalTagNumber.IA5String, name, new Asn1Tag(TagClass.ContextSpecific, 2));
                }
            }

            foreach ((byte[] address, byte[] mask) in Private)
            {
                using (writer.PushSequence())
                {
                    writer.WriteOctetString([.. address, .. mask], new Asn1Tag(TagClass.ContextSpecific, 7));
                }
            }
        }

        return writer.Encode();
    }

    private static bool Vouches(X509Certificate2 root, string name)
    {
        if (root.Extensions["2.5.29.30"] is not { } constraints)
        {
            return false;
        }

        AsnReader permitted = new AsnReader(constraints.RawData, AsnEncodingRules.DER).ReadSequence().ReadSequence(new Asn1Tag(TagClass.ContextSpecific, 0));
        Asn1Tag dns = new(TagClass.ContextSpecific, 2);
        while (permitted.HasData)
        {
            AsnReader subtree = permitted.ReadSequence();
            if (subtree.PeekTag() == dns && subtree.ReadCharacterString(UniversalTagNumber.IA5String, dns) is var held && (name == held || name.EndsWith("." + held, StringComparison.Ordinal)))
            {
                return true;
            }
        }

        return false;
    }

    private static void Keep(string at, string keyAt, X509Certificate2 certificate)
    {
        using ECDsa key = certificate.GetECDsaPrivateKey()!;
        FileStreamOptions mine = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            mine.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        File.Delete(keyAt);
        using (StreamWriter writer = new(keyAt, mine))
        {
            writer.Write(key.ExportPkcs8PrivateKeyPem());
        }

        File.WriteAllText(at, certificate.ExportCertificatePem());
    }

    // what a name in a certificate may hold; a machine may be called anything
    private static string Machine() => new string([.. Environment.MachineName.ToLowerInvariant().Where(c => char.IsAsciiLetterOrDigit(c) || c is '-')]).Trim('-') is { Length: > 0 } name ? name : "bench";

    private static IPAddress[] Addresses() => [.. NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses).Select(a => a.Address)
        .Select(a => a.AddressFamily == AddressFamily.InterNetworkV6 ? new IPAddress(a.GetAddressBytes()) : a)
        .Concat([IPAddress.Loopback, IPAddress.IPv6Loopback]).Where(IsPrivate).Distinct()];

    private static bool IsPrivate(IPAddress address)
    {
        byte[] bytes = address.GetAddressBytes();
        return Private.Any(p => p.Address.Length == bytes.Length && bytes.Zip(p.Mask, (b, m) => (byte)(b & m)).SequenceEqual(p.Address));
    }

    private static byte[] Six(params byte[] head) => [.. head, .. new byte[16 - head.Length]];
}
