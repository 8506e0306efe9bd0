package seamsoak.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine.Option;
import seamsoak.billet.Step;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.billet.file.WorkBook;
import seamsoak.data.UserFile;
import seamsoak.heatlog.LogCurve;
import seamsoak.heatlog.RealHeat;

/** Where in a billet file a real heat is written. */
final class IntoBillet {
  private static final int MINUTE_DIGITS = 4;
  private static final int CELSIUS_DIGITS = 1;

  @Option(
      names = "--into",
      paramLabel = "BILLET",
      description = "Billet file to write the heat into, as the one that was done.")
  private Path into;

  @Option(names = "--step", paramLabel = "N", description = "Which step of that file it was.")
  private Integer step;

  @Option(
      names = "--heat",
      paramLabel = "M",
      description = "Which heat of the step, from 1; needed where it has several.")
  private Integer heat;

  boolean asked() {
    return into != null;
  }

  /** What is wrong with the options by themselves. */
  void check(Function<String, RuntimeException> wrong) {
    if (into == null && (step != null || heat != null)) {
      throw wrong.apply("--step and --heat go with --into BILLET");
    }
    if (into != null && step == null) {
      throw wrong.apply("--into needs --step N");
    }
  }

  /** Writes it; the file's name. */
  String write(
      RealHeat real, Names names, boolean replace, Function<String, RuntimeException> wrong) {
    UserFile read = UserFile.read(into.toString(), into);
    List<Step> steps = BilletReader.read(into, read.text(), names).steps();
    if (step < 1 || step > steps.size()) {
      throw wrong.apply("--step: the file has " + steps.size() + " steps, from 1 on");
    }
    Step meant = steps.get(step - 1);
    if (meant.times() == 0) {
      throw wrong.apply("--step: " + meant.title() + " has no heats");
    }
    if (heat == null && meant.times() > 1) {
      throw wrong.apply("--heat M: " + meant.title() + " has " + meant.times() + " heats");
    }
    int number = heat == null ? 1 : heat;
    if (number < 1 || number > meant.times()) {
      throw wrong.apply("--heat: " + meant.title() + " has " + meant.times() + " heats, from 1 on");
    }
    WorkBook book = WorkBook.of(into.toString(), read.text());
    String title = meant.title() + ", heat " + number;
    if (book.hasHeat(meant, number) && !replace) {
      throw wrong.apply(title + " is recorded already; say --replace to write over it");
    }
    Path name = Path.of(real.log().file()).getFileName();
    WorkBook written =
        book.logged(meant, number, name.toString().replaceAll("\\.[^.]*$", ""), curve(real));
    if (written.text().equals(read.text())) {
      throw wrong.apply(title + " is recorded just so already; nothing was written");
    }
    BilletReader.read(into, written.text(), names);
    read.write(written.text(), title);
    return into.toString();
  }

  private static Map<String, Object> curve(RealHeat real) {
    List<Object> minutes = new ArrayList<>();
    List<Object> celsius = new ArrayList<>();
    BigDecimal last = null;
    for (LogCurve.Point p : real.curve().points()) {
      BigDecimal minute = rounded(p.minute(), MINUTE_DIGITS);
      if (last == null || minute.compareTo(last) > 0) {
        minutes.add(minute);
        celsius.add(rounded(p.celsius(), CELSIUS_DIGITS));
        last = minute;
      }
    }
    Map<String, Object> curve = new LinkedHashMap<>();
    curve.put("file", Path.of(real.log().file()).getFileName().toString());
    curve.put("sha256", real.log().sha256());
    curve.put("column", real.log().column());
    real.query().tip().ifPresent(t -> curve.put("tip", t.name().toLowerCase(Locale.ROOT)));
    curve.put("couple", real.couple().written());
    real.query().loadedMinute().ifPresent(m -> curve.put("loaded", minutes(m)));
    real.query().removedMinute().ifPresent(m -> curve.put("out", minutes(m)));
    curve.put("minutes", minutes);
    curve.put("celsius", celsius);
    if (!real.curve().gaps().isEmpty()) {
      curve.put(
          "gaps",
          real.curve().gaps().stream()
              .map(
                  g ->
                      List.of(
                          rounded(g.fromMinute(), MINUTE_DIGITS),
                          rounded(g.toMinute(), MINUTE_DIGITS)))
              .toList());
    }
    return curve;
  }

  private static String minutes(double minutes) {
    return rounded(minutes, MINUTE_DIGITS).toPlainString() + " min";
  }

  private static BigDecimal rounded(double value, int digits) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
