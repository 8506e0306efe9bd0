package seamsoak.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** The command line. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    AnswerStream answers = new AnswerStream(new FileOutputStream(FileDescriptor.out));
    PrintWriter out = new PrintWriter(new OutputStreamWriter(answers, StandardCharsets.UTF_8));
    PrintWriter err =
        new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
    int code = Commands.run(Terminal.here(), out, err, args);
    out.flush();
    System.exit(answers.complain(err) ? Program.WRONG_DATA : code);
  }
}
