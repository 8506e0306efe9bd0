package seamsoak.pairing;

import java.util.List;

/** A family of checks: what it finds of two steels depends on nothing else. */
interface PairFamily {
  /** Nothing where the checks do not apply. */
  List<Finding> of(PairSteel first, PairSteel second, PairSetting setting);
}
