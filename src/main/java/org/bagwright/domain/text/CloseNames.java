package org.bagwright.domain.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Compares names as people type them, and finds the one that was probably meant. */
public final class CloseNames {
    private CloseNames() {}

    /** The name with letter case, surrounding and repeated space taken out: what two equal names share. */
    public static String key(String name) {
        return name.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** {@code " Maybe \"X\"?"} for the closest name, or nothing when none is close. */
    public static String maybe(String found, Collection<String> names) {
        return closest(found, names).map(name -> " Maybe \"" + name + "\"?").orElse("");
    }

    /** The name that {@code found} is probably a slip of: a few wrong letters, or the beginning of the name. */
    public static Optional<String> closest(String found, Collection<String> names) {
        String key = key(found);
        return names.stream()
                .filter(name -> isClose(key, key(name)))
                .min(Comparator.comparingInt(name -> distance(key, key(name))));
    }

    private static boolean isClose(String found, String name) {
        if (found.length() >= 3 && (name.startsWith(found) || (name.length() >= 3 && found.startsWith(name)))) {
            return true;
        }
        String bare = bare(found);
        return (!bare.isEmpty() && bare.equals(bare(name)))
                || distance(found, name) <= slips(Math.min(found.length(), name.length()));
    }

    private static int slips(int length) {
        return length <= 2 ? 0 : length <= 5 ? 1 : length <= 8 ? 2 : 3;
    }

    private static String bare(String key) {
        return key.replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** How many letters must be put in, left out, replaced or swapped with their neighbour (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replaced = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], 1 + cost[i - 2][j - 2]);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
