package seamsoak.data;

import java.util.List;
import java.util.Map;

/** A value of a JSON file that knows where it stands. */
public sealed interface JsonValue {
  Place place();

  /** What it is, in the words of an error sentence. */
  String kind();

  /** Keys with their values, in the order of the file. */
  record ObjectValue(Place place, Map<String, Member> members) implements JsonValue {
    @Override
    public String kind() {
      return "an object in braces";
    }
  }

  /** One entry of an object; its place is that of the key. */
  record Member(Place place, JsonValue value) {}

  record ListValue(Place place, List<JsonValue> items) implements JsonValue {
    public ListValue {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list in brackets";
    }
  }

  record TextValue(Place place, String text) implements JsonValue {
    @Override
    public String kind() {
      return "a text";
    }
  }

  /** A number with the digits it was written in. */
  record NumberValue(Place place, double value, String digits) implements JsonValue {
    @Override
    public String kind() {
      return "the number " + digits;
    }
  }

  record BooleanValue(Place place, boolean value) implements JsonValue {
    @Override
    public String kind() {
      return Boolean.toString(value);
    }
  }

  record NullValue(Place place) implements JsonValue {
    @Override
    public String kind() {
      return "null";
    }
  }
}
