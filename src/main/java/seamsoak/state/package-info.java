/**
 * What a stage of a billet tells: its lines and crossings and how they show, its carbon, skin and
 * size, profiles across a seam, and how hot its steels let it get. Also what fades in time, read
 * between the solver's steps.
 *
 * <p>It decides nothing and writes no sentence. Read {@link StageReport} first, then {@link
 * SeamPlace}.
 *
 * <p>What a line shows follows from an etch ({@link EtchBand}): how white each steel is by its
 * carbon after the cooling that came last ({@link AsCooled}) or hardened. Its contrast on that is
 * K, and it shows from 1 on. A line through the mean of layers shows in that of the layers' steels
 * in which it shows most, each with the carbon that it has beside the mean's.
 *
 * <p>Choices of ours: the bar that would have left square cells ({@link Preform}) is as wide as the
 * bar was, only thicker or thinner: that holds whether later steps stretch the width by a factor or
 * draw it to a size. The moment at which something has faded below a level ({@link Fading}) is read
 * off a parabola in its logarithm, which falls nearly straight in time; straight on two logarithmic
 * scales it came out 3 to 7 % too early. Carbon across a seam ({@link Spots}) is told as means over
 * 0.03 mm, what a probe would see. A {@link Skin} ends where a steel has 90 % of its due again over
 * 0.05 mm; its due is the carbon it came with or what the core's activity would give it, whichever
 * is less, so that a layer of soft steel is not taken for a skin. Soft, and to be ground off, is
 * only what a quench does not make hard enough: much less than the skin, for 0.68 %C is as hard as
 * 0.95.
 */
package seamsoak.state;
