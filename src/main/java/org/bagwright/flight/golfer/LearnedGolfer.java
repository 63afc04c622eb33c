package org.bagwright.flight.golfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.flight.GolferBall;

/** One golfer as his shots show him, ready to be asked for any club in any set-up. */
final class LearnedGolfer {
    private static final double SAME_LOFT_DEG = 0.01;

    /** About its reference each club is asked at so many degrees for the directions in which carries are doubtful. */
    private static final double[] ABOUT_DEG = {-2, 0, 2};

    private final SetUps setUps;
    private final double ballShare;
    private final Unknowns unknowns;
    private final Map<Head, Integer> heads = new LinkedHashMap<>();
    private final List<Double> references = new ArrayList<>();
    private final Map<Club, Integer> places = new LinkedHashMap<>();
    private final List<ModelledClub> clubs = new ArrayList<>();
    private final List<ShotGroup> groups = new ArrayList<>();
    private final Learning learning;
    private final GolferBall ball;
    private final DoubtFactors factors;

    /**
     * Learns a golfer.
     *
     * @param air flights in the air of the book
     * @param ballShare how much of the ball is expected to be that of Smits and Smith, 0 or 1
     * @param input his clubs and shots
     * @param setUps what his set-ups present
     */
    LearnedGolfer(GolferBall air, double ballShare, FitInput input, SetUps setUps) {
        this.setUps = setUps;
        this.ballShare = ballShare;
        List<Optional<LocalDate>> days = input.shots().stream()
                .flatMap(List::stream)
                .map(shot -> shot.series().date())
                .distinct()
                .toList();
        List<ClubToday> today = input.clubs().stream().map(ClubFit::today).toList();
        today.forEach(club -> heads.putIfAbsent(Head.of(club), heads.size()));
        heads.keySet().forEach(head -> references.add(referenceDeg(input, head)));
        this.unknowns = new Unknowns(days, heads.size(), openOf(input));
        for (ClubToday club : today) {
            places.put(club.club(), clubs.size());
            clubs.add(modelled(club.stated(), input.plain()));
        }
        for (int index = 0; index < today.size(); index++) {
            addGroups(today.get(index), input.shots().get(index), input.plain());
        }
        this.learning = new Learning(air, clubs, unknowns, groups);
        this.ball = clubs.isEmpty() ? air.with(ballShare, 1, 1) : ball(air);
        this.factors = new DoubtFactors(learning.posterior(), unknowns, heads.size(), slopesAllOver());
    }

    private GolferBall ball(GolferBall air) {
        double[] any = clubs.get(0).arguments(learning.posterior().mean());
        return air.with(
                any[Argument.BALL.ordinal()],
                Math.exp(any[Argument.LN_DRAG.ordinal()]),
                Math.exp(any[Argument.LN_LIFT.ordinal()]));
    }

    /** What a golfer's row leaves open. */
    private static Map<Unknown, Double> openOf(FitInput input) {
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

    /** What makes a head: clubs that differ in length alone have one. */
    private record Head(int slot, ClubKind kind, StatedHead stated, Optional<String> sleeve) {
        static Head of(ClubToday club) {
            Club made = club.club();
            return new Head(made.slot(), made.kind(), made.head(), made.sleeve());
        }
    }

    /** For each head the presented loft of its shots in the mean; its stated loft without any. */
    private double referenceDeg(FitInput input, Head head) {
        double sum = 0;
        int count = 0;
        for (int index = 0; index < input.clubs().size(); index++) {
            ClubToday today = input.clubs().get(index).today();
            if (Head.of(today).equals(head)) {
                for (Shot shot : input.shots().get(index)) {
                    sum += shot.series().shots() * loftDeg(today.club(), shot);
                    count += shot.series().shots();
                }
            }
        }
        return count == 0 ? head.stated().loftDeg() : sum / count;
    }

    private double loftDeg(Club club, Shot shot) {
        return setUps.presentedLoftDeg(club, shot.setup().on(club.today()));
    }

    private ModelledClub modelled(ClubToday stated, PlainGolfer plain) {
        Delivery usual = plain.delivery(stated);
        double[] arguments = new double[Argument.COUNT];
        arguments[Argument.LN_HEAD_SPEED.ordinal()] = Math.log(usual.headSpeedMps());
        arguments[Argument.LN_EFFICIENCY.ordinal()] = Math.log(usual.efficiencyRatio());
        arguments[Argument.OFFSET_DEG.ordinal()] = usual.offsetDeg();
        arguments[Argument.ATTACK_DEG.ordinal()] = usual.attackDeg();
        arguments[Argument.LN_SPIN.ordinal()] = Math.log(usual.spinRatio());
        arguments[Argument.BALL.ordinal()] = ballShare;
        int head = heads.get(Head.of(stated));
        double[][] design =
                unknowns.design(stated, head, plain.speeds().lnLengthRatio(stated), setUps.gauged(stated.club()));
        return new ModelledClub(stated, head, arguments, design, references.get(head));
    }

    /** One group for each set-up and day of a club's shots. */
    private void addGroups(ClubToday today, List<Shot> shots, PlainGolfer plain) {
        Map<SetUpAndDay, List<Shot>> sorted = new LinkedHashMap<>();
        for (Shot shot : shots) {
            SetUpAndDay place = new SetUpAndDay(
                    shot.setup().on(today.club().today()),
                    shot.setup().lengthM(),
                    shot.series().date());
            sorted.computeIfAbsent(place, any -> new ArrayList<>()).add(shot);
        }
        sorted.forEach((place, group) -> groups.add(ShotGroup.of(
                numberOf(today, place.lengthM(), plain),
                presented(today, place.choice(), plain),
                unknowns.day(place.date()),
                group)));
    }

    private record SetUpAndDay(Choice choice, OptionalDouble lengthM, Optional<LocalDate> date) {}

    /** The number of the club at a length. */
    private int numberOf(ClubToday today, OptionalDouble lengthM, PlainGolfer plain) {
        if (lengthM.isEmpty() || Math.abs(lengthM.getAsDouble() - today.lengthM()) < 1e-6) {
            return places.get(today.club());
        }
        clubs.add(modelled(today.stated().ofLength(lengthM.getAsDouble()), plain));
        return clubs.size() - 1;
    }

    private Presented presented(ClubToday today, Choice choice, PlainGolfer plain) {
        double loftDeg = setUps.presentedLoftDeg(today.club(), choice);
        Optional<WeightedHead> weighted = setUps.weighted(today.club(), choice);
        return weighted.isEmpty()
                ? Presented.of(loftDeg)
                : presented(today, plain.delivery(today.stated()), loftDeg, weighted.get());
    }

    private static Presented presented(ClubToday club, Delivery delivery, double loftDeg, WeightedHead weighted) {
        return Presented.of(
                loftDeg,
                delivery.launch(club, loftDeg),
                new WeightedBlow(delivery, club, loftDeg, 0, weighted).start().launch());
    }

    /** How carries all over the bag depend on the unknowns, m. */
    private List<double[]> slopesAllOver() {
        List<double[]> slopes = new ArrayList<>();
        for (int number : places.values()) {
            for (double aboutDeg : ABOUT_DEG) {
                slopes.add(slopesM(number, Presented.of(clubs.get(number).referenceLoftDeg() + aboutDeg)));
            }
        }
        return slopes;
    }

    private double[] slopesM(int number, Presented presented) {
        ModelledClub club = clubs.get(number);
        double[] arguments = club.arguments(learning.posterior().mean());
        return club.byUnknowns(learning.models().get(number).carrySlopesM(arguments, presented));
    }

    /** Whether it knows a club. */
    boolean knows(Club club) {
        return places.containsKey(club);
    }

    /** How he delivers a club. */
    Delivery delivery(Club club) {
        return ClubModel.delivery(
                clubs.get(places.get(club)).arguments(learning.posterior().mean()));
    }

    /** The club with its stated loft. */
    ClubToday stated(Club club) {
        return clubs.get(places.get(club)).club();
    }

    /** His ball. */
    GolferBall ball() {
        return ball;
    }

    /** The presented loft about which his response to a change turns, degrees. */
    double referenceLoftDeg(Club club) {
        return clubs.get(places.get(club)).referenceLoftDeg();
    }

    /** By how much more than the model says a change of set-up changes his carry: 1 for just as the model says. */
    double response() {
        return clubs.isEmpty()
                ? 1
                : 1 + clubs.get(0).arguments(learning.posterior().mean())[Argument.RESPONSE.ordinal()];
    }

    /** How far the carry of a set-up may be off. */
    CarryDoubt doubt(Club club, double loftDeg, Optional<WeightedHead> weighted) {
        int number = places.get(club);
        ClubToday stated = clubs.get(number).club();
        Presented presented =
                weighted.isEmpty() ? Presented.of(loftDeg) : presented(stated, delivery(club), loftDeg, weighted.get());
        return factors.of(clubs.get(number).head(), slopesM(number, presented));
    }

    /** Where the carry of a club in a set-up comes from. */
    CarryOrigin origin(Club club, double loftDeg) {
        if (groups.isEmpty()) {
            return CarryOrigin.ASSUMED;
        }
        int head = clubs.get(places.get(club)).head();
        List<ShotGroup> own = groups.stream()
                .filter(group -> clubs.get(group.club()).head() == head)
                .toList();
        if (own.isEmpty()) {
            return CarryOrigin.LENT;
        }
        return own.stream().anyMatch(group -> Math.abs(group.presented().loftDeg() - loftDeg) < SAME_LOFT_DEG)
                ? CarryOrigin.OWN_HERE
                : CarryOrigin.OWN_ELSEWHERE;
    }

    /** How far single shots scatter in carry, as a share of it. */
    double carryScatterRatio() {
        return Math.sqrt(learning.scatter().variance(Quantity.CARRY));
    }

    /** The shots with what each counts. */
    List<ShotGroup> groups() {
        return learning.groups();
    }
}
