using System.Collections;
using System.Collections.Immutable;
using Coulisse.Matter.Shapes;
using QRCoder;

namespace Coulisse.Papers.Pages;

/// <summary>A square code (QR, ISO/IEC 18004, error correction M) as dark runs, with its quiet edge.</summary>
internal static class SquareCode
{
    /// <summary>Dark runs of a code one unit wide: left, top, width, height.</summary>
    public static ImmutableArray<(double X, double Y, double Width, double Height)> Runs(string text)
    {
        using QRCodeData data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        int n = data.ModuleMatrix.Count;
        double module = 1.0 / n;
        ImmutableArray<(double, double, double, double)>.Builder runs = ImmutableArray.CreateBuilder<(double, double, double, double)>();
        for (int y = 0; y < n; y++)
        {
            BitArray row = data.ModuleMatrix[y];
            for (int x = 0; x < n; x++)
            {
                if (!row[x])
                {
                    continue;
                }

                int from = x;
                while (x + 1 < n && row[x + 1])
                {
                    x++;
                }

                runs.Add((from * module, y * module, (x - from + 1) * module, module));
            }
        }

        return runs.ToImmutable();
    }

    /// <summary>The code as a drawing, for print pages.</summary>
    public static Drawing Draw(string text, double millimetres) => new("Code of the batch: " + text, millimetres, millimetres,
        [.. Runs(text).Select(r => (Mark)new RectMark(r.X * millimetres, r.Y * millimetres, r.Width * millimetres, r.Height * millimetres, Ink.Solid))]);
}
