package seamsoak.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.Drawn;
import seamsoak.chart.figure.Figure;
import seamsoak.chart.figure.Figures;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.page.form.Kit;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Advice;
import seamsoak.report.AnswerPage;
import seamsoak.report.Colophon;
import seamsoak.report.WhatIf;
import seamsoak.unit.UnitSystem;

/** Answers as the page shows them. */
record Answers(Kit kit, Colophon colophon) {
  /**
   * What is shown of an answer as far as it is known.
   *
   * @param soaks other soaks, if there are any to be looked at
   * @param soakAt the one that is looked at; blank for the one advised
   * @param faces whether its face can be drawn
   * @param beside what differs from the plan that was kept, if one was
   * @param keeps whether it may be kept as such
   * @param kiln whether there is a program for a kiln
   */
  record View(
      int number,
      String stage,
      int done,
      int of,
      String failed,
      String verdict,
      List<AnswerPage.Piece> pieces,
      Optional<WhatIf> soaks,
      String soakAt,
      boolean faces,
      Optional<AnswerPage.Piece> beside,
      boolean keeps,
      boolean kiln) {
    boolean isWhole() {
      return stage.equals(Work.Stage.BAND.name()) || !failed.isEmpty();
    }
  }

  /**
   * @param soakAt the soak that is looked at; blank for the one advised
   * @param kept a plan that this one is held against
   */
  View view(int number, Billet billet, Work.Known known, String soakAt, Optional<Desk.Kept> kept) {
    boolean whole = known.stage() == Work.Stage.BAND;
    Optional<AnswerPage> page = known.advice().map(a -> page(billet, a, whole));
    return new View(
        number,
        known.stage().name(),
        known.done(),
        known.of(),
        known.failed(),
        page.map(AnswerPage::verdict).orElse(""),
        page.map(p -> pieces(p, known)).orElse(List.of()),
        page.flatMap(AnswerPage::whatIf),
        soakAt,
        known.advice().filter(a -> !a.faces().isEmpty()).isPresent(),
        kept.flatMap(k -> page.map(p -> p.beside(k.advice()))),
        known.stage() == Work.Stage.BAND && kept.filter(k -> k.number() == number).isEmpty(),
        page.flatMap(AnswerPage::program).isPresent());
  }

  private static List<AnswerPage.Piece> pieces(AnswerPage page, Work.Known known) {
    return Stream.concat(page.pieces().stream(), known.outlay().map(page::outlay).stream())
        .toList();
  }

  /** How far it has come, for a window that has all else by now. */
  View progress(int number, Work.Known known) {
    return new View(
        number,
        known.stage().name(),
        known.done(),
        known.of(),
        known.failed(),
        "",
        List.of(),
        Optional.empty(),
        "",
        false,
        Optional.empty(),
        false,
        false);
  }

  /** The whole of an answer. */
  AnswerPage page(Billet billet, Advice advice) {
    return page(billet, advice, true);
  }

  private AnswerPage page(Billet billet, Advice advice, boolean whole) {
    UnitSystem units = kit.units(billet);
    Figures all = new Figures(advice, units);
    List<Drawn> figures = new ArrayList<>();
    for (Figure figure : whole ? all.all(billet) : all.allButFace(billet)) {
      if (!(figure instanceof SectionFigure)) { // each step has its own section on the bench
        figures.add(new Drawn(figure, Charts.svg(figure)));
      }
    }
    List<PairAdvice> pairs = kit.pairs().ofStack(billet.stack(), advice.history());
    return new AnswerPage(advice, units, figures, pairs, colophon);
  }
}
