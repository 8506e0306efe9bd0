package seamsoak.property.hardening;

import seamsoak.source.Estimate;

/**
 * What a quench does to a section.
 *
 * @param depth how far it hardens
 * @param marginAtCore ideal diameter of the steel over the one needed at the core
 * @param marginAtFace the same at the face; infinite in a quench that any steel answers there
 * @param marginAtEdge the same at a thin edge, never less than at the face
 * @param coreHrc hardness at the core
 * @param faceHrc hardness at the face
 * @param edgeHrc hardness at a thin edge
 * @param neededMetres ideal diameter that the core needs, m
 * @param coreSeconds8to5 how long the core takes from 800 to 500 C, s
 * @param faceSeconds8to5 how long the face takes, s
 * @param longestSeconds8to5 how long it may take and still be half martensite, s
 * @param greatestDifferenceKelvin the most that core and face differ on the way to 500 C, K
 */
public record QuenchResult(
    HardeningDepth.Depth depth,
    double marginAtCore,
    double marginAtFace,
    double marginAtEdge,
    Estimate coreHrc,
    Estimate faceHrc,
    Estimate edgeHrc,
    double neededMetres,
    double coreSeconds8to5,
    double faceSeconds8to5,
    double longestSeconds8to5,
    double greatestDifferenceKelvin) {}
