package org.bagwright.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.BenchBlow;
import org.bagwright.flight.Flight;
import org.bagwright.flight.Launch;
import org.bagwright.planning.Charting;
import org.bagwright.planning.options.BenchBag;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One trajectory in the plane and in a cross wind, one blow in space, every option of the demo bag read from its book, and
 * a bag of 1,500 options or more computed from records already read.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FlightBench {
    @Param({"BEARMAN_HARVEY", "SMITS_SMITH"})
    private BallModelKind model = BallModelKind.BEARMAN_HARVEY;

    private final BenchBlow blow = new BenchBlow();
    private BallFlight flight;
    private BallFlight windy;
    private BenchBag bag;

    @Setup
    public void setUp() {
        flight = new BallFlight(AirConditions.DEFAULT, model);
        windy = new BallFlight(new AirConditions(20, 0, 0.5, 2, 3), model);
        bag = BenchBag.read(Path.of("demo-data", "full.xlsx"));
        System.out.println("bagOfManyOptions: " + bag.clubs() + " clubs, " + bag.options() + " options");
    }

    @Benchmark
    public Flight oneTrajectory() {
        return flight.fly(new Launch(65, 12, 2800), 1);
    }

    @Benchmark
    public Flight oneTrajectoryInACrossWind() {
        return windy.fly(new Launch(65, 12, 2800), 1);
    }

    @Benchmark
    public double oneBlowInSpace() {
        return blow.ballMps();
    }

    @Benchmark
    public List<BagOptions> bagOfManyOptions() {
        return bag.bags();
    }

    @Benchmark
    public ChartedBook demoBookReadAndCharted() throws Exception {
        return new Charting(Path.of("demo-data", "full.xlsx")).chart();
    }
}
