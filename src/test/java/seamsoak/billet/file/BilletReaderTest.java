package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Assumed;
import seamsoak.billet.Bath;
import seamsoak.billet.Billet;
import seamsoak.billet.Blade;
import seamsoak.billet.Can;
import seamsoak.billet.Coating;
import seamsoak.billet.Cooling;
import seamsoak.billet.Default;
import seamsoak.billet.Equipment;
import seamsoak.billet.Exposure;
import seamsoak.billet.Face;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Kiln;
import seamsoak.billet.Mark;
import seamsoak.billet.OldWord;
import seamsoak.billet.Seen;
import seamsoak.billet.SoakWish;
import seamsoak.billet.Stack;
import seamsoak.billet.Step;
import seamsoak.billet.Turn;
import seamsoak.data.Place;
import seamsoak.support.KnownSteels;
import seamsoak.unit.Angle;
import seamsoak.unit.Hardness;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;
import seamsoak.words.DefaultWords;

class BilletReaderTest {
  private static final Path NINE_PATCH = Path.of("src/test/resources/billets/nine-patch.json");

  @TempDir Path folder;

  @Test
  void theExampleIsReadInFull() {
    Billet billet = KnownSteels.read(NINE_PATCH);
    String file = NINE_PATCH.toString();
    assertEquals("Nine-patch chef's billet", billet.name());
    assertEquals(
        new Stack(
            13,
            List.of(KnownSteels.steel("80CrV2", 0.8), KnownSteels.steel("75Ni8", 0.75)),
            List.of(mm(3), mm(2)),
            mm(40),
            mm(150),
            UnitSystem.METRIC,
            Optional.empty(),
            new Place(file, 4, 12)),
        billet.stack());
    assertEquals(
        List.of(
            "weld",
            "draw",
            "grind",
            "restack",
            "weld",
            "draw",
            "grind",
            "tile",
            "weld",
            "press",
            "unjacket",
            "roll",
            "soak",
            "normalize",
            "cool"),
        billet.steps().stream().map(Step::name).toList());
    List<Step> expected =
        List.of(
            new Step.Weld(
                mark(1),
                heats(1200, 5, 3),
                Optional.of(Exposure.COVERED),
                unstated(),
                Optional.empty()),
            new Step.Draw(mark(2), mm(24), mm(24), heats(1150, 3, 6), unstated()),
            new Step.Grind(mark(3), mm(0.4)),
            new Step.Restack(mark(4), 3, 3, Optional.of(Turn.ALTERNATE), Optional.of(mm(2))),
            new Step.Weld(
                mark(5), heats(1200, 5, 3), Optional.empty(), unstated(), Optional.empty()),
            new Step.Draw(mark(6), mm(25), mm(35), heats(1150, 4, 6), unstated()),
            new Step.Grind(mark(7), mm(0.3)),
            new Step.Tile(
                mark(8),
                Angle.ofDegrees(45),
                mm(15),
                Optional.of(mm(0.3)),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.of(
                    new Jacket(
                        KnownSteels.steel("1008", 0.08), mm(1.2), Optional.of(Coating.NONE)))),
            new Step.Weld(
                mark(9), heats(1200, 5, 3), Optional.empty(), unstated(), Optional.empty()),
            new Step.Press(
                new Mark(
                    10,
                    new Place(file, 15, 5),
                    List.of(
                        seen(
                            Seen.Seams.RESTACK,
                            OptionalInt.empty(),
                            Seen.Look.NONE,
                            Optional.empty())),
                    Optional.empty(),
                    Optional.empty()),
                mm(9),
                Optional.empty(),
                heats(1150, 3, 3),
                unstated()),
            new Step.Unjacket(mark(11), Optional.of(mm(0.3))),
            new Step.Roll(mark(12), mm(5), heats(1100, 3, 2), unstated()),
            new Step.Treat(
                Step.Kind.SOAK, mark(13), heats(1050, 10, 1), Optional.of(Exposure.COVERED)),
            new Step.Treat(
                Step.Kind.NORMALIZE,
                mark(14),
                List.of(
                    new Heat(
                        Temperature.ofCelsius(860),
                        TimeSpan.ofMinutes(10),
                        1,
                        Optional.empty(),
                        Optional.of(Cooling.AIR),
                        List.of())),
                unstated()),
            new Step.Cool(mark(15), Cooling.AIR));
    assertEquals(expected, billet.steps());
    assertEquals(
        new SoakWish(
            Optional.of(TimeSpan.ofMinutes(60)),
            Optional.of(Exposure.COVERED),
            Optional.of(Temperature.ofCelsius(1150))),
        billet.soak());
    assertEquals(Optional.empty(), billet.shown());
  }

  @Test
  void everyOptionalEntryIsRead() throws IOException {
    Billet billet =
        read(
            """
            {
              "stack": { "layers": 4, "steels": ["C0.84"], "thickness": "1/8 in", "width": "1-1/2 in",
                         "length": "6\\"", "skin": "0.010 in" },
              "steps": [
                { "do": "weld", "outside": "sealed", "faces": "open", "note": "tight can",
                  "heats": [{ "at": "2150 F", "for": "1h20", "rise": "40 min", "cool": "furnace" },
                            { "at": "2100 F", "for": "90 s", "times": 2 }],
                  "seen": { "seams": "layers", "line": "faint", "width": "0.2 mm" } },
                { "do": "restack", "across": 2, "high": 1 },
                { "do": "weld", "heats": [{ "at": "2150 F", "for": "4 min" }],
                  "seen": { "seams": "restack 2", "line": "clear" } },
                { "do": "tile", "angle": "30°", "slice": "10 mm", "kerf": "0 mm", "count": 8,
                  "jacket": { "steel": "1008", "thickness": "0.040 in" } },
                { "do": "press", "thickness": "9 mm", "width": "30 mm", "heats": [{ "at": "2100 F", "for": "3 min" }] },
                { "do": "unjacket" }
              ],
              "shown": "end", "visible": { "dip": "0.06 %", "width": "0.05 mm" }, "covered": "30 %"
            }
            """);
    assertEquals("billet", billet.name());
    assertEquals(4 * 3.175, billet.stack().thickness().millimetres(), 1e-12);
    assertEquals(Length.parse("0.010 in"), billet.stack().skinTaken());
    assertEquals(Optional.of(Face.END), billet.shown());
    assertEquals(new Percent(30), billet.coveredTaken());
    assertEquals(new Percent(0.06), billet.visible().dip().orElseThrow());
    assertEquals(Optional.of(mm(0.05)), billet.visible().width());
    Step.Weld weld = assertInstanceOf(Step.Weld.class, billet.steps().get(0));
    assertEquals(Exposure.OPEN, weld.facesTaken());
    assertEquals(Exposure.SEALED, weld.outsideTaken());
    assertEquals(Optional.of("tight can"), weld.mark().note());
    assertEquals(TimeSpan.ofMinutes(40), weld.heats().get(0).riseTaken());
    assertEquals(Optional.of(Cooling.FURNACE), weld.heats().get(0).cool());
    assertEquals(TimeSpan.ofMinutes(80), weld.heats().get(0).hold());
    assertEquals(2, weld.heats().get(1).times());
    assertEquals(
        List.of(
            seen(Seen.Seams.LAYERS, OptionalInt.empty(), Seen.Look.FAINT, Optional.of(mm(0.2)))),
        weld.mark().seen());
    assertEquals(OptionalInt.of(2), billet.steps().get(2).mark().seen().get(0).where().step());
    Step.Tile tile = assertInstanceOf(Step.Tile.class, billet.steps().get(3));
    assertEquals(OptionalInt.of(8), tile.count());
    assertEquals(new Length(0), tile.kerfTaken());
    assertEquals(Coating.UNKNOWN, tile.jacket().orElseThrow().coatingTaken());
    Step.Press press = assertInstanceOf(Step.Press.class, billet.steps().get(4));
    assertEquals(Optional.of(mm(30)), press.width());
  }

  @Test
  void everyDefaultTakenIsOwnedUpTo() throws IOException {
    Billet billet =
        read(
            """
            { "stack": { "layers": 2, "steels": ["1084", "75Ni8"], "thickness": "3 mm", "width": "40 mm", "length": "150 mm" },
              "steps": [
                { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] },
                { "do": "restack", "across": 2, "high": 1 },
                { "do": "tile", "angle": "45 deg", "slice": "15 mm", "jacket": { "steel": "1008", "thickness": "1 mm" } },
                { "do": "unjacket" } ] }
            """);
    assertEquals(
        List.of(
            "stack: no skin on the stock (default)",
            "step 1 weld: faces to be joined covered (default, judgement)",
            "step 1 weld: outer faces open (default, judgement)",
            "step 1 weld: rise 5 min (default, judgement)",
            "step 2 restack: no piece turned (default)",
            "step 2 restack: kerf 0.079 in (2 mm) (default, judgement)",
            "step 3 tile: nothing ground off before closing (default)",
            "step 3 tile: kerf 0.079 in (2 mm) (default, judgement)",
            "step 3 tile: as many slices as the bar gives (default)",
            "step 3 tile: coating of the jacket unknown (default)",
            "step 4 unjacket: only the jacket ground off (default)",
            "soak: at most 60 min (default, judgement)",
            "soak: outer faces covered (default, judgement)",
            "covered faces: reached by the fire 50 % as much as open ones (default, judgement)",
            "blade: as thick as the billet leaves it (default)",
            "blade: as wide as the billet (default)",
            "blade: 60 HRC wanted (default, judgement)",
            "blade: the steel with the most carbon cuts (default)",
            "equipment: a gas forge (default)",
            "equipment: a kiln that goes to 2190 F (1200 C) (default, judgement)",
            "equipment: its fastest climb 1080 F (600 C) per hour (default, judgement)",
            "equipment: no molten salt to heat in (default)",
            "equipment: nothing to cool below room temperature (default)",
            "equipment: a closed shop (default)",
            "equipment: scale ground off, no acid (default)",
            "quenchants: fast quench oil (default)"),
        defaults(billet, UnitSystem.BOTH));
    assertTrue(
        defaults(billet, UnitSystem.METRIC)
            .contains("step 3 tile: kerf 2 mm (default, judgement)"));
  }

  @Test
  void whatIsStatedIsNoDefault() {
    assertEquals(
        List.of(),
        Assumed.of(KnownSteels.read(NINE_PATCH)).stream()
            .filter(
                d ->
                    d.part() == Default.Part.SOAK
                        || d.step().filter(s -> s.mark().number() == 15).isPresent()
                        || d.what() == Default.What.NO_TURN)
            .toList());
  }

  /** Steels have numbers for names, so a bare number is a steel only where there is one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "us | `1/8` | 3.175",
        "us | `16 ga` | 1.519",
        "us | 0.125 | 3.175",
        "metric | `1.5` | 1.5",
        "metric | `1/16 in` | 1.5875",
        "metric | `1084` | steel",
        "us | `75Ni8` | steel"
      })
  void anEdgeIsAThicknessUnlessThereIsSuchASteel(String units, String edge, String is)
      throws IOException {
    Billet billet =
        read(
            """
            { "units": "%s", "stack": { "layers": 3, "steels": ["1084", "75Ni8"],
                "thickness": "3 mm", "width": "30 mm", "length": "100 mm" },
              "steps": [ { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] } ],
              "blade": { "edge": %s } }
            """
                .formatted(units, edge.replace('`', '"')));
    Blade blade = billet.blade();
    if (is.equals("steel")) {
      assertEquals(edge.replace("`", ""), blade.cuts().orElseThrow().id());
      assertEquals(Optional.empty(), blade.edge());
      assertEquals(
          List.of(OldWord.Kind.EDGE), billet.oldWords().stream().map(OldWord::kind).toList());
    } else {
      assertEquals(Double.parseDouble(is), blade.edge().orElseThrow().millimetres(), 5e-4);
      assertEquals(List.of(), billet.oldWords());
    }
  }

  @Test
  void bladeShopAndCanAreRead() throws IOException {
    Billet billet =
        read(
            """
            { "stack": { "layers": 3, "steels": ["1084", "75Ni8"], "thickness": "3 mm",
                "width": "30 mm", "length": "100 mm" },
              "steps": [ { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }],
                "can": { "inside": "baked dry", "vent": "hole" } } ],
              "blade": { "thickness": "4 mm", "width": "40 mm", "hardness": "61 HRC",
                "edge": "1084" },
              "equipment": { "forge": "coal", "kiln": { "highest": "2000 F", "ramp": "9 F/min" },
                "salt": "neutral", "cold": "dry ice", "shop": "open", "descale": "acid" },
              "quenchants": [ { "kind": "oil-medium", "at": "122 F", "flash": "180 C" },
                { "kind": "water" } ] }
            """);
    assertEquals(
        new Blade(
            Optional.of(mm(4)),
            Optional.of(mm(40)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Hardness(61)),
            Optional.of(KnownSteels.steel("1084", 0.84))),
        billet.blade());
    Equipment has = billet.equipment();
    assertEquals(Equipment.Forge.COAL, has.forgeTaken());
    assertEquals(1093.3, has.kilnTaken().highestTaken().celsius(), 0.05);
    assertEquals(300, has.kilnTaken().rampTaken().kelvinPerHour(), 1e-9);
    assertEquals(Equipment.Salt.NEUTRAL, has.saltTaken());
    assertEquals(Equipment.Cold.DRY_ICE, has.coldTaken());
    assertEquals(Equipment.Room.OPEN, has.shopTaken());
    assertEquals(Equipment.Descale.ACID, has.descaleTaken());
    assertEquals(
        List.of("oil-medium", "water"), billet.quenchantsTaken().stream().map(Bath::kind).toList());
    assertEquals(50, billet.quenchants().get(0).at().orElseThrow().celsius(), 1e-9);
    assertEquals(180, billet.quenchants().get(0).flash().orElseThrow().celsius(), 1e-9);
    assertEquals(
        Optional.of(new Can(Optional.of(Can.Inside.BAKED_DRY), Optional.of(Can.Vent.HOLE))),
        ((Step.Weld) billet.steps().get(0)).can());
    assertEquals(
        List.of(),
        defaults(billet, UnitSystem.METRIC).stream()
            .filter(s -> s.matches("(blade|equipment|quenchants|step 1 weld: nothing).*"))
            .toList());
  }

  @Test
  void aBareNumberIsInTheUnitsOfTheFile() throws IOException {
    String form =
        """
        { "units": "%s",
          "stack": { "layers": "3", "steels": ["1084", "75Ni8"], "thickness": [%s],
              "width": %s, "length": "%s" },
          "steps": [ { "do": "weld", "heats": [{ "at": %s, "for": "5", "times": " 2 " }] },
            { "do": "tile", "angle": 45, "slice": "15 mm" } ],
          "blade": { "hardness": "61" } }
        """;
    Billet us = read(String.format(form, "us", "\"1/8\", 0.06", "\"1 1/4 \"", "6.5", "2250"));
    assertEquals(Optional.of(UnitSystem.US), us.units());
    assertEquals(UnitSystem.US, us.stack().units());
    assertEquals(0.125, us.stack().thicknesses().get(0).inches(), 1e-12);
    assertEquals(0.06, us.stack().thicknesses().get(1).inches(), 1e-12);
    assertEquals(1.25, us.stack().width().inches(), 1e-12);
    assertEquals(6.5, us.stack().length().inches(), 1e-12);
    assertEquals(2250, us.steps().get(0).heats().get(0).at().fahrenheit(), 1e-9);
    Billet metric = read(String.format(form, "metric", "\"3\", 1.5", "32", "160", "\"1230\""));
    assertEquals(UnitSystem.METRIC, metric.stack().units());
    assertEquals(List.of(mm(3), mm(1.5)), metric.stack().thicknesses());
    assertEquals(mm(32), metric.stack().width());
    assertEquals(1230, metric.steps().get(0).heats().get(0).at().celsius(), 1e-9);
    for (Billet billet : List.of(us, metric)) {
      assertEquals(3, billet.stack().layers());
      assertEquals(TimeSpan.ofMinutes(5), billet.steps().get(0).heats().get(0).hold());
      assertEquals(2, billet.steps().get(0).heats().get(0).times());
      assertEquals(Angle.ofDegrees(45), ((Step.Tile) billet.steps().get(1)).angle());
      assertEquals(mm(15), ((Step.Tile) billet.steps().get(1)).slice());
      assertEquals(Optional.of(new Hardness(61)), billet.blade().hardness());
    }
  }

  @Test
  void noKilnIsNoDefaultKiln() throws IOException {
    Billet billet =
        read(
            """
            { "stack": { "layers": 1, "steels": ["1084"], "thickness": "3 mm",
                "width": "30 mm", "length": "100 mm" },
              "steps": [ { "do": "cool", "in": "air" } ], "equipment": { "kiln": "none" } }
            """);
    assertEquals(Kiln.NONE, billet.equipment().kilnTaken());
    assertTrue(defaults(billet, UnitSystem.METRIC).stream().noneMatch(s -> s.contains("kiln")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "restack 1 | RESTACK | 1",
        "restack joints (step 1) | RESTACK | 1",
        "tiles 3 | TILE | 3",
        "tile joints (step 3) | TILE | 3"
      })
  void seamsAreTakenByTheNamesThatAnswersGiveThem(String name, Seen.Seams seams, int step)
      throws IOException {
    Billet billet =
        read(
            String.format(
                """
                { "stack": { "layers": 1, "steels": ["1084"], "thickness": "30 mm",
                    "width": "30 mm", "length": "200 mm" },
                  "steps": [ { "do": "restack", "across": 2, "high": 1 },
                    { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] },
                    { "do": "tile", "angle": "45 deg", "slice": "15 mm" },
                    { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }],
                      "seen": { "seams": "%s", "line": "none" } } ] }
                """,
                name));
    assertEquals(
        List.of(seen(seams, OptionalInt.of(step), Seen.Look.NONE, Optional.empty())),
        billet.steps().get(3).mark().seen());
  }

  private static List<String> defaults(Billet billet, UnitSystem units) {
    return Assumed.of(billet).stream().map(new DefaultWords(units)::says).toList();
  }

  private Billet read(String text) throws IOException {
    Path file = folder.resolve("billet.json");
    Files.writeString(file, text);
    return KnownSteels.read(file);
  }

  /** The steps of the example stand one to a line from line 6 on. */
  private static Mark mark(int number) {
    return new Mark(
        number,
        new Place(NINE_PATCH.toString(), number + 5, 5),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static List<Heat> heats(double celsius, double minutes, int times) {
    return List.of(
        new Heat(
            Temperature.ofCelsius(celsius),
            TimeSpan.ofMinutes(minutes),
            times,
            Optional.empty(),
            Optional.empty(),
            List.of()));
  }

  /** A look at lines of which nothing else is said. */
  private static Seen seen(
      Seen.Seams seams, OptionalInt step, Seen.Look line, Optional<Length> width) {
    return new Seen(
        new Seen.Where(seams, step, Optional.empty()),
        Seen.Part.LINE,
        Optional.empty(),
        line,
        width,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Optional<Exposure> unstated() {
    return Optional.empty();
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
