package org.bagwright.flight.golfer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.Flight;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.Launch;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/**
 * One golfer's shots with every club of his bag at any loft. Today's set-up reproduces the median of his measured shots;
 * other lofts are changes from there. What was not measured is borrowed from clubs that were, or else assumed; the messages list it.
 */
public final class GolferFlight {
    private final LearnedGolfer golfer;
    private final List<Message> messages;
    private final GolferSessions sessions;
    private final Map<Reference, Double> referencesM = new ConcurrentHashMap<>();

    private GolferFlight(LearnedGolfer golfer, List<Message> messages, GolferSessions sessions) {
        this.golfer = golfer;
        this.messages = List.copyOf(messages);
        this.sessions = sessions;
    }

    /**
     * Fits a golfer. Never throws over odd data: read {@link #messages()}, and plan nothing where one is a problem.
     *
     * @param settings air, ball model and units of the book
     * @param golfer the golfer
     * @param bag his clubs; putters may be among them
     * @param setUps what the set-ups of his clubs present
     * @param shotsOfThisGolfer his shots, in any set-up of any day
     */
    public static GolferFlight fit(
            BookSettings settings, Golfer golfer, List<Club> bag, SetUps setUps, List<Shot> shotsOfThisGolfer) {
        AirConditions conditions = golfer.hand() == Hand.LEFT ? settings.air().mirrored() : settings.air();
        GolferBall air = GolferBall.in(conditions);
        FitterUnits words = new FitterUnits(settings.units());
        BallFlight flights = new BallFlight(conditions, settings.ballModel());
        FitInput input = FitInput.of(flights, words, golfer, bag, setUps, shotsOfThisGolfer);
        double ballShare = settings.ballModel() == BallModelKind.SMITS_SMITH ? 1 : 0;
        LearnedGolfer learned = new LearnedGolfer(air, new BagModel(input, setUps, ballShare));
        FitMessages messages = new FitMessages(words, settings.ballModel(), learned, air, input);
        return new GolferFlight(learned, messages.all(), new GolferSessions(air, words, input, setUps, ballShare));
    }

    /**
     * The shot to expect of a club whose face is square to the path.
     *
     * @param club a club of the bag
     * @param presentedLoftDeg the loft it presents at address, degrees
     * @return the shot on level ground; its carry is scaled to the golfer's own, apex and landing angle are the model's
     * @throws IllegalArgumentException for a putter, a club that is not of the bag, or a loft that is not within 90 degrees
     */
    public ShotPrediction predict(Club club, double presentedLoftDeg) {
        return predict(club, presentedLoftDeg, 0);
    }

    /**
     * As {@link #predict(Club, double)}, with the head at a multiple of the golfer's own speed with the club; everything
     * else of his delivery is held.
     *
     * @param headSpeedRatio head speed over his own, above 0
     */
    public ShotPrediction predictAtSpeed(Club club, double presentedLoftDeg, double headSpeedRatio) {
        return predict(club, presentedLoftDeg, 0, headSpeedRatio);
    }

    /**
     * The shot to expect of a club whose face does not point along the path. The path is taken to lead to the target and the
     * blow to be central; a face of 0 gives exactly the shot of {@link #predict(Club, double)}.
     *
     * @param club a club of the bag
     * @param presentedLoftDeg the loft it presents at address, degrees
     * @param faceClosedDeg heading of the face against the path, degrees, closed positive (to the left for a right-hander)
     * @return the shot on level ground, as above; start line and sideways closed positive too
     * @throws IllegalArgumentException as above, or for a face that is not within 45 degrees
     */
    public ShotPrediction predict(Club club, double presentedLoftDeg, double faceClosedDeg) {
        return predict(club, presentedLoftDeg, faceClosedDeg, 1);
    }

    /**
     * As {@link #predict(Club, double, double)}, with another weighting of the head. Today's blow is taken to go through
     * today's centre of gravity, since that is what the golfer's shots contain; with another weighting the same point of the
     * face meets the ball, and the change that a free rigid head then makes is added to his own shot. Without a change of
     * mass and centre of gravity it is that shot to 1e-12. Speed, path and delivered loft of the head are held: a heavier
     * head would be swung slower, and a golfer may change how he strikes; neither is modelled. The stated loft is taken for the
     * design loft of the head, and its scorelines are taken as level at the ball: each degree that either is off turns the
     * shift of the centre of gravity by a degree, 1.7 % of it.
     *
     * @param head what the weighting makes of the head
     */
    public ShotPrediction predict(Club club, double presentedLoftDeg, double faceClosedDeg, WeightedHead head) {
        check(club, presentedLoftDeg, faceClosedDeg);
        Delivery delivery = golfer.delivery(club);
        BallStart start =
                new WeightedBlow(delivery, golfer.stated(club), presentedLoftDeg, faceClosedDeg, head).start();
        return shot(club, start.launch(), start, delivery);
    }

    /** How far the carry of {@link #predict} may be off; the face does not change it. */
    public CarryDoubt doubt(Club club, double presentedLoftDeg, Optional<WeightedHead> head) {
        check(club, presentedLoftDeg, 0);
        return golfer.doubt(club, presentedLoftDeg, head);
    }

    /** Where the carry of a club that presents this loft comes from. */
    public CarryOrigin origin(Club club, double presentedLoftDeg) {
        check(club, presentedLoftDeg, 0);
        return golfer.origin(club, presentedLoftDeg);
    }

    /** Whether a shot is beyond what the golfer's ball model was published for. */
    public boolean extended(ShotPrediction shot) {
        return golfer.ball().leansOnExtension(new Launch(shot.ballSpeedMps(), shot.launchDeg(), shot.spinRpm()));
    }

    /** How far single shots scatter in carry, as a share of it: a standard deviation, pooled over the golfer's clubs. */
    public double carryScatterRatio() {
        return golfer.carryScatterRatio();
    }

    private ShotPrediction predict(Club club, double presentedLoftDeg, double faceClosedDeg, double headSpeedRatio) {
        check(club, presentedLoftDeg, faceClosedDeg);
        Delivery own = golfer.delivery(club);
        Delivery delivery = own.withHeadSpeedMps(own.headSpeedMps() * headSpeedRatio);
        ClubToday stated = golfer.stated(club);
        BallStart start = delivery.start(stated, presentedLoftDeg, faceClosedDeg);
        Launch launch = faceClosedDeg == 0 ? delivery.launch(stated, presentedLoftDeg) : start.launch();
        return shot(club, launch, start, delivery);
    }

    private void check(Club club, double presentedLoftDeg, double faceClosedDeg) {
        if (!club.kind().carries()) {
            throw new IllegalArgumentException(club.name() + " is a putter, and a putter has no flight to predict");
        }
        if (!golfer.knows(club)) {
            throw new IllegalArgumentException(club.name() + " is not of this golfer's bag");
        }
        if (!(Math.abs(presentedLoftDeg) <= 90)) {
            throw new IllegalArgumentException("loft must be within 90 degrees, found " + presentedLoftDeg);
        }
        if (!(Math.abs(faceClosedDeg) <= 45)) {
            throw new IllegalArgumentException("face must be within 45 degrees of the path, found " + faceClosedDeg);
        }
    }

    private ShotPrediction shot(Club club, Launch launch, BallStart start, Delivery delivery) {
        Flight flight = golfer.ball().fly(start);
        double referenceM = golfer.responseRatio() == 1 ? flight.carryM() : referenceM(club, delivery);
        double carryM = Math.max(
                0, (referenceM + golfer.responseRatio() * (flight.carryM() - referenceM)) * delivery.carryRatio());
        return new ShotPrediction(
                launch.ballSpeedMps(),
                launch.launchDeg(),
                launch.spinRpm(),
                carryM,
                flight.apexM(),
                flight.landingDeg(),
                start.startClosedDeg(),
                flight.sidewaysClosedM() * delivery.carryRatio());
    }

    /** The model's carry at the set-up about which the golfer's response turns, m. */
    private double referenceM(Club club, Delivery delivery) {
        return referencesM.computeIfAbsent(new Reference(club, delivery), any -> golfer.ball()
                .fly(delivery.start(golfer.stated(club), golfer.referenceLoftDeg(club), 0))
                .carryM());
    }

    private record Reference(Club club, Delivery delivery) {}

    /** The golfer's head speed with a club of his bag, m/s. */
    public double headSpeedMps(Club club) {
        check(club, 0, 0);
        return golfer.delivery(club).headSpeedMps();
    }

    /**
     * His shots by day, club and set-up, and what the days before predicted of them; none where no shot has a date. Computed
     * on each call.
     */
    public List<ClubSession> sessions() {
        return sessions.all();
    }

    /**
     * What a fitter should know of the fit: every assumption that matters, unusual data as a warning, impossible data as a
     * problem, each at the cell of the golfer, club or shot.
     */
    public List<Message> messages() {
        return messages;
    }
}
