package seamsoak.data;

/** A record that stands in JSON as one sentence. */
public interface JsonText {
  /** The sentence, in metric units. */
  String json();
}
