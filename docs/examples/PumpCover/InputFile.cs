using System.Text;

namespace PumpCover;

/// <summary>Reads a file as strict UTF-8, or says in one sentence why it cannot be read.</summary>
internal static class InputFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static string ReadText(string path)
    {
        try
        {
            return File.ReadAllText(path, Strict);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new InputRefusedException($"{path} does not exist; paths are taken from the folder in which the command is given.");
        }
        catch (DecoderFallbackException)
        {
            throw new InputRefusedException($"{path} is not text in UTF-8; save it as UTF-8.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new InputRefusedException($"{path} cannot be read: {fault.Message}");
        }
    }
}
