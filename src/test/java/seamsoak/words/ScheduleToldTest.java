package seamsoak.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import seamsoak.safety.Danger;
import seamsoak.safety.Stop;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.schedule.ScheduleAdvice.Then;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.StepName;
import seamsoak.schedule.Structure;
import seamsoak.schedule.demand.Conflict;
import seamsoak.words.told.Statement;

/** Programs rely on the kinds: whoever renames a type must not rename them by the way. */
class ScheduleToldTest {
  @Test
  void kindsOfConflictsAreFixed() {
    assertEquals(
        Set.of(
            "beyond-formulas",
            "deep-beside-shallow",
            "disputed-sheets",
            "flat-for-plates",
            "hard-and-soft-in-air",
            "hardness-out-of-reach",
            "heat-outside-sheet",
            "jacket-on",
            "no-bath-will-do",
            "ferrite-left",
            "no-common-heat",
            "no-kiln",
            "nothing-hardens",
            "soft-edge",
            "soft-layer",
            "soft-middle",
            "soft-seam",
            "stainless-jacket",
            "temper-parts",
            "too-narrow",
            "too-thin",
            "unknown-made"),
        kinds(Conflict.class));
  }

  @Test
  void kindsOfDangersAreFixed() {
    assertEquals(
        Set.of(
            "coated-jacket",
            "sealed-can",
            "hot-salt",
            "hot-oil",
            "nitrate-heat",
            "melts",
            "no-weld"),
        kinds(Danger.class));
  }

  @Test
  void kindsOfRemarksAreFixed() {
    assertEquals(
        Set.of(
            "always",
            "line-stays",
            "line-clears",
            "outside-range",
            "beyond-kiln",
            "planned-anew",
            "carbon-by-then",
            "carbon-gathers",
            "soft-cladding"),
        kinds(Remark.class));
    assertEquals(
        List.of("normalizing-hides-lines", "holds-without-kiln", "color-tells-little"),
        Arrays.stream(Remark.Always.values()).map(Statement::kindOf).toList());
  }

  private static Set<String> kinds(Class<?> sealed) {
    return Arrays.stream(sealed.getPermittedSubclasses())
        .map(c -> Statement.kindOf(c))
        .collect(Collectors.toSet());
  }

  @Test
  void wordsAreMetricAndStandBesideTheirKind() {
    Map<String, Object> conflict =
        Statement.members(new Conflict.TooThin(List.of("1084"), 0.4e-3, 3e-3));
    assertEquals(
        List.of("kind", "about", "steels", "says", "todo"), List.copyOf(conflict.keySet()));
    assertEquals("too-thin", conflict.get("kind"));
    assertEquals(
        "the billet is too thin for the blade: 0.4 mm of what would stay soft has to come off each"
            + " flat, and with that off 3 mm is left",
        conflict.get("says"));
    Map<String, Object> told = new HashMap<>();
    Statement.put(told, "hardStops", List.of(new Stop("harden", new Danger.NitrateHeat(800))));
    assertEquals(List.of("nitrate-heat"), told.get("hardStopKinds"));
    assertEquals(
        List.of(
            "harden: Only nitrate salt is at hand to heat in, and 800 C is above the 650 C at which"
                + " it must never be: it may explode, so this step is refused; use a kiln, a forge"
                + " or neutral salt made for it."),
        told.get("hardStops"));
  }

  @Test
  void whatIsInARecordKeepsItsPlaceThere() {
    Map<String, Object> metal =
        Statement.members(
            new Metal("O1", Structure.HARD, Optional.of(8.4), Optional.of(64.0), Optional.of(3.0)));
    assertEquals("martensite, 8 % austenite", metal.get("structure"));
    assertEquals("hard", metal.get("structureKind"));
    assertEquals(Optional.of(8.4), metal.get("retainedPct"));
    Map<String, Object> line =
        Statement.members(
            new ProgramLine(
                new StepName(StepKind.HARDEN, 0),
                1,
                300,
                800,
                10,
                Then.QUENCH,
                Optional.of("brine")));
    assertEquals("quench in brine", line.get("then"));
    assertEquals("quench", line.get("thenKind"));
  }
}
