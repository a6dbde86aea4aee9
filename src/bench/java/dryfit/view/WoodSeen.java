package dryfit.view;

import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How long after a process was started there is a window, and wood in it, as an onlooker sees it:
 * one line of the screen is looked at every few milliseconds. The screen must be dark and empty.
 * Arguments: how often, and the command that opens a window and closes it again.
 */
public final class WoodSeen {
  private static final long EVERY = 8;
  private static final long PATIENCE = 60_000;

  private WoodSeen() {}

  public static void main(String[] args) throws Exception {
    Robot eye = new Robot();
    var screen = Toolkit.getDefaultToolkit().getScreenSize();
    // Across the back of the chair in a window of 1280 x 800 in the middle of the screen.
    Rectangle line =
        new Rectangle((int) (0.39 * screen.width), (int) (0.28 * screen.height), 300, 1);
    int rounds = Integer.parseInt(args[0]);
    List<String> command = Arrays.asList(args).subList(1, args.length);
    List<Long> window = new ArrayList<>();
    List<Long> wood = new ArrayList<>();
    List<Long> ended = new ArrayList<>();
    for (int i = 0; i < rounds; i++) {
      long began = System.nanoTime();
      Process process = new ProcessBuilder(command).inheritIO().start();
      long lit = -1;
      long seen = -1;
      while (seen < 0 && since(began) < PATIENCE) {
        BufferedImage look = eye.createScreenCapture(line);
        int bright = 0;
        int brown = 0;
        for (int x = 0; x < line.width; x++) {
          int rgb = look.getRGB(x, 0);
          int red = rgb >> 16 & 255;
          int blue = rgb & 255;
          bright += red > 20 ? 1 : 0;
          brown += red > 120 && red - blue > 50 ? 1 : 0;
        }
        lit = lit < 0 && bright > line.width / 2 ? since(began) : lit;
        seen = brown > 15 ? since(began) : -1;
        Thread.sleep(EVERY);
      }
      process.waitFor();
      window.add(lit);
      wood.add(seen);
      ended.add(since(began));
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "from the start of the process, medians of %d: a window %d ms, wood %d ms, shown and"
                + " closed again %d ms",
            rounds,
            median(window),
            median(wood),
            median(ended)));
  }

  private static long since(long began) {
    return (System.nanoTime() - began) / 1_000_000;
  }

  private static long median(List<Long> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
  }
}
