package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileSetTest {
  private static final RunMark FIRST = RunMark.of(List.of("first"));
  private static final RunMark SECOND = RunMark.of(List.of("second"));

  private static final Pattern MEMBERS = Pattern.compile("[a-z]+\\.txt|chart\\.svg");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"chart.svg", "report.html", "plan.txt"})
  void textEndsWithTheMark(String name) throws IOException {
    write(FIRST, name, "content");
    assertTrue(Files.readString(folder.resolve(name)).startsWith("content"));
    assertEquals(Optional.of(FIRST), RunMark.of(folder.resolve(name)));
  }

  @Test
  void aPictureCarriesTheMarkAndStaysThePicture() throws IOException {
    BufferedImage image = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    image.setRGB(2, 1, 0x123456);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(image, "png", png);
    FileSet set = new FileSet(folder, MEMBERS);
    set.put("chart.png", png.toByteArray());
    set.write(FIRST);
    byte[] written = Files.readAllBytes(folder.resolve("chart.png"));
    assertEquals(Optional.of(FIRST), RunMark.of(folder.resolve("chart.png")));
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(written));
    assertEquals(image.getRGB(2, 1), read.getRGB(2, 1));
    PngChunks.check(written);
  }

  @Test
  void jsonIsLeftToItsWriter() throws IOException {
    String json = "{ \"run\": \"" + FIRST.value() + "\" }";
    write(FIRST, "advice.json", json);
    assertEquals(json, Files.readString(folder.resolve("advice.json")));
    assertEquals(Optional.of(FIRST), RunMark.of(folder.resolve("advice.json")));
  }

  @Test
  void theMarkIsThatOfTheInputsInTheirOrderAndNothingElse() {
    assertEquals(FIRST, RunMark.of(List.of("first")));
    assertNotEquals(FIRST, SECOND);
    assertNotEquals(RunMark.of(List.of("ab", "c")), RunMark.of(List.of("a", "bc")));
    assertNotEquals(RunMark.of(List.of("a", "b")), RunMark.of(List.of("b", "a")));
    assertTrue(FIRST.value().matches("[0-9a-f]{12}"));
  }

  @Test
  void aSetThatCannotBeCompletedLeavesTheOldOne() throws IOException {
    write(FIRST, "a.txt", "old");
    Files.createDirectory(folder.resolve("b.txt"));
    byte[] before = Files.readAllBytes(folder.resolve("a.txt"));
    Fault fault =
        assertThrows(Fault.class, () -> write(SECOND, "a.txt", "new", "b.txt", "cannot be"));
    assertTrue(fault.getMessage().contains("a folder has that name"), fault.getMessage());
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("a.txt")));
    assertEquals(List.of("a.txt", "b.txt"), names());
  }

  @Test
  void whatAnEarlierRunHadAndThisOneHasNotGoes() throws IOException {
    write(FIRST, "a.txt", "old", "chart.svg", "old", "pairs.svg", "of another command");
    Files.writeString(folder.resolve("notes.txt"), "mine");
    write(SECOND, "a.txt", "new");
    assertEquals(List.of("a.txt", "notes.txt", "pairs.svg"), names());
  }

  @Test
  void foldersMadeForNothingAreTakenAway() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    FileSet set = new FileSet(folder.resolve("x/y"), MEMBERS);
    set.put("n".repeat(300), new byte[1]);
    assertThrows(Fault.class, () -> set.write(FIRST));
    assertEquals(List.of("file"), names());
    FileSet below = new FileSet(file.resolve("x"), MEMBERS);
    below.put("a.txt", new byte[1]);
    assertThrows(Fault.class, () -> below.write(FIRST));
    assertEquals(List.of("file"), names());
  }

  @Test
  void aFolderThatVanishesMeanwhileIsMadeAgain() throws IOException {
    Path vanishing = Files.createDirectory(folder.resolve("vanishing"));
    FileSet set = new FileSet(vanishing, MEMBERS);
    set.put("a.txt", new byte[1]);
    Files.delete(vanishing);
    set.write(FIRST);
    assertEquals(Optional.of(FIRST), RunMark.of(vanishing.resolve("a.txt")));
  }

  @Test
  void aLinkIsReplacedAndWhatItPointsToIsNot() throws IOException {
    Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "mine");
    Files.createSymbolicLink(folder.resolve("a.txt"), elsewhere);
    write(FIRST, "a.txt", "new");
    assertEquals("mine", Files.readString(elsewhere));
    assertTrue(Files.isRegularFile(folder.resolve("a.txt")));
  }

  @Test
  void aPipeIsNotReplaced() throws Exception {
    Path pipe = folder.resolve("a.txt");
    assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    Fault fault = assertThrows(Fault.class, () -> write(FIRST, "a.txt", "new"));
    assertTrue(fault.getMessage().contains("a device or pipe"), fault.getMessage());
    assertFalse(Files.isRegularFile(pipe));
    assertEquals(List.of("a.txt"), names());
  }

  @Test
  void aSingleFileClearsTheLitterBesideIt() throws IOException {
    Files.createFile(folder.resolve(".seamsoak-999999999-kiln.csv"));
    WholeFile.write(folder.resolve("kiln.csv"), new byte[1]);
    assertEquals(List.of("kiln.csv"), names());
  }

  @Test
  void litterOfTheDeadIsCleared() throws IOException {
    Path dead = Files.createFile(folder.resolve(".seamsoak-999999999-a.txt"));
    Path numberUsedAgain = Files.createFile(part(ProcessHandle.current().pid()));
    Files.setLastModifiedTime(numberUsedAgain, FileTime.from(Instant.EPOCH));
    Files.createFile(folder.resolve(".seamsoak-notes"));
    write(FIRST, "b.txt", "");
    assertTrue(Files.notExists(dead) && Files.notExists(numberUsedAgain));
    assertEquals(List.of(".seamsoak-notes", "b.txt"), names());
  }

  @Test
  void whatALivingRunIsWritingStays() throws IOException {
    Path part = Files.createFile(part(ProcessHandle.current().pid()));
    write(FIRST, "b.txt", "");
    assertTrue(Files.exists(part));
  }

  @Test
  void filesOfAnotherHandAreKnown() throws IOException {
    write(FIRST, "ours.txt", "");
    Files.writeString(folder.resolve("notes.txt"), "run 12 miles");
    FileSet set = new FileSet(folder, MEMBERS);
    set.put("ours.txt", new byte[0]);
    set.put("notes.txt", new byte[0]);
    set.put("new.txt", new byte[0]);
    assertEquals(List.of(folder.resolve("notes.txt")), set.strangers());
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    Fault fault = assertThrows(Fault.class, () -> new FileSet(file, MEMBERS));
    assertEquals(
        file + ": it is a file, not a folder; --out takes a folder to write to",
        fault.getMessage());
  }

  private Path part(long pid) {
    return folder.resolve(".seamsoak-" + pid + "-a.txt");
  }

  private void write(RunMark mark, String... namesAndTexts) {
    FileSet set = new FileSet(folder, MEMBERS);
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      set.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    set.write(mark);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}
