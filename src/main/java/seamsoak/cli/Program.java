package seamsoak.cli;

import java.util.Optional;
import seamsoak.unit.Printable;

/** How the program is called, which one it is, and the codes that it ends with. */
final class Program {
  /** What it goes by where it came with a Java of its own. */
  static final String NAME = "seamsoak";

  /** Set by the starter that it then has. */
  static final boolean BY_NAME = System.getProperty("seamsoak.name") != null;

  /** For examples, and for what to do next. */
  static final String CALL = BY_NAME ? NAME : "java -jar target/seamsoak.jar";

  static final int ANSWERED = 0;
  static final int BROKEN = 1;
  static final int WRONG_COMMAND_LINE = 2;
  static final int WRONG_DATA = 3;
  static final int DOES_NOT_GO_AHEAD = 4;

  private Program() {}

  static String version() {
    Module module = Program.class.getModule();
    Optional<String> version =
        module.isNamed()
            ? module.getDescriptor().rawVersion()
            : Optional.ofNullable(Program.class.getPackage().getImplementationVersion());
    return NAME + " " + version.orElse("(unpacked)");
  }

  /** A word as a shell takes it. */
  static String quoted(String word) {
    String name = Printable.of(word);
    boolean plain = name.matches("[-\\w./\\\\:,=]+");
    // in single quotes a shell takes everything as it stands; cmd.exe knows only double ones
    boolean charged = name.matches(".*[\"$`!%^&|<>].*");
    return plain ? name : charged ? "'" + name.replace("'", "'\\''") + "'" : '"' + name + '"';
  }
}
