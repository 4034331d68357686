using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using WeedAdvisor.Knowledge.Local;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>A file of the knowledge folder with its content.</summary>
/// <param name="Path">The path relative to the folder, with forward slashes.</param>
/// <param name="Role">What it holds.</param>
/// <param name="Bytes">Its content; null when it could not be read.</param>
internal sealed record FolderFile(string Path, FileRole Role, byte[]? Bytes);

/// <summary>
/// The files of a knowledge folder in ordinal order of path, whatever order the file system gives them in.
/// </summary>
/// <param name="Files">The files that have a place.</param>
/// <param name="Problems">Missing, unreadable and unplaced files.</param>
internal sealed record FolderFiles(ImmutableArray<FolderFile> Files, ImmutableArray<Problem> Problems)
{
    /// <summary>The most bytes that all files together may have.</summary>
    public const int SetLimit = 8 * 1024 * 1024;

    // Notes for people and the copies that saving leaves behind; every other file is read or named.
    private const string Notes = ".md",
        Copy = ".bak";

    // Deep enough for any folder that a person makes; a file below it would otherwise be passed over in silence.
    private const int Deepest = 64;

    // Editors' and version control's own files begin with a dot; on Unix the runtime calls those hidden.
    private static readonly EnumerationOptions s_everything = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = Deepest,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
        IgnoreInaccessible = false,
    };

    /// <summary>Lists and reads the folder.</summary>
    public static FolderFiles Read(string folder) =>
        Read(folder, "", FileRoles.RequiredFiles, FileRoles.Of, FileRoles.Unplaced);

    /// <summary>Lists and reads a local folder, whose paths are shown with <see cref="LocalFiles.Prefix"/>.</summary>
    public static FolderFiles ReadLocal(string folder) =>
        Read(folder, LocalFiles.Prefix, [], LocalFiles.RoleOf, LocalFiles.Unplaced);

    private static FolderFiles Read(
        string folder,
        string prefix,
        ImmutableArray<string> required,
        Func<string, FileRole?> roleOf,
        Func<string, Problem> unplaced
    )
    {
        if (List(folder, out Problem? unlisted) is not { } paths)
            return new FolderFiles([], [unlisted!]);
        var files = ImmutableArray.CreateBuilder<FolderFile>(paths.Length);
        var problems = ImmutableArray.CreateBuilder<Problem>();
        foreach (string missing in required.Except(paths, StringComparer.Ordinal))
            problems.Add(new Problem(Place.Whole(missing), "no such file", "a file that exists"));
        long total = 0;
        foreach (string path in paths)
        {
            if (roleOf(path) is not { } role)
            {
                problems.Add(unplaced(path));
                continue;
            }

            int limit = role == FileRole.Visits ? SourceText.VisitFileLimit : SourceText.KnowledgeFileLimit;
            byte[]? bytes = FileBytes.Read(
                System.IO.Path.Combine(folder, path),
                prefix + path,
                limit,
                out Problem? problem
            );
            total += bytes?.Length ?? 0;
            if (total > SetLimit)
            {
                problems.Add(
                    new Problem(
                        Place.Whole(prefix + path),
                        "a folder of more than 8 MB up to here",
                        "at most 8 MB in all knowledge files"
                    )
                );
                break;
            }

            if (problem is not null)
                problems.Add(problem);
            files.Add(new FolderFile(prefix + path, role, bytes));
        }

        return new FolderFiles(files.DrainToImmutable(), problems.DrainToImmutable());
    }

    /// <summary>
    /// SHA-256 over path and content of every file, in order. The length stands between them, so that no content can
    /// pass for another file's path.
    /// </summary>
    public string Hash()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> length = stackalloc byte[sizeof(long)];
        foreach (FolderFile file in Files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(file.Path));
            byte[] bytes = file.Bytes ?? [];
            BinaryPrimitives.WriteInt64LittleEndian(length, bytes.Length);
            hash.AppendData([0]);
            hash.AppendData(length);
            hash.AppendData(bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static string[]? List(string folder, out Problem? problem)
    {
        problem = null;
        try
        {
            return
            [
                .. Directory
                    .EnumerateFiles(folder, "*", s_everything)
                    .Select(path => System.IO.Path.GetRelativePath(folder, path).Replace('\\', '/'))
                    .Where(path =>
                        !path.EndsWith(Notes, StringComparison.OrdinalIgnoreCase)
                        && !path.EndsWith(Copy, StringComparison.OrdinalIgnoreCase)
                    )
                    .Order(StringComparer.Ordinal),
            ];
        }
        catch (DirectoryNotFoundException)
        {
            problem = new Problem(Place.Whole(folder), "no such folder", "a knowledge folder");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            problem = new Problem(
                Place.Whole(folder),
                $"a folder that cannot be read ({e.Message})",
                "a readable knowledge folder"
            );
        }

        return null;
    }
}
