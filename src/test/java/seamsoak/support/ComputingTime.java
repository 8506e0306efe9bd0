package seamsoak.support;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;

/** Time that processors have spent on the program itself, whatever else the machine does. */
public final class ComputingTime {
  private ComputingTime() {}

  /** Of all living threads of Java code, the compiler and the collector left out, s. */
  public static double seconds() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    return Arrays.stream(threads.getAllThreadIds())
            .map(threads::getThreadCpuTime)
            .filter(nanos -> nanos > 0)
            .sum()
        / 1e9;
  }
}
