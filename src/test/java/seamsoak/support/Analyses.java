package seamsoak.support;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** Nominal analyses for tests, mild steel to pure nickel. */
public final class Analyses {
  public static final Correlations CORRELATIONS = Correlations.load(DataFolder.packed());

  private static final Map<String, Composition> NAMED = new LinkedHashMap<>();

  static {
    add("iron", "");
    add("commercial iron", "C0.01 Mn0.05 Si0.01");
    add("1008", "C0.06 Mn0.4 Si0.02");
    add("1018", "C0.18 Mn0.75 Si0.2");
    add("1045", "C0.45 Mn0.75 Si0.22");
    add("1075", "C0.75 Mn0.55 Si0.22");
    add("1084", "C0.84 Mn0.75 Si0.22");
    add("1095", "C0.95 Mn0.4 Si0.2");
    add("125Cr1", "C1.25 Mn0.325 Si0.25 Cr0.3");
    add("W2", "C1.0 Mn0.25 Si0.25 Cr0.12 V0.2");
    add("O1", "C0.92 Mn1.2 Si0.3 Cr0.5 W0.5 V0.2");
    add("O2", "C0.9 Mn1.6 Si0.2");
    add("105WCr6", "C1.05 Mn0.95 Si0.25 Cr1.0 W1.15");
    add("52100", "C1.0 Mn0.35 Si0.25 Cr1.45");
    add("5160", "C0.6 Mn0.88 Si0.22 Cr0.8");
    add("80CrV2", "C0.83 Mn0.45 Si0.3 Cr0.55 V0.2");
    add("9260", "C0.6 Mn0.88 Si2.0");
    add("S5", "C0.575 Mn0.8 Si2.0 Mo0.5");
    add("75Ni8", "C0.75 Mn0.4 Si0.25 Ni2.0");
    add("L6", "C0.72 Mn0.6 Si0.25 Cr0.8 Ni1.6 Mo0.2");
    add("A203E", "C0.15 Mn0.6 Si0.275 Ni3.5");
    add("A2", "C1.0 Mn0.85 Si0.3 Cr5.25 Mo1.1 V0.25");
    add("D2", "C1.5 Mn0.35 Si0.35 Cr12.0 Mo0.95 V0.8");
    add("410", "C0.12 Cr12.5");
    add("440C", "C1.075 Cr17.0 Mo0.5");
    add("304", "C0.05 Mn1.5 Cr19.0 Ni9.25");
    add("316", "C0.05 Mn1.5 Cr17.0 Ni12.0 Mo2.5");
    add("Ni200", "C0.08 Mn0.18 Si0.18 Ni99.5");
    add("nickel", "Ni100");
  }

  private Analyses() {}

  private static void add(String name, String analysis) {
    NAMED.put(name, of(analysis));
  }

  public static List<String> names() {
    return List.copyOf(NAMED.keySet());
  }

  /** An analysis written out, such as {@code C0.84 Mn0.75}. */
  public static Composition of(String text) {
    Map<Element, Double> percent = new EnumMap<>(Element.class);
    for (String part : text.isEmpty() ? new String[0] : text.split(" ")) {
      String symbol = part.replaceAll("[0-9.]+$", "");
      percent.put(
          Element.valueOf(symbol.toUpperCase(Locale.ROOT)),
          Double.parseDouble(part.substring(symbol.length())));
    }
    return Composition.of(percent);
  }

  /** The nominal analysis of a name in the list. */
  public static Composition named(String name) {
    Composition found = NAMED.get(name);
    if (found == null) {
      throw new IllegalArgumentException("not in the list: " + name);
    }
    return found;
  }
}
