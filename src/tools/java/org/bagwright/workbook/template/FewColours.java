package org.bagwright.workbook.template;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A drawing in its most frequent colours, so that its file is small; every other colour becomes the nearest of them. */
final class FewColours {
    private static final int MOST = 64;
    private static final int BITS = 8;

    private final BufferedImage drawing;
    private final List<Color> colours;
    private final Map<Integer, Integer> nearest = new HashMap<>();

    FewColours(BufferedImage drawing) {
        this.drawing = drawing;
        Map<Integer, Integer> counts = new HashMap<>();
        for (int y = 0; y < drawing.getHeight(); y++) {
            for (int x = 0; x < drawing.getWidth(); x++) {
                counts.merge(drawing.getRGB(x, y), 1, Integer::sum);
            }
        }
        colours = counts.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST)
                .map(entry -> new Color(entry.getKey()))
                .toList();
    }

    BufferedImage image() {
        byte[] red = new byte[colours.size()];
        byte[] green = new byte[colours.size()];
        byte[] blue = new byte[colours.size()];
        for (int index = 0; index < colours.size(); index++) {
            red[index] = (byte) colours.get(index).getRed();
            green[index] = (byte) colours.get(index).getGreen();
            blue[index] = (byte) colours.get(index).getBlue();
        }
        BufferedImage image = new BufferedImage(
                drawing.getWidth(),
                drawing.getHeight(),
                BufferedImage.TYPE_BYTE_INDEXED,
                new IndexColorModel(BITS, colours.size(), red, green, blue));
        for (int y = 0; y < drawing.getHeight(); y++) {
            for (int x = 0; x < drawing.getWidth(); x++) {
                image.getRaster().setSample(x, y, 0, nearest.computeIfAbsent(drawing.getRGB(x, y), this::nearest));
            }
        }
        return image;
    }

    private int nearest(int rgb) {
        Color wanted = new Color(rgb);
        return IntStream.range(0, colours.size())
                .boxed()
                .min(Comparator.comparingInt(index -> apart(wanted, colours.get(index))))
                .orElseThrow();
    }

    private static int apart(Color one, Color other) {
        int red = one.getRed() - other.getRed();
        int green = one.getGreen() - other.getGreen();
        int blue = one.getBlue() - other.getBlue();
        return red * red + green * green + blue * blue;
    }
}
