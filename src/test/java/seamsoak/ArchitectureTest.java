package seamsoak;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The direction of the packages: each may use only what stands before it. */
class ArchitectureTest {
  private static final List<String> ORDER =
      List.of(
          "unit",
          "data",
          "source",
          "numeric",
          "heat",
          "steel",
          "property.correlation",
          "property.critical",
          "property.phase",
          "property.forging",
          "property.hardening",
          "property.section",
          "property.etch",
          "property",
          "carbon",
          "billet",
          "billet.file",
          "state",
          "face",
          "safety",
          "pairing",
          "single",
          "heatlog",
          "soak",
          "schedule.demand",
          "schedule",
          "plan",
          "kiln",
          "trace",
          "words",
          "words.pair",
          "words.face",
          "words.told",
          "words.fire",
          "words.kiln",
          "words.beside",
          "chart.figure",
          "chart",
          "report",
          "page.form",
          "page.fire",
          "page",
          "cli");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("seamsoak");

  static List<Integer> packages() {
    return IntStream.range(0, ORDER.size() - 1).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void noPackageUsesALaterOne(int index) {
    String[] later =
        ORDER.subList(index + 1, ORDER.size()).stream()
            .map(p -> "seamsoak." + p)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("seamsoak." + ORDER.get(index))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(later)
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void everyPackageHasItsPlace() {
    assertEquals(
        Set.copyOf(ORDER),
        CLASSES.stream()
            .map(c -> c.getPackageName().replaceFirst("seamsoak\\.?", ""))
            .filter(p -> !p.startsWith("report.templates"))
            .collect(Collectors.toSet()));
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("seamsoak.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlyDataSeesCsvAndJson() {
    only("data", "com.fasterxml.jackson..", "org.apache.commons.csv..");
  }

  @Test
  void onlyChartDraws() {
    only("chart", "org.jfree..", "org.apache.batik..", "java.awt..");
  }

  @Test
  void figuresDrawNothing() {
    noClasses()
        .that()
        .resideInAPackage("seamsoak.chart.figure")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.jfree..", "org.apache.batik..", "java.awt..")
        .check(CLASSES);
  }

  @Test
  void onlyReportAndPageSeeTemplates() {
    only(List.of("report", "page"), "gg.jte..");
  }

  @Test
  void onlyThePageSeesTheWebServer() {
    only("page", "com.sun.net..");
  }

  @Test
  void onlyTheCommandLineSeesPicocli() {
    only("cli", "picocli..");
  }

  @Test
  void onlyTheCommandLinePrints() {
    noClasses()
        .that()
        .resideOutsideOfPackage("seamsoak.cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(CLASSES);
  }

  /** A second opinion that called the engine would be none. */
  @Test
  void secondOpinionInThePlaneCallsNoEngine() {
    JavaClasses plane = new ClassFileImporter().importPackages("seamsoak.plane");
    noClasses()
        .that()
        .resideInAPackage("seamsoak.plane..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "seamsoak.numeric..",
            "seamsoak.heat..",
            "seamsoak.carbon..",
            "seamsoak.billet..",
            "seamsoak.state..",
            "seamsoak.soak..")
        .check(plane);
  }

  private static void only(String inside, String... packages) {
    only(List.of(inside), packages);
  }

  private static void only(List<String> inside, String... packages) {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            inside.stream().map(p -> "seamsoak." + p + "..").toArray(String[]::new))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages)
        .check(CLASSES);
  }
}
