package seamsoak.pairing;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.source.SourceTable;

/** The limits of all checks, as {@code pair-limits.csv} has them. */
public final class PairLimits {
  private static final String FILE = "pair-limits.csv";

  private final String file;
  private final Map<String, PairLimit> limits;

  private PairLimits(String file, Map<String, PairLimit> limits) {
    this.file = file;
    this.limits = limits;
  }

  public static PairLimits load(DataFolder data) {
    CsvTable table = data.csv(FILE);
    Map<String, PairLimit> limits = new LinkedHashMap<>();
    for (CsvTable.Row row : table.rows()) {
      PairLimit limit = read(row, limits.size());
      if (limits.put(limit.name(), limit) != null) {
        throw new Fault(
            row.place("name"), "'" + limit.name() + "' stands twice", "give each check one line");
      }
    }
    return new PairLimits(table.file(), limits);
  }

  private static PairLimit read(CsvTable.Row row, int order) {
    OptionalDouble watch = row.number("watch");
    OptionalDouble clash = row.number("clash");
    String worse = row.text("worse");
    if (!worse.equals("above") && !worse.equals("below")) {
      throw new Fault(row.place("worse"), "'" + worse + "'", "write 'above' or 'below'");
    }
    boolean above = worse.equals("above");
    if (watch.isPresent() && clash.isPresent()) {
      double step = clash.getAsDouble() - watch.getAsDouble();
      if (above ? step < 0 : step > 0) {
        throw new Fault(
            row.place("clash"),
            "clash " + row.text("clash") + " comes before watch " + row.text("watch"),
            "it is the farther of the two");
      }
    }
    String letter = row.text("letter");
    if (letter.length() != 1 || !Character.isLetter(letter.charAt(0))) {
      throw new Fault(row.place("letter"), "'" + letter + "' is no letter", "write one");
    }
    return new PairLimit(
        row.text("name"),
        row.text("title"),
        Character.toUpperCase(letter.charAt(0)),
        above,
        watch,
        clash,
        row.text("unit"),
        SourceTable.standing(row),
        row.text("source"),
        order);
  }

  /** All of them in the order of the table. */
  public Collection<PairLimit> all() {
    return limits.values();
  }

  /** The limit of a check; {@link Fault} when the table lacks it. */
  public PairLimit of(CheckName check) {
    PairLimit limit = limits.get(check.key());
    if (limit == null) {
      throw new Fault(
          Place.of(file), "no line '" + check.key() + "'", "the check needs its limits");
    }
    return limit;
  }
}
