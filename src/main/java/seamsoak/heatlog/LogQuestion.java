package seamsoak.heatlog;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a log does not say and nobody may guess. */
public sealed interface LogQuestion {

  /** What answers it. */
  Answer answer();

  /** Where an answer is given. */
  enum Answer {
    COLUMN,
    UNIT,
    TIME_UNIT,
    INTERVAL,
    DECIMAL,
    TIP,
    LOADED,
    SECTION
  }

  /**
   * Which of several temperatures is that of the piece.
   *
   * @param channels those it may be
   * @param told a name that was given and that none has
   */
  record WhichColumn(List<Channel> channels, Optional<String> told) implements LogQuestion {
    public WhichColumn {
      channels = List.copyOf(channels);
    }

    @Override
    public Answer answer() {
      return Answer.COLUMN;
    }
  }

  /**
   * A column of temperatures.
   *
   * @param name in the log
   * @param highest its highest reading, as it stands there
   */
  record Channel(String name, double highest) {}

  /**
   * In what its temperatures are.
   *
   * @param channel the column
   * @param scales those it may be
   */
  record WhichScale(Channel channel, Set<Scale> scales) implements LogQuestion {
    public WhichScale {
      scales = Set.copyOf(scales);
    }

    @Override
    public Answer answer() {
      return Answer.UNIT;
    }
  }

  /**
   * In what its times are.
   *
   * @param column that holds them
   * @param first as it stands there
   * @param last as it stands there
   */
  record WhichTimeUnit(String column, String first, String last) implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.TIME_UNIT;
    }
  }

  /**
   * How far apart its rows are, which have no time.
   *
   * @param rows how many there are
   */
  record WhichInterval(long rows) implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.INTERVAL;
    }
  }

  /**
   * Whether a mark parts decimals or thousands.
   *
   * @param column where
   * @param cell one that can be read both ways
   */
  record WhichDecimals(String column, String cell) implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.DECIMAL;
    }
  }

  /** Where the tip was. */
  record WhereTip() implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.TIP;
    }
  }

  /** When the piece went into the kiln whose air was read. */
  record WhenLoaded() implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.LOADED;
    }
  }

  /** How thick the piece was that lagged behind the air. */
  record HowThick() implements LogQuestion {
    @Override
    public Answer answer() {
      return Answer.SECTION;
    }
  }
}
