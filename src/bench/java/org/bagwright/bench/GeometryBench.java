package org.bagwright.bench;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.geometry.ClubGeometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One option of one club: every pose of the geometry. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class GeometryBench {
    private final ClubGeometry driver = driver();
    private final List<Choice> choices = List.of(choice("1"), choice("2"), choice("3"), choice("4"));
    private int next;

    @Benchmark
    public PoseNumbers everyPoseOfOneOption() {
        next = (next + 1) % choices.size();
        return driver.pose(choices.get(next));
    }

    private static Choice choice(String mark) {
        return new Choice(Optional.of(mark), Bend.NONE);
    }

    private static ClubGeometry driver() {
        Sleeve sleeve =
                new Sleeve("S", List.of(setting("1", 12), setting("2", 1.5), setting("3", 3), setting("4", 7.5)));
        Club club = new ClubSketch("Golfer A", 1, "Driver", ClubKind.DRIVER, "Clubs!C2")
                .head(9.5, 58)
                .sleeve("S", "1")
                .made();
        Golfer golfer = new GolferSketch("Golfer A").leanDeg(1).golfer();
        return ClubGeometry.of(club, Optional.of(sleeve), golfer);
    }

    private static SleeveSetting setting(String mark, double clockH) {
        return new SleeveSetting(mark, List.of(new Ring(clockH, 1.7)), true, Optional.empty());
    }
}
