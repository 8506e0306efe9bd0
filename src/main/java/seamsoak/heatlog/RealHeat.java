package seamsoak.heatlog;

import java.util.List;
import java.util.Optional;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;

/**
 * A heat as it really was, and what it was worth.
 *
 * @param log where it was read
 * @param query what is known beside
 * @param couple what the thermocouple was, told or taken
 * @param plannedC what the credit is counted at
 * @param held whether that is the heat's own hold, for want of a plan
 * @param in the readings that count, and what was left out
 * @param curve as read, in few points
 * @param piece middle of the piece where it lagged behind the air, empty where it was read itself
 * @param peakC highest temperature of the piece's middle
 * @param startC below it nothing counts
 * @param hotMinutes how long the middle was above that
 * @param credit what it was worth in carbon
 * @param face what it did to the face
 * @param grainAstm grains afterwards; empty where none formed
 * @param taken what was taken for want of a word
 * @param remarks what else to know
 * @param hot what the steel does not stand
 */
public record RealHeat(
    LogReading.Read log,
    HeatQuery query,
    Couple couple,
    double plannedC,
    boolean held,
    Readings in,
    LogCurve curve,
    List<LogCurve.Point> piece,
    double peakC,
    double startC,
    double hotMinutes,
    Credit credit,
    Optional<Decarburization> face,
    Optional<Double> grainAstm,
    List<Taken> taken,
    List<LogRemark> remarks,
    List<HeatRemark> hot) {

  /** What is taken for want of a word. */
  public enum Taken {
    /** The widest tolerance, a couple used before. */
    COUPLE,
    /** The heat's own hold for the plan. */
    PLANNED,
    /** A plain steel. */
    STEEL,
    /** The piece in from the log's first row. */
    LOADED,
    /** The piece in to the log's end. */
    REMOVED,
    /** A piece put in at room temperature. */
    COLD,
    /** A face bare to the fire. */
    OPEN_FACE
  }
}
