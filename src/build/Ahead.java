/** Says within a second what a build is about to do: told to be quiet, Maven says nothing for a minute. */
final class Ahead {
  private Ahead() {}

  public static void main(String[] args) {
    System.out.println(
        "Seamsoak is being built, then runs what you asked for: about a minute on two cores, more where"
            + " Maven has libraries to fetch.");
  }
}
