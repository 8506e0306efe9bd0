package seamsoak.report;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.SoakFigure;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.beside.WhatIfWords;

/**
 * The soaks that were reckoned anyway, to be looked at one by one beside the one advised.
 *
 * @param choices by rising temperature
 * @param top of the chart's plot
 * @param bottom of it
 * @param width of the chart
 */
public record WhatIf(
    SoakAdvice soak,
    UnitSystem units,
    List<Choice> choices,
    String top,
    String bottom,
    String width) {
  /**
   * A soak.
   *
   * @param at its temperature, whole degrees Celsius
   * @param words the same as it is read
   * @param says all of it in a few sentences
   * @param across where it stands in the chart
   */
  public record Choice(String at, String words, String says, String across, boolean advised) {}

  /** What its words are. */
  public WhatIfWords words() {
    return new WhatIfWords(soak, units);
  }

  /** Those of an answer with its chart. */
  static WhatIf of(SoakAdvice soak, UnitSystem units, SoakFigure chart) {
    WhatIfWords words = new WhatIfWords(soak, units);
    Optional<Double> advised = words.advised().map(SoakOption::temperatureC);
    Charts.Uprights uprights = Charts.uprights(chart);
    List<Choice> choices = new ArrayList<>();
    for (SoakOption o : soak.options()) {
      choices.add(
          new Choice(
              number(o.temperatureC()),
              new Amounts(units).heat(o.temperatureC()),
              words.says(o),
              number(uprights.across().get(choices.size())),
              advised.filter(a -> a == o.temperatureC()).isPresent()));
    }
    return new WhatIf(
        soak,
        units,
        choices,
        number(uprights.top()),
        number(uprights.bottom()),
        number(uprights.width()));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  /** The one asked for, or what stands for it. */
  public Choice chosen(String at) {
    return choices.get(soak.options().indexOf(words().asked(at).orElseThrow()));
  }

  /** All as rows of one table, of which those are shown that are chosen or advised. */
  public String table(String chosen) {
    StringOutput page = new StringOutput();
    JtesoaksGenerated.render(
        new OwaspHtmlTemplateOutput(page), null, this, new SoakTable(soak, units).whatIf(), chosen);
    return page.toString();
  }
}
