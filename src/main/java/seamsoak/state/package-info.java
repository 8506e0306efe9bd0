/**
 * What a stage of a billet tells: its lines and crossings and how they show, its carbon, skin and
 * size, profiles across a seam, and how hot its steels let it get. Also what fades in time, read
 * between the solver's steps.
 *
 * <p>It decides nothing and writes no sentence. Read {@link StageReport} first, then {@link
 * SeamPlace}.
 *
 * <p>Choices of ours: the bar that would have left square cells ({@link Preform}) is as wide as the
 * bar was, only thicker or thinner: that holds whether later steps stretch the width by a factor or
 * draw it to a size. The moment at which something has faded below a level ({@link Fading}) is read
 * off a parabola in its logarithm, which falls nearly straight in time; straight on two logarithmic
 * scales it came out 3 to 7 % too early. Carbon across a seam ({@link Spots}) is told as means over
 * 0.03 mm, what a probe would see.
 */
package seamsoak.state;
