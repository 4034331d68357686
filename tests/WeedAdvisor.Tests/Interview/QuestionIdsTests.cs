using System.Reflection;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview;

public sealed class QuestionIdsTests
{
    [Fact]
    public void The_ids_of_questions_stand_in_one_list()
    {
        string[] known =
        [
            .. typeof(QuestionIds)
                .GetFields(BindingFlags.Public | BindingFlags.Static)
                .Select(field => (string)field.GetValue(null)!),
        ];
        string source = Path.Combine(Repository.Folder, "src");
        string[] elsewhere =
        [
            .. Directory
                .GetFiles(source, "*.cs", SearchOption.AllDirectories)
                .Where(file =>
                    !file.Contains("/obj/", StringComparison.Ordinal) && Path.GetFileName(file) != "QuestionIds.cs"
                )
                .SelectMany(file =>
                    known
                        .Where(id =>
                            File.ReadAllText(file).Contains($"GetValueOrDefault(\"{id}\"", StringComparison.Ordinal)
                            || File.ReadAllText(file).Contains($"WordOf(\"{id}\"", StringComparison.Ordinal)
                            || File.ReadAllText(file).Contains($"Need.Question(\"{id}\"", StringComparison.Ordinal)
                        )
                        .Select(id => $"{Path.GetFileName(file)}: {id}")
                ),
        ];
        Assert.Empty(elsewhere);
    }
}
