package org.bagwright.domain.club;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bagwright.domain.text.Numbers;

/** Which pieces leave which ports of a head and which take their place, on the way from one weighting to another. */
public record PieceMoves(Optional<Weighting> before, Optional<Weighting> after) {
    private static final double LEAST_KG = 5e-6;

    /** One text for each port whose piece changes, such as {@code heel: 2 g out, 12 g in}, in the order of the ports. */
    public List<String> byPort() {
        Map<String, Double> out = masses(before);
        Map<String, Double> in = masses(after);
        List<String> moves = new ArrayList<>();
        ports().forEach((key, port) -> {
            double outKg = out.getOrDefault(key, 0.0);
            double inKg = in.getOrDefault(key, 0.0);
            if (Math.abs(outKg - inKg) > LEAST_KG) {
                moves.add(port + ": " + words(outKg, inKg));
            }
        });
        return moves;
    }

    private Map<String, String> ports() {
        Map<String, String> ports = new LinkedHashMap<>();
        Stream.concat(before.stream(), after.stream())
                .flatMap(weighting -> weighting.pieces().stream())
                .forEach(piece -> ports.putIfAbsent(key(piece), piece.port()));
        return ports;
    }

    private static Map<String, Double> masses(Optional<Weighting> weighting) {
        Map<String, Double> masses = new LinkedHashMap<>();
        weighting.ifPresent(
                known -> known.pieces().forEach(piece -> masses.merge(key(piece), piece.massKg(), Double::sum)));
        return masses;
    }

    private static String key(PortPiece piece) {
        return piece.port().toLowerCase(Locale.ROOT);
    }

    private static String words(double outKg, double inKg) {
        List<String> words = new ArrayList<>();
        if (outKg > LEAST_KG) {
            words.add(grams(outKg) + " out");
        }
        words.add(inKg > LEAST_KG ? grams(inKg) + " in" : "stays empty");
        return String.join(", ", words);
    }

    private static String grams(double massKg) {
        return Numbers.trimmed(massKg * 1000, 2) + " g";
    }
}
