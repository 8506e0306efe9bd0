package seamsoak.support;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A Java of its own that runs one of our classes.
 *
 * @param process while it runs
 * @param out what it prints
 * @param err what it says beside
 */
public record Child(Process process, Path out, Path err) {
  private static final long HANGS_SECONDS = 300;

  /**
   * Starts a class.
   *
   * @param in the folder it works in
   * @param settings of the Java, such as {@code -Duser.language=tr}
   */
  public static Child start(Path in, List<String> settings, String main, List<String> args)
      throws IOException {
    Path out = Files.createTempFile("child", ".out");
    Path err = Files.createTempFile("child", ".err");
    return new Child(
        builder(in, settings, main, args)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start(),
        out,
        err);
  }

  public static ProcessBuilder builder(
      Path in, List<String> settings, String main, List<String> args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx256m"));
    command.addAll(settings);
    command.addAll(List.of("-cp", classPath(), main));
    command.addAll(args);
    return new ProcessBuilder(command).directory(in.toFile());
  }

  private static String classPath() {
    List<String> absolute = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      absolute.add(Path.of(entry).toAbsolutePath().toString());
    }
    return String.join(File.pathSeparator, absolute);
  }

  /** Its exit code once it has ended. */
  public int code() throws InterruptedException {
    if (!process.waitFor(HANGS_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("it hangs");
    }
    return process.exitValue();
  }

  public String said() throws IOException {
    return Files.readString(err, StandardCharsets.UTF_8);
  }
}
