using System.Text.Json;

namespace PumpCover;

/// <summary>One object of the job file, which knows where it stands: every refusal names file, path, value and what is allowed.</summary>
internal sealed class JobNode
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    private readonly string _file;
    private readonly string _path;
    private readonly JsonElement _element;

    private JobNode(string file, string path, JsonElement element)
    {
        (_file, _path, _element) = (file, path, element);
        if (element.ValueKind != JsonValueKind.Object) throw Refuse(path.Length == 0 ? "the file" : path, element, "it must be an object, { … }");
    }

    public static JobNode ReadFile(string file)
    {
        try
        {
            return new JobNode(file, "", JsonDocument.Parse(InputFile.ReadText(file), Strict).RootElement);
        }
        catch (JsonException fault)
        {
            string place = fault.LineNumber is long line ? $"line {line + 1}, byte {fault.BytePositionInLine + 1}: " : "";
            throw new InputRefusedException($"{file}: {place}this is not JSON with unique keys: {fault.Message.Split(" LineNumber:")[0]}");
        }
    }

    /// <summary>A misspelt key is refused, not passed over.</summary>
    public JobNode Allow(params string[] keys)
    {
        foreach (JsonProperty property in _element.EnumerateObject().Where(p => !keys.Contains(p.Name)))
        {
            throw new InputRefusedException($"{_file}: {PathOf(property.Name)} is not a known key; the keys here are {string.Join(", ", keys)}.");
        }

        return this;
    }

    public bool Has(string key) => _element.TryGetProperty(key, out _);

    public JobNode Object(string key) => new(_file, PathOf(key), Required(key, "an object, { … }"));

    public IReadOnlyList<JobNode> Objects(string key) =>
        [.. Items(key, "objects").Select((item, index) => new JobNode(_file, $"{PathOf(key)}[{index}]", item))];

    public double Number(string key)
    {
        JsonElement element = Required(key, "a number");
        if (element.ValueKind != JsonValueKind.Number) throw Refuse(PathOf(key), element, "it must be a number, without quotation marks and unit");
        double value = element.GetDouble();
        return double.IsFinite(value) ? value : throw Refuse(PathOf(key), element, "it must be a finite number");
    }

    public string Text(string key)
    {
        JsonElement element = Required(key, "a text");
        return element.ValueKind == JsonValueKind.String && element.GetString() is string text && text.Trim().Length > 0 && !text.Any(char.IsControl)
            ? text
            : throw Refuse(PathOf(key), element, "it must be a text of one line that is not empty, in quotation marks");
    }

    public IReadOnlyList<int> WholeNumbers(string key)
    {
        List<int> numbers = [];
        foreach (JsonElement item in Items(key, "bolt numbers"))
        {
            bool whole = item.ValueKind == JsonValueKind.Number && item.TryGetInt32(out int number) && number is >= 1 and <= 9999;
            if (!whole) throw Refuse($"{PathOf(key)}[{numbers.Count}]", item, "it must be a whole number from 1 to 9999");
            numbers.Add(item.GetInt32());
        }

        return numbers;
    }

    /// <summary>Asks the library; where it refuses, the parameter is led back to the key that was written.</summary>
    public T Ask<T>(Func<T> library, params (string Parameter, string Key)[] keys) => AskWithHint("", library, keys);

    /// <summary>As <see cref="Ask"/>, with a word on what this file offers where the library speaks of its own calls.</summary>
    public T AskWithHint<T>(string hint, Func<T> library, params (string Parameter, string Key)[] keys)
    {
        try
        {
            return library();
        }
        catch (Exception refusal) when (refusal is ArgumentException or FormatException)
        {
            string? parameter = Refused.Parameter(refusal);
            string? key = keys.FirstOrDefault(pair => pair.Parameter == parameter || pair.Parameter.Length == 0).Key;
            throw key is null
                ? new InputRefusedException($"{_file}: {_path}: {Refused.Because(refusal)}.")
                : Refusal(key, Refused.Because(refusal) + hint);
        }
    }

    public InputRefusedException Refusal(string key, string requirement) => Refuse(PathOf(key), Required(key, "a value"), requirement);

    private InputRefusedException Refuse(string path, JsonElement element, string requirement) =>
        new($"{_file}: {path} is {Shorten(element.GetRawText())}; {requirement}.");

    private JsonElement Required(string key, string what) => _element.TryGetProperty(key, out JsonElement element)
        ? element
        : throw new InputRefusedException($"{_file}: {PathOf(key)} is missing; it must be given as {what}.");

    private List<JsonElement> Items(string key, string what)
    {
        JsonElement element = Required(key, $"a list of {what}, [ … ]");
        return element.ValueKind == JsonValueKind.Array
            ? [.. element.EnumerateArray()]
            : throw Refuse(PathOf(key), element, $"it must be a list of {what}, [ … ]");
    }

    private string PathOf(string key) => _path.Length == 0 ? key : $"{_path}.{key}";

    private static string Shorten(string raw)
    {
        string line = string.Join(' ', raw.Split(['\n', '\r', ' '], StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= 60 ? line : $"{line[..60]}…";
    }
}
