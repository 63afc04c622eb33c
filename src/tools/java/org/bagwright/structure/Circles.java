package org.bagwright.structure;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Groups of top-level classes that depend on each other in a circle, after Tarjan (1972, SIAM Journal on Computing 1,
 * 146-160): the strongly connected components of two classes or more. A nested class counts as its outermost one.
 */
public final class Circles {
    private final Map<String, Set<String>> uses = new TreeMap<>();
    private final Map<String, Integer> index = new HashMap<>();
    private final Map<String, Integer> low = new HashMap<>();
    private final Deque<String> open = new ArrayDeque<>();
    private final List<List<String>> circles = new ArrayList<>();

    private Circles(JavaClasses classes) {
        for (JavaClass from : classes) {
            Set<String> targets = uses.computeIfAbsent(outermost(from), name -> new TreeSet<>());
            from.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(target -> classes.contain(target.getName()))
                    .map(Circles::outermost)
                    .forEach(targets::add);
        }
    }

    /** The circles among these classes, each in alphabetical order, the largest first. */
    public static List<List<String>> among(JavaClasses classes) {
        Circles search = new Circles(classes);
        search.uses.keySet().forEach(search::visit);
        search.circles.sort((one, other) -> Integer.compare(other.size(), one.size()));
        return search.circles;
    }

    private static String outermost(JavaClass type) {
        return type.getEnclosingClass().map(Circles::outermost).orElse(type.getName());
    }

    private void visit(String type) {
        if (index.containsKey(type)) {
            return;
        }
        index.put(type, index.size());
        low.put(type, index.get(type));
        open.push(type);
        for (String target : uses.getOrDefault(type, Set.of())) {
            visit(target);
            if (open.contains(target)) {
                low.merge(type, low.get(target), Math::min);
            }
        }
        if (low.get(type).equals(index.get(type))) {
            close(type);
        }
    }

    private void close(String root) {
        Collection<String> members = new TreeSet<>();
        String member;
        do {
            member = open.pop();
            members.add(member);
        } while (!member.equals(root));
        if (members.size() > 1) {
            circles.add(List.copyOf(members));
        }
    }
}
