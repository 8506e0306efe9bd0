package seamsoak.heatlog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A real heat as a billet file keeps it among its curves. */
public final class CurveEntry {
  private static final int MINUTE_DIGITS = 4;
  private static final int CELSIUS_DIGITS = 1;

  private CurveEntry() {}

  /** The name that the curve would have: that of its log, without an ending. */
  public static String name(RealHeat real) {
    return file(real).replaceAll("\\.[^.]*$", "");
  }

  private static String file(RealHeat real) {
    return Path.of(real.log().file()).getFileName().toString();
  }

  /** By the keys of the file. */
  public static Map<String, Object> of(RealHeat real) {
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
    curve.put("file", file(real));
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
