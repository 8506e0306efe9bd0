package seamsoak.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.Figure;
import seamsoak.data.FileSet;

/** How charts are written to a folder. */
final class ChartFiles {
  private static final double DOTS = 2;

  @Option(names = "--png", description = "Write the charts as PNG too.")
  private boolean png;

  @Mixin private Writing writing;

  boolean png() {
    return png;
  }

  /** Files of charts, in their order. */
  List<String> names(List<Figure> figures) {
    return figures.stream()
        .flatMap(f -> Stream.of(f.id() + ".svg", f.id() + ".png").limit(png ? 2 : 1))
        .toList();
  }

  /** Adds a chart. */
  void put(FileSet files, Figure figure) {
    put(files, figure, Charts.svg(figure));
  }

  /** Adds a chart that is drawn already. */
  void put(FileSet files, Figure figure, byte[] svg) {
    files.put(figure.id() + ".svg", svg);
    if (png) {
      files.put(figure.id() + ".png", Charts.png(figure, DOTS));
    }
  }

  /** Whether what is there may be written over. */
  boolean replaces() {
    return writing.replaces();
  }

  void write(FileSet files) {
    writing.write(files);
  }
}
