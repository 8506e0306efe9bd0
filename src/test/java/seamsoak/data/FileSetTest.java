package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Sha256;

class FileSetTest {
  private static final String LIST = "seamsoak.sha256";

  private static final Pattern MEMBERS = Pattern.compile("[a-z]+\\.txt|chart\\.svg");

  @TempDir Path folder;

  @Test
  void theListIsOneThatSha256sumReads() throws IOException {
    write("b.txt", "second", "a.txt", "first");
    assertEquals(List.of("a.txt", "b.txt", LIST), names());
    List<String> lines = Files.readAllLines(folder.resolve(LIST));
    assertTrue(lines.get(0).startsWith("# Written by a test"), lines.get(0));
    assertEquals(
        List.of(Sha256.line(folder.resolve("a.txt")), Sha256.line(folder.resolve("b.txt"))),
        lines.subList(1, lines.size()));
  }

  @Test
  void theSameFilesGiveTheSameListWhateverWasThere() throws IOException {
    write("a.txt", "old", "c.txt", "old");
    write("a.txt", "new");
    String after = Files.readString(folder.resolve(LIST));
    Files.delete(folder.resolve("a.txt"));
    Files.delete(folder.resolve(LIST));
    write("a.txt", "new");
    assertEquals(Files.readString(folder.resolve(LIST)), after);
  }

  @Test
  void itsPermissionsAreThoseOfAnyNewFile() throws IOException {
    Path ordinary = Files.writeString(folder.resolve("ordinary.json"), "");
    write("a.txt", "");
    Path target = folder.resolve("a.txt");
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      assertEquals(Files.getPosixFilePermissions(ordinary), Files.getPosixFilePermissions(target));
    } else {
      assertEquals(Files.isReadable(ordinary), Files.isReadable(target));
    }
  }

  @Test
  void aSetThatCannotBeCompletedLeavesTheOldOne() throws IOException {
    write("a.txt", "old");
    Files.createDirectory(folder.resolve("b.txt"));
    byte[] before = Files.readAllBytes(folder.resolve("a.txt"));
    Fault fault = assertThrows(Fault.class, () -> write("a.txt", "new", "b.txt", "cannot be"));
    assertTrue(fault.getMessage().contains("a folder has that name"), fault.getMessage());
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("a.txt")));
    assertEquals(List.of("a.txt", "b.txt", LIST), names());
  }

  @Test
  void whatAnEarlierRunHadAndThisOneHasNotGoes() throws IOException {
    write("a.txt", "old", "chart.svg", "old", "pairs.svg", "of another command");
    Files.writeString(folder.resolve("notes.txt"), "mine");
    write("a.txt", "new");
    assertEquals(List.of("a.txt", "notes.txt", "pairs.svg", LIST), names());
    assertEquals(List.of("a.txt", "pairs.svg"), listed());
  }

  /** As a kill leaves it: some files moved, others not, the list of both. */
  @Test
  void filesOfTwoRunsArePutRight() throws IOException {
    write("a.txt", "new", "b.txt", "new");
    List<String> both = new ArrayList<>(Files.readAllLines(folder.resolve(LIST)));
    write("a.txt", "old", "b.txt", "old", "c.txt", "old");
    both.addAll(Files.readAllLines(folder.resolve(LIST)));
    Files.writeString(folder.resolve("b.txt"), "new");
    Files.write(folder.resolve(LIST), both);
    set("a.txt", "newer", "b.txt", "newer").refuseStrangers();
    write("a.txt", "newer", "b.txt", "newer");
    assertEquals(List.of("a.txt", "b.txt", LIST), names());
    assertEquals(List.of("a.txt", "b.txt"), listed());
  }

  @Test
  void whatIsChangedIsNoLongerOurs() throws IOException {
    write("a.txt", "old", "b.txt", "old", "c.txt", "old");
    Files.writeString(folder.resolve("a.txt"), "my remarks");
    Files.writeString(folder.resolve("b.txt"), "my remarks");
    refused("a.txt: it was not written by this program, or was changed since", "a.txt", "new");
    refused("a.txt: it and 1 more files there", "a.txt", "new", "b.txt", "new", "c.txt", "new");
    write("d.txt", "new");
    assertEquals(List.of("a.txt", "b.txt", "d.txt", LIST), names());
    assertEquals(List.of("d.txt"), listed());
  }

  @Test
  void whatIsAlreadyAsItWillBeIsNotRefused() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "same");
    set("a.txt", "same").refuseStrangers();
    refused("a.txt: it was not written by this program", "a.txt", "other");
  }

  @Test
  void aListOfAnotherHandIsNotWrittenOver() throws IOException {
    Files.writeString(folder.resolve(LIST), "mine");
    refused(LIST + ": it was not written by this program", "a.txt", "new");
    Fault fault = assertThrows(Fault.class, () -> set(LIST, "new"));
    assertTrue(fault.getMessage().contains("the list of what was written"), fault.getMessage());
  }

  @Test
  void aListLeadsToNoOtherFolder() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Path outside = Files.writeString(folder.resolve("a.txt"), "mine");
    String line = Sha256.line(outside).replace("a.txt", "../a.txt");
    Files.writeString(inside.resolve(LIST), "# Written by a test\n" + line + "\n");
    FileSet set = new FileSet(inside, Pattern.compile(".*"));
    set.put("b.txt", new byte[1]);
    set.write("a test");
    assertTrue(Files.exists(outside));
  }

  @Test
  void foldersMadeForNothingAreTakenAway() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    FileSet set = new FileSet(folder.resolve("x/y"), MEMBERS);
    set.put("n".repeat(300), new byte[1]);
    assertThrows(Fault.class, () -> set.write("a test"));
    assertEquals(List.of("file"), names());
    FileSet below = new FileSet(file.resolve("x"), MEMBERS);
    below.put("a.txt", new byte[1]);
    assertThrows(Fault.class, () -> below.write("a test"));
    assertEquals(List.of("file"), names());
  }

  @Test
  void aFolderThatVanishesMeanwhileIsMadeAgain() throws IOException {
    Path vanishing = Files.createDirectory(folder.resolve("vanishing"));
    FileSet set = new FileSet(vanishing, MEMBERS);
    set.put("a.txt", new byte[1]);
    Files.delete(vanishing);
    set.write("a test");
    assertTrue(Files.exists(vanishing.resolve("a.txt")));
  }

  @Test
  void aLinkIsReplacedAndWhatItPointsToIsNot() throws IOException {
    Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "mine");
    Files.createSymbolicLink(folder.resolve("a.txt"), elsewhere);
    write("a.txt", "new");
    assertEquals("mine", Files.readString(elsewhere));
    assertTrue(Files.isRegularFile(folder.resolve("a.txt")));
  }

  @Test
  void aPipeIsNotReplaced() throws Exception {
    Path pipe = folder.resolve("a.txt");
    assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    Fault fault = assertThrows(Fault.class, () -> write("a.txt", "new"));
    assertTrue(fault.getMessage().contains("a device or pipe"), fault.getMessage());
    assertFalse(Files.isRegularFile(pipe));
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void litterOfTheDeadIsCleared() throws IOException {
    Path dead = Files.createFile(folder.resolve(".seamsoak-999999999-a.txt"));
    Path numberUsedAgain = Files.createFile(part(ProcessHandle.current().pid()));
    Files.setLastModifiedTime(numberUsedAgain, FileTime.from(Instant.EPOCH));
    Files.createFile(folder.resolve(".seamsoak-notes"));
    write("b.txt", "");
    assertTrue(Files.notExists(dead) && Files.notExists(numberUsedAgain));
    assertEquals(List.of(".seamsoak-notes", "b.txt", LIST), names());
  }

  @Test
  void whatALivingRunIsWritingStays() throws IOException {
    Path part = Files.createFile(part(ProcessHandle.current().pid()));
    write("b.txt", "");
    assertTrue(Files.exists(part));
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    Fault fault = assertThrows(Fault.class, () -> new FileSet(file, MEMBERS));
    assertEquals(
        file + ": it is a file, not a folder; give a folder to write to", fault.getMessage());
  }

  private Path part(long pid) {
    return folder.resolve(".seamsoak-" + pid + "-a.txt");
  }

  private void refused(String said, String... namesAndTexts) {
    Fault fault = assertThrows(Fault.class, set(namesAndTexts)::refuseStrangers);
    assertTrue(fault.getMessage().startsWith(folder.resolve(said).toString()), fault.getMessage());
  }

  private void write(String... namesAndTexts) {
    set(namesAndTexts).write("a test");
  }

  private FileSet set(String... namesAndTexts) {
    FileSet set = new FileSet(folder, MEMBERS);
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      set.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return set;
  }

  private List<String> listed() throws IOException {
    return Files.readAllLines(folder.resolve(LIST)).stream()
        .skip(1)
        .map(line -> line.split("  ")[1])
        .toList();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}
