package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Label setting: fills the slots one after the other in every way that can still beat the incumbent ({@link
 * LabelExtension}), and drops the ways that another one dominates ({@link LabelDominance}). Needs costs by the centre
 * of the intervals where that gives a bound.
 */
final class LabelPass {
    private final BagModel model;
    private final Incumbent incumbent;
    private final Meter meter;
    private final int width;
    private final LabelExtension extension;
    private final LabelDominance dominance;
    private boolean complete = true;

    /** @param width the most labels kept after a slot */
    LabelPass(ChainPass chain, Incumbent incumbent, Meter meter, int width) {
        this.incumbent = incumbent;
        this.meter = meter;
        this.width = width;
        model = chain.terms.model;
        extension = new LabelExtension(chain, incumbent);
        dominance = new LabelDominance(chain.terms);
    }

    /**
     * Fills all slots and offers the choices found.
     *
     * @param goOn whether to keep only the best labels when there are too many, rather than to give up
     * @return whether it followed every way that could beat the incumbent
     */
    boolean run(boolean goOn) {
        List<Label> labels = List.of(Label.root(model));
        for (int slot = 0; slot < model.layers.length; slot++) {
            labels = fill(slot, labels);
            if (!complete && !goOn) {
                return false;
            }
        }
        for (Label label : labels) {
            incumbent.offer(chosen(label));
        }
        return complete;
    }

    private List<ExactOption> chosen(Label last) {
        List<ExactOption> options = new ArrayList<>();
        int slot = model.layers.length - 1;
        for (Label label = last; label.parent != null; label = label.parent) {
            options.add(model.layers[slot--].options[label.option]);
        }
        Collections.reverse(options);
        return options;
    }

    private List<Label> fill(int slot, List<Label> labels) {
        Map<Integer, List<Label>> byFront = new TreeMap<>();
        int options = model.layers[slot].size();
        int made = 0;
        for (Label label : labels) {
            meter.spend(options);
            for (int option = 0; option < options; option++) {
                Label next = extension.extended(label, slot, option);
                if (next != null) {
                    byFront.computeIfAbsent(next.front, front -> new ArrayList<>())
                            .add(next);
                    made++;
                }
            }
            if (made > 40L * width + 20_000) {
                complete = false;
                break;
            }
        }
        List<Label> kept = new ArrayList<>();
        byFront.values().forEach(same -> kept.addAll(dominance.undominated(same, meter)));
        return narrowed(kept);
    }

    private List<Label> narrowed(List<Label> labels) {
        if (labels.size() <= width) {
            return labels;
        }
        complete = false;
        labels.sort(Label::compareByTotal);
        return labels.subList(0, width);
    }
}
