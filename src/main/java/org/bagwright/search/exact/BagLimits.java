package org.bagwright.search.exact;

import java.util.List;

/**
 * The limits that a plan of one bag keeps whatever it costs.
 *
 * @param mostChanges the most items that may change
 * @param mostClubs the most clubs carried
 * @param stock the most pieces of each stock item
 */
public record BagLimits(int mostChanges, int mostClubs, List<Integer> stock) {
    public BagLimits {
        stock = List.copyOf(stock);
    }

    public BagLimits withStock(List<Integer> other) {
        return new BagLimits(mostChanges, mostClubs, other);
    }

    /** How many limits there are besides the changes: one for each stock item and the one on clubs. */
    int resources() {
        return stock.size() + 1;
    }

    int limit(int resource) {
        return resource < stock.size() ? stock.get(resource) : mostClubs;
    }

    static int use(ExactOption option, int resource) {
        if (resource < option.takes().size()) {
            return option.takes().get(resource);
        }
        return option.carried() ? 1 : 0;
    }

    public boolean keeps(List<ExactOption> chosen) {
        if (chosen.stream().mapToInt(ExactOption::changes).sum() > mostChanges) {
            return false;
        }
        for (int resource = 0; resource < resources(); resource++) {
            int item = resource;
            if (chosen.stream().mapToInt(option -> use(option, item)).sum() > limit(resource)) {
                return false;
            }
        }
        return true;
    }
}
