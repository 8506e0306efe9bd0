package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** One sentence that says what is wrong and what was meant, exit code 2, nothing on the output. */
class WrongCommandLineTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "migrat 1095 1018 --at 3F | there is no command 'migrat'; did you mean migrate?",
        "bake | there is no command 'bake'; the commands are",
        "--jsn steels | there is no option --jsn; did you mean --json?",
        "plan --ot=charts b.json | there is no option --ot=charts; did you mean --out?",
        "soak b.json --sample 3 | there is no option --sample; did you mean --samples?",
        "soak | soak needs BILLET",
        "soak _ | BILLET: '' is no name of a file or folder",
        "soak b.json --samples 1 | --samples: '1' is neither 0 nor a whole number from 2 to 4096",
        "soak b.json --samples few | --samples: 'few' is neither 0 nor a whole number",
        "steels 1084 1095 | '1095' is one word too many",
        "steels 1083 | there is no steel '1083'; did you mean '1080'?",
        "steels wootz | there is no steel 'wootz'; give one of the table",
        "steels C0.5_Xx3 | the analysis 'C0.5 Xx3' names 'Xx'",
        "steels C9.5 | more than cementite holds",
        "steels --units inches | --units: 'inches' is none of us, metric, both",
        "steels --units | steels needs --units us|metric|both",
        "steels --json=yes | --json takes no value",
        "decarb 1084 --at 1000C | decarb needs --for TIME",
        "decarb 1084 --at 1000 C --for 1h | --at: '1000' has no unit",
        "decarb 1084 --at 1000C --for 20 min | --for: '20' has no unit",
        "decarb 1084 --at 1000C --at 1100C --for 1h | --at is given twice",
        "decarb 1084 --at -300C --for 1h | --at: '-300C' is below absolute zero",
        "decarb 1084 --at 1000C --for 0min | --for: '0min' is no time in a fire",
        "decarb 1084 --at 1000C --for 1h --edge opn | 'opn' is none of open, covered; did you mean open?",
        "migrate 1095 | migrate needs SECOND, --layer A[,B], --at T, --for TIME",
        "migrate 1095 1018 --layer 1mm,2mm,3mm --at 1100C --for 1h | names 3 layers",
        "migrate 1095 1018 --layer 0mm --at 1100C --for 1h | --layer: '0mm' is thinner than 0.01 mm",
        "migrate 1095 1018 --layer 1kg --at 1100C --for 1h | --layer: '1kg' has 'kg' where its unit",
        "pair 1084 | pair needs SECOND",
        "pair 1084 75Ni9 | there is no steel '75Ni9'; did you mean '75Ni8'?",
        "pair 1084 1084:_C9.5 | more than cementite holds",
        "pair 1084 75Ni8 --share 60 | --share: '60' is no share; write two parts above zero such as 60:40",
        "pair 1084 75Ni8 --share 0:100 | --share: '0:100' is no share",
        "pair 1084 75Ni8 --share 60:40 --layer 1mm,2mm | --share and the two layers of --layer disagree",
        "pair 1084 75Ni8 --section 5 | --section: '5' has no unit",
        "pair 1084 75Ni8 O1 | 'O1' is one word too many",
        "pairs 1084 | one grade makes no pair; give two or more",
        "pairs 1084 --all | --all already means every grade",
        "pairs --png | --png needs --out DIR",
        "pairs --csv --json | --csv or --json, not both",
        "pairs 1084 wootz | there is no steel 'wootz'",
        "migrate C0.4 Si3 C0.4 --layer 1mm --at 1100C --for 1h | put quotes around a quantity or an analysis",
      })
  void isAnsweredWithOneSentence(String line, String sentence) {
    String[] args = line.split(" ");
    for (int i = 0; i < args.length; i++) {
      args[i] = args[i].equals("_") ? "" : args[i].replace('_', ' ');
    }
    Ran ran = Ran.run(args);
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(sentence), ran.err());
    assertEquals(1, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().strip().endsWith("--help."), ran.err());
    assertEquals("", ran.out());
  }
}
