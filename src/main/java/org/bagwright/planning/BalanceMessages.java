package org.bagwright.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.balance.BalanceFigure;
import org.bagwright.balance.BalanceParts;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.units.LengthUnit;

/**
 * Says which masses and balances are assumed, for the clubs whose swingweight or inertia a fitter uses: those with a
 * swingweight target, those with a kit of weights, and those that are matched while spread counts.
 */
final class BalanceMessages {
    private static final int MOST_NAMES = 8;

    private final Book book;
    private final boolean spreadCounts;
    private final boolean byInertia;

    private BalanceMessages(Book book) {
        Aim spread = book.aims().of(Measure.SPREAD);
        this.book = book;
        this.spreadCounts = spread.must() || spread.importancePoints() > 0;
        this.byInertia = spreadCounts && book.settings().matching().by() == Matching.By.INERTIA;
    }

    /** One message for all figures that are assumed for the same clubs; none where no swingweight or inertia is used. */
    static List<Message> of(Book book) {
        BalanceMessages made = new BalanceMessages(book);
        Map<List<Club>, List<BalanceFigure>> figuresByClubs = Arrays.stream(BalanceFigure.values())
                .collect(Collectors.groupingBy(made::assuming, LinkedHashMap::new, Collectors.toList()));
        figuresByClubs.remove(List.<Club>of());
        return figuresByClubs.entrySet().stream()
                .map(entry -> made.message(entry.getKey(), entry.getValue()))
                .toList();
    }

    private List<Club> assuming(BalanceFigure figure) {
        return book.clubs().stream()
                .filter(club -> matters(figure, club))
                .filter(club -> BalanceParts.of(club).assumed().contains(figure))
                .toList();
    }

    /** A swingweight read on a scale replaces the masses; what a moved piece adds to it depends on the length alone. */
    private boolean matters(BalanceFigure figure, Club club) {
        boolean matched =
                spreadCounts && book.settings().matching().groupOf(club.kind()).isPresent();
        if (matched && byInertia) {
            return true;
        }
        boolean swingweight = matched
                || club.kit().isPresent()
                || club.targets().swingweight().isPresent();
        boolean read = club.parts().measured().isPresent();
        return swingweight && (read ? figure == BalanceFigure.LENGTH : figure != BalanceFigure.HEAD_INERTIA);
    }

    private Message message(List<Club> clubs, List<BalanceFigure> figures) {
        boolean several = figures.size() > 1;
        List<BalanceParts> parts = clubs.stream().map(BalanceParts::of).toList();
        List<String> values = figures.stream()
                .map(figure -> figure.label() + " (" + range(figure, parts) + ")")
                .toList();
        return Message.assumed(
                clubs.get(0).cell(),
                ListText.allOf(values) + (several ? " are" : " is") + " assumed for "
                        + (clubs.size() == 1 ? "1 club: " : clubs.size() + " clubs: ") + ListText.allOf(names(clubs))
                        + ". "
                        + (byInertia ? "Swingweight and club inertia depend on " : "Swingweight depends on ")
                        + (several ? "them" : "it"));
    }

    /** The values of a figure over some clubs, such as {@code 50 g} or {@code 60 to 126 g}. */
    private String range(BalanceFigure figure, List<BalanceParts> clubs) {
        LengthUnit unit = book.settings().units().length();
        List<String> values = clubs.stream()
                .map(parts -> parts.value(figure))
                .sorted()
                .map(value -> figure.text(value, unit))
                .distinct()
                .toList();
        String most = values.get(values.size() - 1);
        return (values.size() == 1 ? most : values.get(0) + " to " + most) + " " + figure.unitText(unit);
    }

    private static List<String> names(List<Club> clubs) {
        Set<String> golfers = clubs.stream().map(Club::golfer).collect(Collectors.toSet());
        int shown = clubs.size() > MOST_NAMES + 1 ? MOST_NAMES : clubs.size();
        List<String> names = new ArrayList<>();
        for (Club club : clubs.subList(0, shown)) {
            names.add(golfers.size() > 1 ? club.name() + " of " + club.golfer() : club.name());
        }
        if (shown < clubs.size()) {
            names.add((clubs.size() - shown) + " more");
        }
        return names;
    }
}
