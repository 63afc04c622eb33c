package org.bagwright.flight.golfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.flight.learning.Argument;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;
import org.bagwright.flight.learning.ModelledClub;
import org.bagwright.flight.learning.Presented;
import org.bagwright.flight.learning.ShotGroup;
import org.bagwright.flight.learning.Unknown;
import org.bagwright.flight.learning.Unknowns;

/** A golfer's clubs and shots as the fit needs them: heads, what is unknown, a model for each club, the shots in groups. */
final class BagModel {
    private final FitInput input;
    private final SetUps setUps;
    private final double ballShare;
    private final Map<Head, Integer> heads = new LinkedHashMap<>();
    private final List<Double> references = new ArrayList<>();
    private final Unknowns unknowns;
    private final Map<Club, Integer> places = new LinkedHashMap<>();
    private final List<ModelledClub> clubs = new ArrayList<>();
    private final List<ShotGroup> groups = new ArrayList<>();
    private final List<ShotGroup> asked = new ArrayList<>();

    /**
     * @param input his clubs and shots
     * @param setUps what his set-ups present
     * @param ballShare how much of his ball is expected to be that of Smits and Smith, 0 or 1
     */
    BagModel(FitInput input, SetUps setUps, double ballShare) {
        this(input, setUps, ballShare, List.of());
    }

    /** The same, with shots of which nothing is learned, one list for each club, or none. */
    BagModel(FitInput input, SetUps setUps, double ballShare, List<List<Shot>> askedShots) {
        this.input = input;
        this.setUps = setUps;
        this.ballShare = ballShare;
        List<ClubToday> today = input.clubs().stream().map(ClubFit::today).toList();
        today.forEach(club -> heads.putIfAbsent(Head.of(club), heads.size()));
        heads.keySet().forEach(head -> references.add(referenceDeg(head)));
        this.unknowns = new Unknowns(days(askedShots), heads.size(), leftOpen());
        for (ClubToday club : today) {
            places.put(club.club(), clubs.size());
            clubs.add(modelled(club.stated()));
        }
        for (int index = 0; index < today.size(); index++) {
            groups.addAll(groups(today.get(index), input.shots().get(index)));
        }
        for (int index = 0; index < askedShots.size(); index++) {
            asked.addAll(groups(today.get(index), askedShots.get(index)));
        }
    }

    /** What makes a head: clubs that differ in length alone have one. */
    private record Head(int slot, ClubKind kind, StatedHead stated, Optional<String> sleeve) {
        static Head of(ClubToday club) {
            Club made = club.club();
            return new Head(made.slot(), made.kind(), made.head(), made.sleeve());
        }
    }

    private List<Optional<LocalDate>> days(List<List<Shot>> askedShots) {
        return Stream.concat(input.shots().stream(), askedShots.stream())
                .flatMap(List::stream)
                .map(shot -> shot.series().date())
                .distinct()
                .toList();
    }

    /** The standard deviations that are wider where a golfer's row leaves his head speeds open. */
    private Map<Unknown, Double> leftOpen() {
        Map<Unknown, Double> open = new EnumMap<>(Unknown.class);
        boolean driver = input.stated().credible().driverMps().isPresent();
        boolean iron = input.stated().credible().ironMps().isPresent();
        if (!driver && !iron) {
            open.put(Unknown.SPEED, input.stated().toldByShots() ? Unknown.SPEED_BY_SHOTS : Unknown.SPEED_UNTOLD);
        }
        if (!driver || !iron) {
            open.put(Unknown.SPEED_BY_LENGTH, Unknown.SPEED_BY_LENGTH_UNTOLD);
        }
        return open;
    }

    /** The presented loft of a head's shots in the mean; its stated loft without any. */
    private double referenceDeg(Head head) {
        double sum = 0;
        int count = 0;
        for (int index = 0; index < input.clubs().size(); index++) {
            ClubToday today = input.clubs().get(index).today();
            if (Head.of(today).equals(head)) {
                for (Shot shot : input.shots().get(index)) {
                    double loftDeg = setUps.presentedLoftDeg(
                            today.club(), shot.setup().on(today.club().today()));
                    sum += shot.series().shots() * loftDeg;
                    count += shot.series().shots();
                }
            }
        }
        return count == 0 ? head.stated().loftDeg() : sum / count;
    }

    private ModelledClub modelled(ClubToday stated) {
        Delivery usual = input.plain().delivery(stated);
        double[] arguments = new double[Argument.COUNT];
        arguments[Argument.LN_HEAD_SPEED.ordinal()] = Math.log(usual.headSpeedMps());
        arguments[Argument.LN_EFFICIENCY.ordinal()] = Math.log(usual.efficiencyRatio());
        arguments[Argument.OFFSET_DEG.ordinal()] = usual.offsetDeg();
        arguments[Argument.ATTACK_DEG.ordinal()] = usual.attackDeg();
        arguments[Argument.LN_SPIN.ordinal()] = Math.log(usual.spinRatio());
        arguments[Argument.BALL.ordinal()] = ballShare;
        int head = heads.get(Head.of(stated));
        double lnLengthRatio = input.plain().speeds().lnLengthRatio(stated);
        double[][] design = unknowns.design(stated, head, lnLengthRatio, setUps.gauged(stated.club()));
        return new ModelledClub(stated, head, arguments, design, references.get(head));
    }

    /** One group for each set-up and day of a club's shots. */
    private List<ShotGroup> groups(ClubToday today, List<Shot> shots) {
        Map<SetUpAndDay, List<Shot>> sorted = new LinkedHashMap<>();
        for (Shot shot : shots) {
            sorted.computeIfAbsent(SetUpAndDay.of(shot, today.club()), any -> new ArrayList<>())
                    .add(shot);
        }
        List<ShotGroup> made = new ArrayList<>();
        sorted.forEach((place, group) -> made.add(ShotGroup.of(
                numberOf(today, place.lengthM()),
                presented(today, place.choice()),
                unknowns.day(place.date()),
                group)));
        return made;
    }

    private record SetUpAndDay(Choice choice, OptionalDouble lengthM, Optional<LocalDate> date) {
        static SetUpAndDay of(Shot shot, Club club) {
            return new SetUpAndDay(
                    shot.setup().on(club.today()),
                    shot.setup().lengthM(),
                    shot.series().date());
        }
    }

    /** The number of a club at a length, which may be another than it has today. */
    private int numberOf(ClubToday today, OptionalDouble lengthM) {
        if (lengthM.isEmpty() || Math.abs(lengthM.getAsDouble() - today.lengthM()) < 1e-6) {
            return places.get(today.club());
        }
        clubs.add(modelled(today.stated().ofLength(lengthM.getAsDouble())));
        return clubs.size() - 1;
    }

    private Presented presented(ClubToday today, Choice choice) {
        double loftDeg = setUps.presentedLoftDeg(today.club(), choice);
        ClubToday stated = today.stated();
        return setUps.weighted(today.club(), choice)
                .map(head -> new WeightedBlow(input.plain().delivery(stated), stated, loftDeg, 0, head).presented())
                .orElseGet(() -> Presented.of(loftDeg));
    }

    int headCount() {
        return heads.size();
    }

    Unknowns unknowns() {
        return unknowns;
    }

    /** All clubs, first those of the bag as they are today, then those that were hit at another length. */
    List<ModelledClub> clubs() {
        return clubs;
    }

    List<ShotGroup> groups() {
        return groups;
    }

    /** The shots of which nothing is learned. */
    List<ShotGroup> asked() {
        return asked;
    }

    /** The clubs of the bag by their number. */
    Map<Club, Integer> places() {
        return places;
    }

    double ballShare() {
        return ballShare;
    }
}
