package seamsoak.source;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.data.JsonText;
import seamsoak.unit.UnitSystem;

/**
 * A danger in the shop, said at the step where it arises.
 *
 * @param id short key
 * @param gravity what comes of not heeding it
 * @param statement one or two sentences for the smith, each quantity in both systems of units as
 *     {@code {50 C|90 F}}
 * @param source key of what it rests on
 * @param standing how well that is known
 */
public record Caution(
    String id, Gravity gravity, String statement, String source, Standing standing)
    implements JsonText {
  private static final Pattern QUANTITY = Pattern.compile("\\{([^|}]*)\\|([^}]*)\\}");

  /** The statement in the units asked for; where both are, the other ones follow in brackets. */
  public String said(UnitSystem units) {
    return QUANTITY
        .matcher(statement)
        .replaceAll(q -> Matcher.quoteReplacement(units.show(q.group(2), q.group(1))));
  }

  @Override
  public String json() {
    return said(UnitSystem.METRIC);
  }
}
