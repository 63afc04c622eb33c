package org.bagwright.flight.golfer;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bagwright.flight.Launch;
import org.bagwright.flight.Rebound;

/** One club while a golfer is fitted: what is known of it, and the delivery as far as it is settled. */
final class ClubFit {
    /** The parts of a delivery that are settled one by one. */
    enum Part {
        ATTACK("path of the head"),
        LOFT("delivered loft"),
        SPIN("spin"),
        BALL_SPEED("ball speed"),
        CARRY("carry");

        private final String label;

        Part(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    private final ClubToday today;
    private final ShotMedians shots;
    private final Delivery plain;
    private final Map<Part, List<String>> lenders = new EnumMap<>(Part.class);
    private Delivery delivery;

    ClubFit(ClubToday today, ShotMedians shots, Delivery plain) {
        this.today = today;
        this.shots = shots;
        this.plain = plain;
        this.delivery = plain;
    }

    ClubToday today() {
        return today;
    }

    ShotMedians shots() {
        return shots;
    }

    /** The delivery that is assumed of a plain amateur with this head speed. */
    Delivery plain() {
        return plain;
    }

    Delivery delivery() {
        return delivery;
    }

    /** Settles one part from the club's own shots. */
    void own(Part part, Delivery settled) {
        delivery = settled;
        lenders.remove(part);
    }

    /** Settles one part from other clubs. */
    void borrow(Part part, Delivery settled, List<String> from) {
        delivery = settled;
        lenders.put(part, from);
    }

    /** The clubs from which a part of the delivery is borrowed; empty for its own and for assumed parts. */
    List<String> lenders(Part part) {
        return lenders.getOrDefault(part, List.of());
    }

    /** Whether a part of the delivery is borrowed from other clubs. */
    boolean borrows(Part part) {
        return lenders.containsKey(part);
    }

    String name() {
        return today.club().name();
    }

    Launch todayLaunch() {
        return delivery.launch(today, today.loftDeg());
    }

    Rebound todayBlow() {
        return delivery.blow(today, today.loftDeg());
    }
}
