using System.Collections.Frozen;
using System.IO.Compression;
using System.Reflection;
using System.Security.Cryptography;

namespace Coulisse.Web.Hosting;

/// <summary>What the browser needs, read once out of the assembly. Addresses carry a fingerprint of all of it, so a browser may keep them for ever.</summary>
internal sealed class EmbeddedFiles
{
    private static readonly FrozenDictionary<string, string> Types = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".woff2"] = "font/woff2",
        [".svg"] = "image/svg+xml",
        [".txt"] = "text/plain; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".webmanifest"] = "application/manifest+json",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, (byte[] Bytes, byte[]? Brotli, string Type)> _files;

    private EmbeddedFiles(FrozenDictionary<string, (byte[], byte[]?, string)> files, string print)
    {
        _files = files;
        Print = print;
    }

    /// <summary>The one set of this build.</summary>
    public static EmbeddedFiles Of { get; } = Load();

    /// <summary>Fingerprint of all files.</summary>
    public string Print { get; }

    /// <summary>Address of a file ("css/bench.css").</summary>
    public string At(string file) => _files.ContainsKey(file)
        ? $"/a/{Print}/{file}"
        : throw new ArgumentException($"There is no file {file} in the assembly.", nameof(file));

    public IResult Serve(HttpContext context, string file)
    {
        if (!_files.TryGetValue(file, out (byte[] Bytes, byte[]? Brotli, string Type) found))
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        context.Response.Headers.Vary = "Accept-Encoding";
        if (found.Brotli is not null && context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal))
        {
            context.Response.Headers.ContentEncoding = "br";
            return Results.Bytes(found.Brotli, found.Type);
        }

        return Results.Bytes(found.Bytes, found.Type);
    }

    /// <summary>A text of the demo occasion ("occasion.md", "cards/starter.md"); null when there is none.</summary>
    public static string? Demo(string file)
    {
        using Stream? stream = typeof(EmbeddedFiles).Assembly.GetManifestResourceStream("demo/" + file);
        if (stream is null)
        {
            return null;
        }

        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Names of the demo's files.</summary>
    public static IEnumerable<string> DemoFiles() => typeof(EmbeddedFiles).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith("demo/", StringComparison.Ordinal)).Select(n => n["demo/".Length..].Replace('\\', '/')).Order(StringComparer.Ordinal);

    private static EmbeddedFiles Load()
    {
        Assembly here = typeof(EmbeddedFiles).Assembly;
        using IncrementalHash all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Dictionary<string, (byte[], byte[]?, string)> files = new(StringComparer.Ordinal);
        foreach (string name in here.GetManifestResourceNames().Where(n => n.StartsWith("wwwroot/", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using Stream stream = here.GetManifestResourceStream(name)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            all.AppendData(bytes);
            string type = Types.GetValueOrDefault(Path.GetExtension(name), "application/octet-stream");
            files[name["wwwroot/".Length..].Replace('\\', '/')] = (bytes, type.StartsWith("text/", StringComparison.Ordinal) ? Squeeze(bytes) : null, type);
        }

        return new EmbeddedFiles(files.ToFrozenDictionary(StringComparer.Ordinal), Convert.ToHexStringLower(all.GetHashAndReset())[..12]);
    }

    private static byte[] Squeeze(byte[] bytes)
    {
        using MemoryStream packed = new();
        using (BrotliStream brotli = new(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            brotli.Write(bytes);
        }

        return packed.ToArray();
    }
}
