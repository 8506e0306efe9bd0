package seamsoak.words.kiln;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.kiln.Apart;
import seamsoak.kiln.KilnPlan;
import seamsoak.kiln.Load;
import seamsoak.unit.HeatingRate;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.StopWords;

/** Several billets in one kiln: whether, in which loads, why not, and what to know. */
public record KilnWords(KilnPlan plan, UnitSystem units) {
  /** What the answer takes for granted, each with how well it is known. */
  public static final List<String> TAKEN =
      List.of(
          "The heat of a load is the middle of what its billets planned, within the window that all"
              + " of them share (judgement).",
          "A hold begins when the core is there. Its end is where grain would be half a number"
              + " coarser, or the skin of a bare edge 0.05 mm (0.002 in) deeper (judgement).",
          "A temper's window is where the edge comes out within 1 HRC of what was planned"
              + " (judgement); a cooler anneal or stress relief is held longer, by the parameter of"
              + " Hollomon and Jaffe, up to 4 h.",
          "From one quench until the next piece can leave: 3 min (common practice, no source).",
          "Hardness after quench and temper is reckoned for each billet's own hardening heat, not for"
              + " the one shared.",
          "The kiln is taken to have its heat back at once. With several cold pieces in it, it has"
              + " not: count each hold from when that piece looks like the wall behind it.",
          "Whether they all fit in, with room for the heat to reach every side, is for you to see.");

  private static final double LEAST_COARSER = 0.1;

  /** Longer than that no hold is counted to its end, min. */
  private static final double LONG = 120;

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** A billet in a table: a letter. */
  public static String letter(int billet) {
    return String.valueOf((char) ('A' + billet));
  }

  private static String letters(List<Integer> which) {
    List<String> all = which.stream().map(KilnWords::letter).toList();
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }

  /** Which letter is which billet. */
  public List<String> key() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < plan.billets().size(); i++) {
      KilnPlan.Billet b = plan.billets().get(i);
      all.add(letter(i) + ": " + b.name() + " (" + b.file() + ")");
    }
    return all;
  }

  /** What must not be done, before all else. */
  public List<String> forbidden() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < plan.billets().size(); i++) {
      for (String stop : new StopWords(units).forbid(plan.billets().get(i).stops())) {
        all.add(letter(i) + ": " + stop);
      }
    }
    if (!all.isEmpty()) {
      all.add(StopWords.OTHERWISE);
    }
    for (int i = 0; i < plan.billets().size(); i++) {
      if (!plan.billets().get(i).clears()) {
        all.add(
            letter(i)
                + ": no soak clears its lines within what is allowed; it goes in without one.");
      }
    }
    return all;
  }

  /** The answer. */
  public List<String> says() {
    List<String> all = new ArrayList<>();
    int loads = plan.loads().size();
    String fewer = loads + (loads == 1 ? " load" : " loads") + " in place of " + plan.alone();
    all.add(
        loads == 0
            ? "There is nothing left to do in the kiln for any of them."
            : switch (plan.verdict()) {
              case TOGETHER -> "One kiln does for them: " + fewer + ".";
              case IN_PART -> "One kiln does for part of the way: " + fewer + ".";
              case NOT_TOGETHER ->
                  plan.apart().isEmpty()
                      ? "Not together: they have no step in common, by how far each is."
                      : "Not together: no heat does for two of them at once.";
            });
    if (plan.verdict() != KilnPlan.Verdict.NOT_TOGETHER) {
      all.add(
          "Together: "
              + plan.loads().stream()
                  .filter(Load::together)
                  .map(this::briefly)
                  .collect(Collectors.joining(", "))
              + ".");
    }
    if (plan.verdict() == KilnPlan.Verdict.IN_PART) {
      all.add("Not all together: " + parted() + ".");
    }
    return all;
  }

  /** Kinds of steps that not all who have them share. */
  private String parted() {
    return plan.loads().stream()
        .filter(l -> l.out().stream().anyMatch(o -> o.why() == Load.Why.OWN_LOAD))
        .map(l -> l.kind().word())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private String briefly(Load load) {
    return name(load) + " at " + amounts().heat(load.celsius());
  }

  /** What the load is; the numbers of its billets' own steps may differ. */
  public String name(Load load) {
    List<String> names = load.pieces().stream().map(Load.Piece::step).distinct().toList();
    return names.size() == 1 ? names.get(0) : load.kind().word();
  }

  /** Its billets, in the order in which they leave. */
  public static String in(Load load) {
    return load.pieces().stream().map(p -> letter(p.billet())).collect(Collectors.joining(" "));
  }

  /** What comes after it, in a cell. */
  public static String then(Load load) {
    return load.pieces().stream()
        .map(
            p ->
                switch (p.then()) {
                  case AIR -> "air";
                  case QUENCH -> p.bath().orElse("");
                  case FALL -> "with the kiln";
                  case STAY -> "stays in";
                })
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Its heading. */
  public String title(Load load) {
    return briefly(load)
        + ": "
        + (load.together() ? "" : "only ")
        + letters(load.pieces().stream().map(Load.Piece::billet).sorted().toList());
  }

  /** What to do with it, and what becomes of each. */
  public List<String> details(Load load) {
    List<String> all = new ArrayList<>();
    if (load.kilnMinutes() >= 1) {
      all.add("The kiln takes about " + amounts().time(load.kilnMinutes()) + " to get there.");
    }
    load.pieces().forEach(p -> all.add(piece(load, p)));
    load.fall().map(this::fall).ifPresent(all::add);
    if (load.soonerAlone()) {
      all.add(
          "One after the other, each at its own heat, they would be done in "
              + amounts().time(load.aloneMinutes())
              + ", this takes "
              + amounts().time(load.minutes())
              + ": share it for the kiln's sake, not for the time.");
    }
    load.out().forEach(o -> all.add(letter(o.billet()) + " stays out: " + why(o.why()) + "."));
    return all;
  }

  private String piece(Load load, Load.Piece p) {
    String in =
        p.inMinutes() < 0.5
            ? ""
            : "in " + amounts().time(p.inMinutes()) + " later, not to wait too long; ";
    String out =
        switch (p.then()) {
              case AIR -> "out into air";
              case QUENCH -> "into " + p.bath().orElse("its bath");
              case FALL -> "stays in and falls with the kiln";
              case STAY -> "stays in for its next heat";
            }
            + p.outMinutes().map(m -> " after " + amounts().time(m)).orElse("");
    List<String> all = new ArrayList<>();
    all.add(letter(p.billet()) + ": " + in + out + ", held " + held(p));
    if (moved(load, p)) {
      all.add("planned at " + amounts().heat(p.window().plannedC()));
    }
    becomes(load, p).ifPresent(all::add);
    return String.join("; ", all) + ".";
  }

  private String held(Load.Piece p) {
    String held = amounts().time(p.heldMinutes());
    Optional<String> most =
        p.mostMinutes().filter(m -> m < LONG).map(m -> Amounts.number(Math.floor(m), 0));
    String least = Amounts.number(p.leastMinutes(), 0);
    boolean longer = p.heldMinutes() > p.leastMinutes() + 0.5;
    return most.map(m -> held + " (" + least + " to " + m + " min will do)")
        .orElse(longer ? held + " (" + least + " min would do)" : held);
  }

  private String fall(Load.Fall f) {
    return "When no other is left in, let the kiln fall to "
        + amounts().heat(f.toC())
        + ", no faster than "
        + new HeatingRate(f.perHourC()).format(units)
        + (f.stayMinutes() > 0 ? ", and hold " + amounts().time(f.stayMinutes()) : "")
        + ".";
  }

  private static Optional<String> becomes(Load load, Load.Piece p) {
    return p.becomes()
        .hrc()
        .filter(h -> moved(load, p))
        .map(
            h ->
                "its edge about %s HRC, planned %s"
                    .formatted(Amounts.number(h.here(), 1), Amounts.number(h.planned(), 1)))
        .or(
            () ->
                p.becomes()
                    .coarser()
                    .filter(c -> Math.abs(c) >= LEAST_COARSER)
                    .map(
                        c ->
                            "grain about "
                                + Amounts.number(Math.abs(c), 1)
                                + " numbers "
                                + (c > 0 ? "coarser" : "finer")
                                + " than by its own schedule"));
  }

  private static boolean moved(Load load, Load.Piece p) {
    return Math.abs(load.celsius() - p.window().plannedC()) >= 2.5;
  }

  /** Why a billet is not in a load. */
  public static String why(Load.Why why) {
    return switch (why) {
      case OWN_LOAD -> "it has this step in a load of its own";
      case UNDOES_QUENCH -> "it is hard by then, and this heat would undo its quench";
      case UNDOES_STRUCTURE -> "its structure is made by then, and this heat would undo it";
      case BY_SHEET -> "it is hardened and tempered by its own sheet";
      case ELSEWHERE -> "its schedule has this done elsewhere than in the kiln";
      case TEMPERED_FIRST -> "it was hard already, and is tempered by then";
      case NOT_ASKED -> "it has no step for such a heat then";
    };
  }

  /** Why steps of a kind do not share a load. */
  public String apart(Apart apart) {
    String kind = apart.kind().word() + ": ";
    if (apart instanceof Apart.Windows w) {
      return kind
          + "the windows do not meet, "
          + window(w.cooler())
          + " and "
          + window(w.hotter())
          + ".";
    }
    if (apart instanceof Apart.BySheet s) {
      return kind
          + letter(s.own().billet())
          + " is hardened by its own sheet, "
          + amounts().between(s.own().lowC(), s.own().highC())
          + ", which no formula here reaches: "
          + (s.parted().isEmpty() ? "" : "not with " + windows(s.parted()))
          + (s.parted().isEmpty() || s.meets().isEmpty() ? "" : "; ")
          + (s.meets().isEmpty() ? "" : "by the heat alone with " + windows(s.meets()))
          + (s.parted().isEmpty() && s.meets().isEmpty() ? "by itself" : "")
          + ".";
    }
    if (apart instanceof Apart.KilnTooCool k) {
      return kind
          + letter(k.billet())
          + " needs "
          + amounts().heat(k.lowC())
          + " or more, and the kiln ends at "
          + amounts().heat(k.kilnC())
          + ".";
    }
    Apart.Falls f = (Apart.Falls) apart;
    return kind
        + letters(f.billets())
        + " need the kiln to fall with them to different heats, "
        + amounts().heat(f.firstC())
        + " and "
        + amounts().heat(f.otherC())
        + ".";
  }

  private String windows(List<Load.Window> all) {
    return all.stream().map(this::window).collect(Collectors.joining(", "));
  }

  private String window(Load.Window w) {
    return letter(w.billet()) + " " + amounts().between(w.lowC(), w.highC());
  }

  /** What else to know. */
  public static String remark(KilnPlan.Remark remark) {
    return switch (remark) {
      case NO_KILN ->
          "A file says that its shop has no kiln: its schedule is one for a forge, and only what"
              + " it has done in a kiln is in the loads. Take that line out of the file first.";
      case KILNS_DIFFER -> "The files do not agree on how hot the kiln goes: the coolest is taken.";
      case HARD_ALREADY ->
          "What is hard already is tempered first: it must not lie hard until the others are.";
      case FROM_THE_ANVIL ->
          "What goes hot from the anvil into the kiln is not in the loads: that cannot wait for"
              + " another billet.";
      case SAME_BATH ->
          "One bath takes more than one blade: each warms it, so bring it back to its heat before"
              + " the next, which meanwhile waits in the kiln.";
      case HARD_AND_WAITING ->
          "They are hardened in more than one load: do not let the first lie hard until the last is;"
              + " temper within the hour (common practice, no source).";
      case SLOW_TO_TEMPER ->
          "A kiln falls slowly from the hardening heat to the temper: temper in an oven meanwhile,"
              + " within the hour (common practice, no source).";
    };
  }
}
