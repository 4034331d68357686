using System.Globalization;
using System.Security.Cryptography;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Tells whether a file still holds what it held: its length and the hash of its bytes.</summary>
/// <param name="Length">How many bytes.</param>
/// <param name="Hash">Their SHA-256, in hexadecimal.</param>
public sealed record FileStamp(long Length, string Hash)
{
    /// <summary>The stamp of some bytes.</summary>
    public static FileStamp Of(ReadOnlySpan<byte> bytes) =>
        new(bytes.Length, Convert.ToHexStringLower(SHA256.HashData(bytes)));

    /// <summary>The stamp of a file, whatever its size.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public static FileStamp OfFile(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        string hash = Convert.ToHexStringLower(SHA256.HashData(stream));
        return new FileStamp(stream.Position, hash);
    }

    /// <summary>The stamp that <see cref="ToString"/> wrote; null when it is none.</summary>
    public static FileStamp? Parse(string text) =>
        text.Split(' ') is [string length, string hash]
        && long.TryParse(length, NumberStyles.None, CultureInfo.InvariantCulture, out long bytes)
            ? new FileStamp(bytes, hash)
            : null;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Length} {Hash}");
}
