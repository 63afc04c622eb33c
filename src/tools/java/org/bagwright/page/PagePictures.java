package org.bagwright.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Pictures of a page on four screens, light and dark, and its card as printed: {@code PagePictures PAGE FOLDER [ADDRESS]}.
 */
public final class PagePictures {
    private static final List<int[]> SCREENS =
            List.of(new int[] {360, 740}, new int[] {820, 1180}, new int[] {1366, 768}, new int[] {1920, 1080});

    private PagePictures() {}

    public static void main(String[] args) throws IOException {
        Path page = Path.of(args[0]);
        Path folder = Files.createDirectories(Path.of(args[1]));
        String name = page.getFileName().toString().replaceFirst("\\..*", "");
        try (Browser browser = new Browser()) {
            for (int[] screen : SCREENS) {
                for (boolean dark : new boolean[] {false, true}) {
                    browser.screen(screen[0], screen[1]);
                    browser.scheme(dark, true);
                    browser.open(page, args.length > 2 ? args[2] : "");
                    String file = name + "-" + screen[0] + (dark ? "-dark" : "");
                    browser.picture(folder.resolve(file + ".png"), false);
                    browser.picture(folder.resolve(file + "-whole.png"), true);
                }
            }
            Files.write(folder.resolve(name + ".pdf"), browser.printed(false));
            browser.logged("browser").forEach(System.out::println);
        }
    }
}
