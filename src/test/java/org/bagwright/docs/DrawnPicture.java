package org.bagwright.docs;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;

/**
 * A picture as a grid of small fields, each with how much red, green and blue it has, 0 to 1. Two drawings of one page differ by
 * a thousandth or so; a digit, a mark of a chart or a fill in another place changes a field by more than a tenth.
 *
 * @param image the picture
 */
record DrawnPicture(BufferedImage image) {
    private static final int FIELD_PIXELS = 12;

    static DrawnPicture of(Path file) throws IOException {
        return new DrawnPicture(ImageIO.read(file.toFile()));
    }

    /** How much the fields differ that differ most, 0 to 1; 1 where the pictures are not as wide or high as each other. */
    double differenceRatio(DrawnPicture other) {
        int wide = image.getWidth() / FIELD_PIXELS;
        int high = image.getHeight() / FIELD_PIXELS;
        if (wide != other.image.getWidth() / FIELD_PIXELS || high != other.image.getHeight() / FIELD_PIXELS) {
            return 1;
        }
        double[] mine = fields(wide, high);
        double[] others = other.fields(wide, high);
        double most = 0;
        for (int field = 0; field < mine.length; field++) {
            most = Math.max(most, Math.abs(mine[field] - others[field]));
        }
        return most;
    }

    /** Red, green and blue of each field in turn. */
    private double[] fields(int wide, int high) {
        double[] sums = new double[3 * wide * high];
        int[] pixels = new int[wide * high];
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int field = (y * high / image.getHeight()) * wide + x * wide / image.getWidth();
                pixels[field]++;
                for (int colour = 0; colour < 3; colour++) {
                    sums[3 * field + colour] += (image.getRGB(x, y) >> (8 * (2 - colour))) & 255;
                }
            }
        }
        Arrays.setAll(sums, index -> sums[index] / (255.0 * pixels[index / 3]));
        return sums;
    }
}
