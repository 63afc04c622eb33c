package org.bagwright.domain.book;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;

/**
 * A fitter's book: every input sheet as records, checked against each other.
 *
 * @param settings what holds for the whole book
 * @param aims how much each measure counts
 * @param golfers the golfers, in the order of the book
 * @param clubs the clubs, in the order of the book
 * @param equipment sleeves, kits of weights and stock
 * @param measurements shots and gauge readings
 * @param liveChoices what a person chose on the sheet Plan of an earlier run; empty without one
 * @param messages what reading found: warnings and assumed values
 */
public record Book(
        BookSettings settings,
        Aims aims,
        List<Golfer> golfers,
        List<Club> clubs,
        Equipment equipment,
        Measurements measurements,
        List<LiveChoice> liveChoices,
        List<Message> messages) {
    public Book {
        golfers = List.copyOf(golfers);
        clubs = List.copyOf(clubs);
        liveChoices = List.copyOf(liveChoices);
        messages = List.copyOf(messages);
    }

    /**
     * What clubs may be fitted with.
     *
     * @param sleeves the sleeves
     * @param kits the kits of weights
     * @param stock what is on the bench in limited number
     */
    public record Equipment(List<Sleeve> sleeves, List<Kit> kits, List<StockItem> stock) {
        public Equipment {
            sleeves = List.copyOf(sleeves);
            kits = List.copyOf(kits);
            stock = List.copyOf(stock);
        }
    }

    /**
     * What was measured.
     *
     * @param shots the shots
     * @param readings the gauge readings
     * @param gaugedClubs the cells of the clubs whose loft or lie an earlier fit wrote and no one has changed since
     */
    public record Measurements(List<Shot> shots, List<Reading> readings, Set<String> gaugedClubs) {
        public Measurements {
            shots = List.copyOf(shots);
            readings = List.copyOf(readings);
            gaugedClubs = Set.copyOf(gaugedClubs);
        }

        /** Whether the book says of any shot on which day it was hit. */
        public boolean hasDates() {
            return shots.stream().anyMatch(shot -> shot.series().date().isPresent());
        }
    }

    /** The same book with other clubs. */
    public Book withClubs(List<Club> others) {
        return new Book(settings, aims, golfers, others, equipment, measurements, liveChoices, messages);
    }

    /** The same book with other shots. */
    public Book withShots(List<Shot> others) {
        Measurements other = new Measurements(others, readings(), measurements.gaugedClubs());
        return new Book(settings, aims, golfers, clubs, equipment, other, liveChoices, messages);
    }

    public List<Sleeve> sleeves() {
        return equipment.sleeves();
    }

    public List<Kit> kits() {
        return equipment.kits();
    }

    public List<StockItem> stock() {
        return equipment.stock();
    }

    public List<Shot> shots() {
        return measurements.shots();
    }

    public List<Reading> readings() {
        return measurements.readings();
    }

    /** The choice that is pinned for a golfer's slot on the sheet Plan. */
    public Optional<LiveChoice> pinOf(String golfer, int slot) {
        return liveChoices.stream()
                .filter(LiveChoice::pinned)
                .filter(live -> live.isFor(golfer, slot))
                .findFirst();
    }

    /** The clubs of one golfer by slot. */
    public List<Club> bagOf(Golfer golfer) {
        return clubs.stream()
                .filter(club -> club.golfer().equalsIgnoreCase(golfer.name()))
                .sorted(Comparator.comparingInt(Club::slot))
                .toList();
    }

    /** The readings of one club, in the order of the book. */
    public List<Reading> readingsOf(Club club) {
        return readings().stream()
                .filter(reading -> reading.golfer().equalsIgnoreCase(club.golfer()))
                .filter(reading -> reading.club().equalsIgnoreCase(club.name()))
                .toList();
    }

    /** Whether a club states its loft and lie as an earlier fit of gauge readings wrote them. */
    public boolean isGauged(Club club) {
        return measurements.gaugedClubs().contains(club.cell());
    }

    /** The sleeve that a club names; empty for a glued shaft. */
    public Optional<Sleeve> sleeveOf(Club club) {
        return club.sleeve().flatMap(this::sleeve);
    }

    /** The kit of weights that a club names; empty for a head without one. */
    public Optional<Kit> kitOf(Club club) {
        return club.kit().flatMap(name -> kits().stream()
                .filter(kit -> kit.name().equalsIgnoreCase(name))
                .findFirst());
    }

    /** The sleeve with this name, ignoring case. */
    public Optional<Sleeve> sleeve(String name) {
        return sleeves().stream()
                .filter(sleeve -> sleeve.name().equalsIgnoreCase(name))
                .findFirst();
    }
}
