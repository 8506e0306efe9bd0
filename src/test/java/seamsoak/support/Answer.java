package seamsoak.support;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.state.Progress;

/**
 * What the program says of a billet's soak, and what is wrong with it.
 *
 * @param advice empty where there was none
 * @param wrong sentences, empty for an answer that can be used
 * @param seconds how long it took
 */
public record Answer(Optional<Advice> advice, List<String> wrong, double seconds) {
  private static final CautionTable CAUTIONS = CautionTable.load(DataFolder.packed());

  public Answer {
    wrong = List.copyOf(wrong);
  }

  /** The soak of a billet, whatever comes of it. */
  public static Answer to(Billet billet, int samples) {
    long start = System.nanoTime();
    Optional<Advice> advice = Optional.empty();
    List<String> wrong;
    try {
      Advice told = advise(billet, samples);
      advice = Optional.of(told);
      wrong = faults(told, samples);
    } catch (RuntimeException e) {
      wrong = List.of("no answer: " + innermost(e));
    }
    return new Answer(advice, wrong, (System.nanoTime() - start) * 1e-9);
  }

  private static Advice advise(Billet billet, int samples) {
    return new PlanAdvisor(Walks.CORRELATIONS, CAUTIONS, samples).soak(billet, Progress.NONE);
  }

  private static Throwable innermost(Throwable thrown) {
    return thrown.getCause() == null ? thrown : innermost(thrown.getCause());
  }

  public boolean good() {
    return wrong.isEmpty();
  }

  /** Histories asked for that the bands do not rest on. */
  public int leftOut(int samples) {
    return advice.map(a -> samples - a.soak().samples()).orElse(0);
  }

  private static List<String> faults(Advice advice, int samples) {
    SoakAdvice soak = advice.soak();
    List<String> wrong = new ArrayList<>();
    if (soak.options().size() < 2) {
      wrong.add("no choice of temperatures: " + soak.options().size());
    }
    if (soak.samples() > samples || samples > 0 && soak.samples() == 0) {
      wrong.add("bands of " + soak.samples() + " histories where " + samples + " were asked for");
    }
    if (samples > 0 && soak.goneAlreadyPct().isEmpty()) {
      wrong.add("not told in how many histories no line is left");
    }
    numbers(advice, "the advice", wrong);
    falls(soak.options(), SoakOption::minutes, "minutes", wrong);
    falls(soak.options(), SoakOption::minutesLow, "least minutes", wrong);
    falls(soak.options(), SoakOption::minutesHigh, "most minutes", wrong);
    first(soak, wrong, "a band upside down", o -> forever(o.minutesLow()) > mostOf(o, samples));
    first(
        soak,
        wrong,
        "a bar said to be eaten within an allowed soak",
        o ->
            o.remarks().contains(SoakAdvice.OptionRemark.EATEN_FIRST)
                && o.minutes().orElse(0.0) <= soak.mostMinutes());
    if (soak.clears() && soak.recommended().isEmpty()) {
      wrong.add("said to clear, but not by what");
    }
    return wrong;
  }

  private static double mostOf(SoakOption o, int samples) {
    return samples == 0 ? Double.POSITIVE_INFINITY : forever(o.minutesHigh());
  }

  /** Notes how many temperatures have a fault, and the first of them. */
  private static void first(
      SoakAdvice soak, List<String> wrong, String name, Predicate<SoakOption> fault) {
    List<SoakOption> all = soak.options().stream().filter(fault).toList();
    if (!all.isEmpty()) {
      wrong.add(name + " at " + all.size() + " temperatures, such as " + all.get(0));
    }
  }

  private static void falls(
      List<SoakOption> options,
      Function<SoakOption, Optional<Double>> of,
      String name,
      List<String> wrong) {
    for (int i = 1; i < options.size(); i++) {
      double cooler = forever(of.apply(options.get(i - 1)));
      double hotter = forever(of.apply(options.get(i)));
      if (hotter > cooler) {
        double celsius = options.get(i).temperatureC();
        wrong.add(name + " rise from " + cooler + " to " + hotter + " at " + celsius + " C");
        return;
      }
    }
  }

  /** Beyond a day it is told as nothing. */
  private static double forever(Optional<Double> minutes) {
    return minutes.orElse(Double.POSITIVE_INFINITY);
  }

  /** Notes every number in a tree of records that is none. */
  private static void numbers(Object value, String where, List<String> wrong) {
    if (value instanceof Double d && !Double.isFinite(d)) {
      wrong.add(where + " is " + d);
    } else if (value instanceof Optional<?> o) {
      o.ifPresent(inside -> numbers(inside, where, wrong));
    } else if (value instanceof Iterable<?> all) {
      all.forEach(inside -> numbers(inside, where, wrong));
    } else if (value instanceof double[] all) {
      Arrays.stream(all).forEach(inside -> numbers(inside, where, wrong));
    } else if (value instanceof Record r) {
      for (RecordComponent part : r.getClass().getRecordComponents()) {
        numbers(read(r, part), where + " / " + part.getName(), wrong);
      }
    }
  }

  private static Object read(Record of, RecordComponent part) {
    try {
      return part.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(part.toString(), e);
    }
  }
}
