package org.marktwice.print.html;

import java.nio.file.Files;
import java.nio.file.Path;

/** A page as a browser shows it: {@code PageShots FILE.html FOLDER [STEP]} makes pictures wide, narrow, light, dark, and as printed. */
public final class PageShots {
    private static final int[][] WINDOWS = {{1280, 800, 1}, {1920, 1080, 1}, {390, 844, 2}};

    private PageShots() {}

    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[0]).toAbsolutePath();
        Path folder = Files.createDirectories(Path.of(args[1]));
        String at = args.length > 2 ? "#step-" + args[2] : "";
        Path profile = Files.createTempDirectory("browser");
        try (Browser browser = Browser.open(Browser.installed().orElseThrow(), profile)) {
            for (int[] w : WINDOWS) {
                for (boolean dark : new boolean[] {false, true}) {
                    browser.window(w[0], w[1], w[2]);
                    browser.light(dark);
                    browser.go("about:blank");
                    browser.go(file.toUri() + at);
                    String name = w[0] + (dark ? "-dark" : "-light");
                    Files.write(folder.resolve(name + ".png"), browser.screenshot());
                    browser.evaluate("document.getElementById('sheet').scrollIntoView()");
                    Files.write(folder.resolve(name + "-sheet.png"), browser.screenshot());
                }
            }
            Files.write(folder.resolve("printed.pdf"), browser.pdf());
        }
    }
}
