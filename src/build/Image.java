import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes a folder that runs without Java, packs it, and on Debian a package of it: {@code java
 * src/build/Image.java JAR FOLDER VERSION}. Only what a JDK brings is used, so that it should work
 * on Windows and macOS too; it was tried on Linux alone.
 *
 * <p>The jar becomes a module inside the runtime, since an archive of classes that lie in a jar is
 * bound to the jar's place and time, and is silently left out once the folder has moved.
 */
final class Image {
  private static final String NAME = "seamsoak";
  private static final String MAIN = NAME + "/seamsoak.cli.Main";
  private static final boolean LINUX = System.getProperty("os.name").startsWith("Linux");
  private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");

  /** Parts of the runtime for screens and sound, which the program does not use. */
  private static final List<String> UNUSED =
      List.of("libawt_xawt.so", "libjawt.so", "libjsound.so", "libsplashscreen.so");

  private final Path jar;
  private final Path out;
  private final String version;

  private Image(Path jar, Path out, String version) {
    this.jar = jar;
    this.out = out;
    this.version = version;
  }

  public static void main(String[] args) throws IOException {
    if (args.length != 3) {
      throw new Refused("usage: java src/build/Image.java JAR FOLDER VERSION");
    }
    try {
      new Image(Path.of(args[0]).toAbsolutePath(), Path.of(args[1]).toAbsolutePath(), args[2])
          .make();
    } catch (Refused e) {
      System.err.println(e.getMessage());
      System.exit(1);
    }
  }

  /** One sentence on what is missing. */
  private static final class Refused extends RuntimeException {
    Refused(String why) {
      super(why);
    }
  }

  private void make() throws IOException {
    needed();
    remove(out);
    Files.createDirectories(out);
    Path module = module();
    Path runtime = runtime(module);
    ready(runtime);
    Path folder = folder(runtime);
    List<Path> made = new ArrayList<>(List.of(packed(folder)));
    Path bill = jar.resolveSibling("bom.json");
    if (Files.exists(bill)) {
      made.add(Files.copy(bill, out.resolve(NAME + "-" + version + ".cdx.json")));
    }
    if (LINUX && on("dpkg-deb")) {
      made.add(debian(folder));
    } else if (LINUX) {
      System.out.println("No .deb: dpkg-deb (package dpkg) is not here.");
    }
    Path sums = out.resolve("SHA256SUMS");
    StringBuilder lines = new StringBuilder();
    for (Path file : made) {
      lines.append(sha256(file)).append("  ").append(file.getFileName()).append('\n');
    }
    Files.writeString(sums, lines);
    for (Path file : made) {
      System.out.printf(Locale.ROOT, "%s  %.1f MB%n", file, Files.size(file) / 1e6);
    }
    System.out.println(sums);
  }

  /** What the tools of the JDK need besides, said at once. */
  private static void needed() {
    for (String tool : LINUX ? List.of("jar", "javac", "jlink") : List.of("jar", "javac", "jlink", "jpackage")) {
      if (ToolProvider.findFirst(tool).isEmpty()) {
        throw new Refused(
            "The image needs " + tool + ", which comes with a JDK of 17 or later; this Java has none.");
      }
    }
    if (LINUX && !on("objcopy")) {
      throw new Refused(
          "The image needs objcopy, with which jlink takes out what is for debuggers: install binutils.");
    }
    if (!on("tar")) {
      throw new Refused("The image needs tar, with which it is packed.");
    }
  }

  private static boolean on(String command) {
    return Stream.of(System.getenv("PATH").split(System.getProperty("path.separator")))
        .map(p -> Path.of(p).resolve(WINDOWS ? command + ".exe" : command))
        .anyMatch(Files::isExecutable);
  }

  /** The jar with a description of it as a module. */
  private Path module() throws IOException {
    Path module = out.resolve("module/" + NAME + ".jar");
    Files.createDirectories(module.getParent());
    Files.copy(jar, module);
    Path info = out.resolve("module/module-info.java");
    Files.writeString(
        info,
        """
        module seamsoak {
          requires java.desktop;
          requires java.net.http;
          requires java.xml;
          requires jdk.httpserver;
          requires static java.sql;
        %s}
        """
            .formatted(used()));
    tool(
        "javac",
        "-proc:none",
        "-Xlint:-module",
        "-d",
        out.resolve("module").toString(),
        "--patch-module",
        NAME + "=" + module,
        info.toString());
    tool(
        "jar",
        "--update",
        "--file",
        module.toString(),
        "--module-version",
        version,
        "-C",
        out.resolve("module").toString(),
        "module-info.class");
    Files.delete(info);
    Files.delete(out.resolve("module/module-info.class"));
    return module;
  }

  /** A module finds no implementation of a service that it does not say it looks for. */
  private String used() throws IOException {
    StringBuilder uses = new StringBuilder();
    try (FileSystem files = FileSystems.newFileSystem(jar)) {
      Path services = files.getPath("META-INF/services");
      if (Files.isDirectory(services)) {
        try (Stream<Path> all = Files.list(services)) {
          for (Path service : all.sorted().toList()) {
            String name = service.getFileName().toString();
            if (Files.exists(files.getPath(name.replace('.', '/') + ".class"))) {
              uses.append("  uses ").append(name).append(";\n");
              uses.append("  provides ").append(name).append(" with ");
              uses.append(String.join(", ", implementations(service))).append(";\n");
            }
          }
        }
      }
    }
    return uses.toString();
  }

  private static List<String> implementations(Path service) throws IOException {
    return Files.readAllLines(service).stream()
        .map(line -> line.replaceFirst("#.*", "").strip())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private Path runtime(Path module) throws IOException {
    Path runtime = out.resolve("runtime");
    tool(
        "jlink",
        "--module-path",
        module.toString(),
        "--add-modules",
        NAME,
        "--strip-debug",
        "--no-header-files",
        "--no-man-pages",
        "--compress=2",
        "--output",
        runtime.toString());
    if (LINUX) {
      for (String unused : UNUSED) {
        Files.deleteIfExists(runtime.resolve("lib").resolve(unused));
      }
    }
    return runtime;
  }

  /** What these load, and the page, lies ready inside the runtime. */
  private static final List<String> TRIED =
      List.of(
          "plan alloy-data/billets/mosaic.json --samples 2 --out @tried",
          "soak alloy-data/billets/mosaic.json --samples 2",
          "schedule 1084 75Ni8 --layer 1mm --section 20mm",
          "check alloy-data/billets/mosaic.json",
          "heat alloy-data/logs/kiln.csv --column Left --tip air --loaded 4min --section 1in",
          "migrate 1095 1018 --layer 1mm --at 1100C --for 20min",
          "decarb 1084 --at 1100C --for 10min",
          "pair O1 1084 --layer 1mm --section 5mm",
          "steels 1084");

  /** Lays the classes that the commands load ready inside the runtime. */
  private void ready(Path runtime) throws IOException {
    String java = runtime.resolve(WINDOWS ? "bin/java.exe" : "bin/java").toString();
    Path one = out.resolve("one.lst");
    Path all = out.resolve("classes.lst");
    Set<String> lines = new LinkedHashSet<>();
    for (String tried : TRIED) {
      List<String> command =
          new ArrayList<>(
              List.of(java, "-XX:+UseSerialGC", "-XX:DumpLoadedClassList=" + one, "-m", MAIN));
      for (String word : tried.split(" ")) {
        command.add(word.startsWith("@") ? out.resolve(word.substring(1)).toString() : word);
      }
      run(List.of(0, 4), command.toArray(String[]::new));
      lines.addAll(Files.readAllLines(one));
    }
    page(java, one);
    lines.addAll(Files.readAllLines(one));
    Files.write(all, lines);
    run(
        List.of(0),
        java,
        "-XX:+UseSerialGC",
        "-Xshare:dump",
        "-XX:SharedClassListFile=" + all,
        "-m",
        MAIN);
    Files.delete(one);
    Files.delete(all);
    remove(out.resolve("tried"));
  }

  /** Opens the page once, from its link to the shelf. */
  private void page(String java, Path list) throws IOException {
    Process page =
        new ProcessBuilder(
                java,
                "-XX:+UseSerialGC",
                "-XX:DumpLoadedClassList=" + list,
                "-Dseamsoak.state=" + out.resolve("tried"),
                "-m",
                MAIN,
                "page",
                "--no-browser",
                "--folder",
                "alloy-data/billets")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      String link = page.inputReader(StandardCharsets.UTF_8).readLine().replaceFirst(".* ", "");
      HttpClient.newBuilder()
          .followRedirects(HttpClient.Redirect.ALWAYS)
          .cookieHandler(new CookieManager())
          .build()
          .send(HttpRequest.newBuilder(URI.create(link)).build(), BodyHandlers.ofString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException(e));
    } finally {
      page.destroy();
      waited(page);
    }
  }

  private Path folder(Path runtime) throws IOException {
    Path folder = out.resolve(NAME);
    if (LINUX) {
      Files.createDirectories(folder.resolve("lib"));
      Files.move(runtime, folder.resolve("lib/runtime"));
      start(folder.resolve("bin").resolve(NAME));
    } else {
      launcher(runtime);
    }
    for (String file : List.of("LICENSE", "src/main/resources/META-INF/NOTICE")) {
      Path from = Path.of(file);
      Files.copy(from, folder.resolve(from.getFileName()));
    }
    copy(Path.of("src/main/resources/META-INF/licenses"), folder.resolve("licenses"));
    copy(Path.of("alloy-data"), folder.resolve("alloy-data"));
    remove(out.resolve("module"));
    remove(runtime);
    return folder;
  }

  /**
   * What starts the runtime. On Linux a few lines of shell: what jpackage lays there asks the
   * package managers at each start whose it is, which takes longer than most answers.
   */
  private static void start(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(
        file,
        """
        #!/bin/sh
        self=$0
        if [ -h "$self" ]; then self=$(readlink -f "$self"); fi
        case $self in */*) ;; *) self=./$self ;; esac
        exec "${self%%/*}/../lib/runtime/bin/java" %s -m %s "$@"
        """
            .formatted(String.join(" ", options()), MAIN));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private void launcher(Path runtime) throws IOException {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--type",
                "app-image",
                "--name",
                NAME,
                "--app-version",
                version,
                "--module",
                MAIN,
                "--runtime-image",
                runtime.toString(),
                "--dest",
                out.toString()));
    for (String option : options()) {
      arguments.add("--java-options");
      arguments.add(option);
    }
    if (WINDOWS) {
      arguments.add("--win-console");
    }
    tool("jpackage", arguments.toArray(String[]::new));
  }

  /** The same that the demo command and the short name start Java with, and that it has a name. */
  private static List<String> options() throws IOException {
    return Stream.concat(
            Files.readAllLines(Path.of("src/main/resources/seamsoak/cli/java.options")).stream()
                .filter(line -> line.startsWith("-")),
            Stream.of("-Dseamsoak.name=" + NAME))
        .toList();
  }

  private Path packed(Path folder) throws IOException {
    String machine = System.getProperty("os.arch");
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT).split(" ")[0];
    Path packed =
        out.resolve(String.join("-", NAME, version, system, machine) + ".tar.gz");
    run(
        List.of(0),
        "tar",
        "-czf",
        packed.toString(),
        "-C",
        folder.getParent().toString(),
        folder.getFileName().toString());
    return packed;
  }

  /** The folder under /opt, the command on the path, and an entry in the menu for the page. */
  private Path debian(Path folder) throws IOException {
    Path root = out.resolve("deb");
    copy(folder, root.resolve("opt/" + NAME));
    Path bin = root.resolve("usr/bin");
    Files.createDirectories(bin);
    Files.createSymbolicLink(bin.resolve(NAME), Path.of("/opt/" + NAME + "/bin/" + NAME));
    Path here = Path.of("src/build/image");
    copy(
        here.resolve(NAME + ".desktop"),
        root.resolve("usr/share/applications/" + NAME + ".desktop"));
    copy(
        here.resolve(NAME + ".svg"),
        root.resolve("usr/share/icons/hicolor/scalable/apps/" + NAME + ".svg"));
    copy(folder.resolve("NOTICE"), root.resolve("usr/share/doc/" + NAME + "/copyright"));
    String machine = output("dpkg", "--print-architecture").strip();
    Path control = root.resolve("DEBIAN/control");
    Files.createDirectories(control.getParent());
    Files.writeString(
        control,
        Files.readString(here.resolve("control"))
            .replace("@version@", version)
            .replace("@machine@", machine)
            .replace("@size@", Long.toString(kilobytes(root)))
            .replace("@maintainer@", maintainer())
            .replace("@depends@", depends(folder)));
    Path deb = out.resolve(NAME + "_" + version + "_" + machine + ".deb");
    run(
        List.of(0),
        "dpkg-deb",
        "--root-owner-group",
        "-Zgzip", // the usual packing takes a minute for a tenth less
        "--build",
        root.toString(),
        deb.toString());
    remove(root);
    return deb;
  }

  /** Whoever makes the package: as Debian's tools ask for it, or else who wrote last. */
  private static String maintainer() throws IOException {
    String name = System.getenv("DEBFULLNAME");
    String mail = System.getenv("DEBEMAIL");
    if (name != null && mail != null) {
      return name + " <" + mail + ">";
    }
    String last = on("git") ? output("git", "log", "-1", "--format=%an <%ae>").strip() : "";
    if (last.isEmpty()) {
      throw new Refused(
          "The .deb needs who makes it: set DEBFULLNAME and DEBEMAIL, or build in a git checkout.");
    }
    return last;
  }

  /** The packages that hold the libraries which the folder loads and does not bring. */
  private String depends(Path folder) throws IOException {
    List<String> packages = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Image::binary).sorted().toList()) {
        List<String> needed =
            output("objdump", "-p", file.toString())
                .lines()
                .map(String::strip)
                .filter(line -> line.startsWith("NEEDED"))
                .map(line -> line.replaceFirst("NEEDED +", ""))
                .toList();
        for (String line : output("ldd", file.toString()).lines().toList()) {
          String[] parts = line.strip().split(" => ");
          if (parts.length == 2
              && needed.contains(parts[0])
              && parts[1].startsWith("/")
              && !parts[1].startsWith(folder + "/")) {
            packageOf(Path.of(parts[1].split(" ")[0])).ifPresent(packages::add);
          }
        }
      }
    }
    return String.join(
        ", ",
        packages.stream()
            .distinct()
            .sorted()
            .map(p -> p.equals("libc6") ? "libc6 (>= 2.34)" : p)
            .toList());
  }

  private static boolean binary(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".so") || file.getParent().getFileName().toString().equals("bin");
  }

  private Optional<String> packageOf(Path library) throws IOException {
    for (Path each : List.of(library, library.toRealPath(), Path.of("/usr" + library))) {
      String said = output("dpkg-query", "-S", each.toString());
      if (said.contains(": ")) {
        return Optional.of(said.lines().findFirst().orElseThrow().split("[:,]")[0]);
      }
    }
    return Optional.empty();
  }

  private static long kilobytes(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile).mapToLong(p -> p.toFile().length()).sum() / 1024;
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Path there = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(there);
        } else {
          Files.createDirectories(there.toAbsolutePath().getParent());
          Files.copy(
              each,
              from.equals(each) ? to : there,
              StandardCopyOption.COPY_ATTRIBUTES,
              java.nio.file.LinkOption.NOFOLLOW_LINKS);
        }
      }
    }
  }

  private static void remove(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  private static String sha256(Path file) throws IOException {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void tool(String name, String... arguments) {
    StringWriter said = new StringWriter();
    PrintWriter to = new PrintWriter(said);
    int code = ToolProvider.findFirst(name).orElseThrow().run(to, to, arguments);
    if (code != 0) {
      throw new Refused(name + " failed: " + said.toString().strip());
    }
  }

  private static void run(List<Integer> allowed, String... command) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.PIPE)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = waited(process);
    if (!allowed.contains(code)) {
      throw new Refused(String.join(" ", command) + " ended with " + code + ": " + said.strip());
    }
  }

  private static String output(String... command) throws IOException {
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    waited(process);
    return said;
  }

  private static int waited(Process process) {
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException(e));
    }
  }
}
