// Margins.java - chances worked out by Weka's junction tree, for compare.sh and the bench.
// Reads lines "net.xml evidence node state ..." and writes each with the chance at its end.
// With --time N as first words: milliseconds for one calculation, the median of N, instead.
import java.nio.file.Files;
import java.nio.file.Paths;
import weka.classifiers.bayes.net.BIFReader;
import weka.classifiers.bayes.net.MarginCalculator;

public class Margins {
  static MarginCalculator solve(BIFReader net, String evidence) throws Exception {
    MarginCalculator m = new MarginCalculator();
    m.calcMargins(net);
    if (!evidence.equals("-"))
      for (String e : evidence.split(","))
        m.setEvidence(net.getNode(e.split("=")[0]), Integer.parseInt(e.split("=")[1]));
    return m;
  }

  static double median(BIFReader net, String evidence, int count) throws Exception {
    double[] ms = new double[count];
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      solve(net, evidence);
      ms[i] = (System.nanoTime() - start) / 1e6;
    }
    java.util.Arrays.sort(ms);
    return ms[count / 2];
  }

  public static void main(String[] args) throws Exception {
    boolean time = args[0].equals("--time");
    String last = "";
    BIFReader net = null;
    MarginCalculator m = null;
    for (String line : Files.readAllLines(Paths.get(args[time ? 2 : 0]))) {
      if (line.isEmpty() || line.startsWith("#")) continue;
      String[] w = line.trim().split("\\s+");
      if (!last.equals(w[0] + w[1])) {
        net = new BIFReader();
        net.processFile(w[0]);
        if (time) System.out.println(w[0] + " " + median(net, w[1], Integer.parseInt(args[1])));
        else m = solve(net, w[1]);
        last = w[0] + w[1];
      }
      if (!time) System.out.println(line + " " + m.getMargin(net.getNode(w[2]))[Integer.parseInt(w[3])]);
    }
  }
}
