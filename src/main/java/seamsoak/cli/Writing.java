package seamsoak.cli;

import picocli.CommandLine.Option;
import seamsoak.data.FileSet;

/** How files are written: what somebody else has put there stays unless that is asked for. */
final class Writing {
  @Option(
      names = "--replace",
      description = "Write over files of those names that are not by this program or were changed.")
  private boolean replace;

  /** Whether what is there may be written over. */
  boolean replaces() {
    return replace;
  }

  /** Refuses files that are in the way. */
  FileSet checked(FileSet files) {
    if (!replace) {
      files.refuseStrangers();
    }
    return files;
  }

  void write(FileSet files) {
    checked(files).write(Program.version());
  }
}
