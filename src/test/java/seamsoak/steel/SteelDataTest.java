package seamsoak.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;

/** What must hold of the figures that the program brings along. */
class SteelDataTest {
  private static final Set<String> WORDS =
      Set.of(
          "id",
          "designation",
          "aliases",
          "standards",
          "uns",
          "w_nr",
          "near",
          "category",
          "role",
          "hardenability",
          "composition_standing",
          "heat_treatment_standing",
          "critical_standing",
          "notes");

  private static CsvTable steels;
  private static CsvTable standings;
  private static SteelTable table;

  @BeforeAll
  static void load() {
    DataFolder data = DataFolder.packed();
    steels = data.csv("steels.csv");
    standings = data.csv("steels-standing.csv");
    table = SteelTable.load(data);
  }

  @Test
  void holds63GradesAndFourStocksOfUnknownMake() {
    assertEquals(63, steels.rows().size());
    assertEquals(63 + 4, table.steels().size());
  }

  /** A slipped digit changes the sum of its column, a lost figure the count. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
        C_min_pct, 52, 34.30
        C_typ_pct, 63, 38.595
        C_max_pct, 62, 42.240
        Mn_min_pct, 51, 25.65
        Mn_typ_pct, 58, 38.955
        Mn_max_pct, 63, 53.63
        Si_min_pct, 46, 11.075
        Si_typ_pct, 56, 18.372
        Si_max_pct, 63, 32.22
        Cr_min_pct, 31, 118.85
        Cr_typ_pct, 31, 129.825
        Cr_max_pct, 40, 143.30
        Ni_min_pct, 11, 228.85
        Ni_typ_pct, 11, 234.675
        Ni_max_pct, 19, 43.45
        Mo_min_pct, 11, 5.95
        Mo_typ_pct, 12, 8.15
        Mo_max_pct, 25, 13.60
        V_min_pct, 10, 1.47
        V_typ_pct, 10, 2.325
        V_max_pct, 14, 4.67
        W_min_pct, 3, 1.8
        W_typ_pct, 3, 2.20
        W_max_pct, 5, 2.90
        P_max_pct, 61, 2.265
        S_max_pct, 63, 2.670
        Cu_max_pct, 9, 2.25
        forge_start_C, 63, 71556
        forge_stop_C, 63, 53987
        normalize_min_C, 50, 42959
        normalize_max_C, 50, 44407
        anneal_min_C, 59, 45147
        anneal_max_C, 59, 47647
        anneal_rate_C_per_h, 8, 169
        harden_min_C, 51, 42234
        harden_max_C, 51, 43877
        temper_min_C, 51, 9643
        temper_max_C, 51, 20295
        Ac1_C, 54, 39944
        Ac3_or_Accm_C, 44, 35087
        Ms_C, 47, 11673
        CTE_um_per_m_K, 20, 241.8
        """)
  void figuresOfAColumnAddUp(String column, int count, BigDecimal sum) {
    List<BigDecimal> figures =
        steels.rows().stream()
            .map(row -> row.text(column))
            .filter(cell -> !cell.isEmpty())
            .map(BigDecimal::new)
            .toList();
    assertEquals(count, figures.size());
    assertEquals(0, sum.compareTo(figures.stream().reduce(BigDecimal.ZERO, BigDecimal::add)));
  }

  @Test
  void everyFigureHasOneStandingAndEveryStandingItsFigure() {
    Map<String, CsvTable.Row> rows = new HashMap<>();
    steels.rows().forEach(row -> rows.put(row.text("id"), row));
    Set<String> covered = new HashSet<>();
    for (CsvTable.Row line : standings.rows()) {
      CsvTable.Row row = rows.get(line.text("id"));
      String cell = line.text("id") + " " + line.text("column");
      assertEquals(row.text(line.text("column")), line.text("value"), cell);
      assertFalse(WORDS.contains(line.text("column")), cell);
      assertTrue(covered.add(cell), cell);
    }
    Set<String> figures = new HashSet<>();
    for (CsvTable.Row row : steels.rows()) {
      for (String column : steels.columns()) {
        if (!WORDS.contains(column) && !row.text(column).isEmpty()) {
          figures.add(row.text("id") + " " + column);
        }
      }
    }
    assertEquals(new TreeSet<>(figures), new TreeSet<>(covered));
  }

  @Test
  void standingFitsItsSource() {
    SourceTable sources = SourceTable.load(DataFolder.packed());
    for (CsvTable.Row line : standings.rows()) {
      String where = line.place().toString();
      Standing standing = Standing.of(line.text("standing"));
      assertEquals(sources.find(line.text("source")).orElseThrow().standing(), standing, where);
      assertTrue(line.text("confidence").isEmpty() || standing == Standing.MEMORY, where);
    }
  }

  @Test
  void computedFiguresAreMidpointsOfTheirLimits() {
    int checked = 0;
    for (CsvTable.Row row : steels.rows()) {
      for (String column : steels.columns()) {
        Optional<Provenance> p = table.standing(row.text("id"), column);
        if (p.filter(q -> q.standing() == Standing.COMPUTED).isPresent()) {
          double min = row.required(column.replace("_typ_", "_min_"));
          double max = row.required(column.replace("_typ_", "_max_"));
          // The table gives three decimals.
          assertEquals((min + max) / 2, row.required(column), 0.0006, row.place() + " " + column);
          checked++;
        }
      }
    }
    assertEquals(171, checked);
  }

  @Test
  void summaryOfABlockFollowsFromItsFigures() {
    for (CsvTable.Row row : steels.rows()) {
      Map<String, Set<Standing>> found = new HashMap<>();
      String block = "composition_standing";
      for (String column : steels.columns()) {
        if (column.equals("forge_start_C")) {
          block = "heat_treatment_standing";
        } else if (column.equals("Ac1_C")) {
          block = "critical_standing";
        }
        Set<Standing> of = found.computeIfAbsent(block, b -> EnumSet.noneOf(Standing.class));
        table.standing(row.text("id"), column).ifPresent(p -> of.add(p.standing()));
      }
      found.forEach(
          (column, of) -> {
            of.remove(Standing.COMPUTED);
            String summary =
                of.size() > 1 ? "mixed" : of.stream().map(Standing::words).findAny().orElse("");
            assertEquals(summary, row.text(column), row.text("id") + " " + column);
          });
    }
  }

  @Test
  void everyStandardIsASource() {
    SourceTable sources = SourceTable.load(DataFolder.packed());
    for (Steel steel : table.steels()) {
      for (String key : steel.standards()) {
        assertTrue(sources.find(key).isPresent(), steel.id() + " " + key);
      }
    }
  }

  @Test
  void everyNameFindsItsOwnSteelAndNoNearGradeIsAName() {
    List<String> aliases = new ArrayList<>();
    for (Steel steel : table.steels()) {
      assertEquals(steel, table.find(steel.id()).orElseThrow());
      assertTrue(steel.isSame(table.find(steel.designation()).orElseThrow()));
      for (String alias : steel.aliases()) {
        assertTrue(steel.isSame(table.find(alias).orElseThrow()), alias);
        aliases.add(alias);
      }
    }
    assertEquals(aliases.size(), Set.copyOf(aliases).size());
  }

  /** Bounds of what forge shops and furnaces do; wide enough for nickel and stainless steel. */
  @Test
  void temperaturesArePlausible() {
    for (Steel s : table.steels()) {
      HeatTreatment h = s.heatTreatment();
      within(s, h.forgeStartC(), 950, 1400);
      within(s, h.forgeStopC(), 600, 1100);
      within(s, h.normalize(), 760, 1000);
      within(s, h.anneal(), 600, 1150);
      within(s, h.harden(), 750, 1100);
      within(s, h.temper(), 90, 700);
      within(s, h.annealRateCPerHour(), 5, 50);
      within(s, s.ac1C(), 670, 830);
      within(s, s.ac3OrAccmC(), 720, 920);
      within(s, s.msC(), 150, 460);
      within(s, s.cteMicroPerKelvin(), 9, 18);
      if (s.ac1C().isPresent() && h.harden().isPresent()) {
        assertTrue(h.harden().get().lowC() > s.ac1C().getAsDouble(), s.id());
      }
    }
  }

  private static void within(Steel s, OptionalDouble value, double low, double high) {
    value.ifPresent(v -> assertTrue(v >= low && v <= high, s.id() + " " + v));
  }

  private static void within(Steel s, Optional<TemperatureRange> range, double low, double high) {
    range.ifPresent(
        r -> {
          within(s, OptionalDouble.of(r.lowC()), low, high);
          within(s, OptionalDouble.of(r.highC()), low, high);
        });
  }
}
