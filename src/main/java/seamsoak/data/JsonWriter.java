package seamsoak.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Writes records, maps, collections and plain values as JSON. The names of a record's components
 * are the keys, so a record tree is the output contract; numbers have six significant digits.
 */
public final class JsonWriter {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final MathContext SIX_DIGITS = new MathContext(6);

  private final JsonGenerator out;
  private final Function<Record, Map<String, Object>> members;

  private JsonWriter(JsonGenerator out, Function<Record, Map<String, Object>> members) {
    this.out = out;
    this.members = members;
  }

  /**
   * The tree as indented JSON with a line end after it. {@code IllegalStateException} for a value
   * that is not finite or of a type that has no place in an answer: both are mistakes of ours.
   */
  public static String write(Object tree) {
    return write(tree, JsonWriter::members);
  }

  /** The same with other members for a record. */
  public static String write(Object tree, Function<Record, Map<String, Object>> members) {
    StringWriter text = new StringWriter();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter layout = new DefaultPrettyPrinter();
    layout.indentObjectsWith(indent);
    layout.indentArraysWith(indent);
    try (JsonGenerator out = FACTORY.createGenerator(text).setPrettyPrinter(layout)) {
      new JsonWriter(out, members).value(tree);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // text in memory cannot fail to be written
    }
    return text.append('\n').toString();
  }

  private void value(Object value) throws IOException {
    if (value == null) {
      out.writeNull();
    } else if (value instanceof Optional<?> o) {
      value(o.orElse(null));
    } else if (value instanceof OptionalDouble o) {
      value(o.isPresent() ? o.getAsDouble() : null);
    } else if (value instanceof OptionalInt o) {
      value(o.isPresent() ? o.getAsInt() : null);
    } else if (value instanceof String s) {
      out.writeString(s);
    } else if (value instanceof Boolean b) {
      out.writeBoolean(b);
    } else if (value instanceof Enum<?> e) {
      out.writeString(e.name().toLowerCase(Locale.ROOT));
    } else if (value instanceof Integer || value instanceof Long) {
      out.writeNumber(value.toString());
    } else if (value instanceof Double d) {
      out.writeNumber(digits(d));
    } else if (value instanceof Map<?, ?> m) {
      map(m);
    } else if (value instanceof Collection<?> c) {
      list(c);
    } else if (value instanceof JsonText t) {
      out.writeString(t.json());
    } else if (value instanceof Record r) {
      map(members.apply(r));
    } else {
      throw new IllegalStateException("no JSON for " + value.getClass().getName());
    }
  }

  private static String digits(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException(value + " cannot be part of an answer");
    }
    BigDecimal rounded = new BigDecimal(value).round(SIX_DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private void map(Map<?, ?> map) throws IOException {
    out.writeStartObject();
    for (Map.Entry<?, ?> e : map.entrySet()) {
      out.writeFieldName((String) e.getKey());
      value(e.getValue());
    }
    out.writeEndObject();
  }

  private void list(Collection<?> items) throws IOException {
    out.writeStartArray();
    for (Object item : items) {
      value(item);
    }
    out.writeEndArray();
  }

  /** The components of a record by name, in order. */
  public static Map<String, Object> members(Record value) {
    Map<String, Object> members = new LinkedHashMap<>();
    for (RecordComponent component : value.getClass().getRecordComponents()) {
      members.put(component.getName(), get(component, value));
    }
    return members;
  }

  private static Object get(RecordComponent component, Record value) {
    try {
      component.getAccessor().setAccessible(true); // records of answers need not be public
      return component.getAccessor().invoke(value);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + component, e);
    }
  }
}
