package seamsoak.page;

import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Exposure;
import seamsoak.chart.GrayPng;
import seamsoak.face.FaceSize;
import seamsoak.plan.Advice;
import seamsoak.plan.FaceAdvice;
import seamsoak.words.beside.WhatIfWords;

/**
 * The face of the finished blade after the soak that is looked at, as small as a picture beside an
 * answer may be.
 *
 * @param advice whose soaks they are
 * @param outside how the soak lies in the fire
 */
record LiveFace(Advice advice, Exposure outside) {
  private static final int ACROSS = 640;
  private static final int UP = 480;

  /** Of the soak asked for, else of the one advised; empty where no face can be drawn. */
  Optional<Answer> of(Map<String, String> query, WhatIfWords words) {
    return advice.faces().stream()
        .findFirst()
        .flatMap(
            bare ->
                words
                    .asked(query.getOrDefault("soak", ""))
                    .map(o -> bare.soaked(o.temperatureC(), words.heldMinutes(), outside)))
        .map(LiveFace::picture);
  }

  private static Answer picture(FaceAdvice face) {
    FaceSize size = FaceSize.of(face.field(), 0, ACROSS, UP);
    return Answer.of(200, "image/png", GrayPng.of(face.picture(size), face.billet(), ""));
  }
}
