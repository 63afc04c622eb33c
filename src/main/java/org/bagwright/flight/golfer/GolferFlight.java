package org.bagwright.flight.golfer;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.Flight;
import org.bagwright.flight.Launch;

/**
 * One golfer's shots with every club of his bag at any loft. Today's set-up reproduces the median of his measured shots;
 * other lofts are changes from there. What was not measured is borrowed from clubs that were, or else assumed; the messages list it.
 */
public final class GolferFlight {
    private final BallFlight flights;
    private final Map<String, ClubFit> clubs = new HashMap<>();
    private final double dragRatio;
    private final List<Message> messages;

    private GolferFlight(BallFlight flights, List<ClubFit> fits, double dragRatio, List<Message> messages) {
        this.flights = flights;
        fits.forEach(fit -> clubs.put(key(fit.today().club()), fit));
        this.dragRatio = dragRatio;
        this.messages = List.copyOf(messages);
    }

    /**
     * Fits a golfer. Never throws over odd data: read {@link #messages()}, and plan nothing where one is a problem.
     *
     * @param settings air, ball model and units of the book
     * @param golfer the golfer
     * @param bag his clubs; putters may be among them
     * @param todayLoftDeg for each club of the bag the loft presented at address with today's set-up, degrees
     * @param shotsOfThisGolfer his shots, all hit with today's set-up
     */
    public static GolferFlight fit(
            BookSettings settings,
            Golfer golfer,
            List<Club> bag,
            ToDoubleFunction<Club> todayLoftDeg,
            List<Shot> shotsOfThisGolfer) {
        AirConditions air = golfer.hand() == Hand.LEFT ? settings.air().mirrored() : settings.air();
        BallFlight flights = new BallFlight(air, settings.ballModel());
        FitterUnits words = new FitterUnits(settings.units());
        FitInput input = FitInput.of(flights, words, golfer, bag, todayLoftDeg, shotsOfThisGolfer);
        double dragRatio = new GolferFit(flights, input.clubs()).settle();
        List<Message> messages = new FitMessages(
                        words, flights, new BallFlight(air, BallModelKind.BEARMAN_HARVEY), settings.ballModel(), input)
                .all(dragRatio);
        return new GolferFlight(flights, input.clubs(), dragRatio, messages);
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
        ClubFit fit = fitOf(club);
        BallStart start = new WeightedBlow(fit.delivery(), fit.today(), presentedLoftDeg, faceClosedDeg, head).start();
        return shot(start.launch(), start, fit.delivery());
    }

    private ShotPrediction predict(Club club, double presentedLoftDeg, double faceClosedDeg, double headSpeedRatio) {
        check(club, presentedLoftDeg, faceClosedDeg);
        ClubFit fit = fitOf(club);
        Delivery delivery = fit.delivery().withHeadSpeedMps(fit.delivery().headSpeedMps() * headSpeedRatio);
        BallStart start = delivery.start(fit.today(), presentedLoftDeg, faceClosedDeg);
        Launch launch = faceClosedDeg == 0 ? delivery.launch(fit.today(), presentedLoftDeg) : start.launch();
        return shot(launch, start, delivery);
    }

    private static void check(Club club, double presentedLoftDeg, double faceClosedDeg) {
        if (!club.kind().carries()) {
            throw new IllegalArgumentException(club.name() + " is a putter, and a putter has no flight to predict");
        }
        if (!(Math.abs(presentedLoftDeg) <= 90)) {
            throw new IllegalArgumentException("loft must be within 90 degrees, found " + presentedLoftDeg);
        }
        if (!(Math.abs(faceClosedDeg) <= 45)) {
            throw new IllegalArgumentException("face must be within 45 degrees of the path, found " + faceClosedDeg);
        }
    }

    private ShotPrediction shot(Launch launch, BallStart start, Delivery delivery) {
        Flight flight = flights.fly(start, dragRatio);
        return new ShotPrediction(
                launch.ballSpeedMps(),
                launch.launchDeg(),
                launch.spinRpm(),
                flight.carryM() * delivery.carryRatio(),
                flight.apexM(),
                flight.landingDeg(),
                start.startClosedDeg(),
                flight.sidewaysClosedM() * delivery.carryRatio());
    }

    /** The golfer's head speed with a club of his bag, measured, borrowed or assumed, m/s. */
    public double headSpeedMps(Club club) {
        return fitOf(club).delivery().headSpeedMps();
    }

    private ClubFit fitOf(Club club) {
        ClubFit fit = clubs.get(key(club));
        if (fit == null) {
            throw new IllegalArgumentException(club.name() + " is not of this golfer's bag");
        }
        return fit;
    }

    /**
     * What a fitter should know of the fit: every assumption that matters, unusual data as a warning, impossible data as a
     * problem, each at the cell of the golfer, club or shot.
     */
    public List<Message> messages() {
        return messages;
    }

    /** The golfer's factor on the drag of the published ball, fitted to his carries; 1 without any. */
    double dragRatio() {
        return dragRatio;
    }

    private static String key(Club club) {
        return club.slot() + "/" + club.name().toLowerCase(Locale.ROOT);
    }
}
