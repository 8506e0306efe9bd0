package seamsoak.reference;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** Inputs of a reference row, written as {@code C=0.84 Mn=0.75 celsius=900}. */
public final class Inputs {
  private final Map<String, Double> values = new LinkedHashMap<>();

  Inputs(String written) {
    for (String pair : written.split(" +")) {
      String[] parts = pair.split("=", 2);
      values.put(parts[0], Double.valueOf(parts[1]));
    }
  }

  /** The value of an input that the row has to give. */
  public double get(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("the row gives no " + name);
    }
    return value;
  }

  /** Whether the row gives an input. */
  public boolean has(String name) {
    return values.containsKey(name);
  }

  /** The analysis that the row's element symbols make up. */
  public Composition composition() {
    return composition("");
  }

  /** The same of element symbols with a prefix, for a row about two steels. */
  public Composition composition(String prefix) {
    Map<Element, Double> percent = new EnumMap<>(Element.class);
    for (Element e : Element.values()) {
      Double value = values.get(prefix + e.symbol());
      if (value != null) {
        percent.put(e, value);
      }
    }
    return Composition.of(percent);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    values.forEach((k, v) -> text.append(String.format(Locale.ROOT, "%s=%s ", k, v)));
    return text.toString().strip();
  }
}
