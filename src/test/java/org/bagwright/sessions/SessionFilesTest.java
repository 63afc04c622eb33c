package org.bagwright.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.planning.WorkbookProblems;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small files of shots of our own invention: each is read as it is meant, or refused with the reason. */
@Tag("analytic")
class SessionFilesTest {
    /** Ball 140.5 mph, launch 12.1, spin 2450, carry 222.5 yd, 12 yd left. */
    private static final String DRIVER = "A Driver head 42.9 ball 62.8 launch 12.1 spin 2450.0 carry 203.5 side -11.0";

    private static final String SEVEN = "A 7 iron head 35.8 ball 47.8 launch 18.0 spin 6400.0 carry 135.3 side 3.2";
    private static final String BOTH = DRIVER + "; " + SEVEN;
    private static final String ROWS = "Driver,96,140.5,12.1,2450,222.5,-12\n7 iron,80,107,18,6400,148,3.5\n";
    private static final String TITLES = "Club,Club speed,Ball speed,Launch angle,Spin rate,Carry,Side\n";
    private static final String ONE_DRIVER = "A Driver carry 201.2";

    @TempDir
    Path folder;

    /**
     * A file and what is read of it.
     *
     * @param name what is special about it
     * @param text its text
     * @param charset its encoding
     * @param options how it is added
     * @param shots the shots that are read; for a file that is refused, a part of the reason
     * @param left parts of the reasons why rows are left out
     * @param refused whether the file is refused as a whole
     */
    private record Sample(
            String name,
            String text,
            String charset,
            List<String> options,
            String shots,
            List<String> left,
            boolean refused) {
        static Sample read(String name, String text, String shots, String... left) {
            return new Sample(name, text, "UTF-8", List.of("--golfer", "Golfer A"), shots, List.of(left), false);
        }

        static Sample refused(String name, String text, String reason) {
            return new Sample(name, text, "UTF-8", List.of("--golfer", "Golfer A"), reason, List.of(), true);
        }

        Sample in(String other) {
            return new Sample(name, text, other, options, shots, left, refused);
        }

        Sample with(String... more) {
            List<String> all = new ArrayList<>(options);
            all.addAll(List.of(more));
            return new Sample(name, text, charset, all, shots, left, refused);
        }

        Sample withoutGolfer() {
            return new Sample(name, text, charset, List.of(), shots, left, refused);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Sample> samples() {
        List<Sample> all = new ArrayList<>(dialects());
        all.addAll(headings());
        all.addAll(units());
        all.addAll(rows());
        all.addAll(whose());
        return all;
    }

    private static List<Sample> dialects() {
        String semicolons =
                """
                Club;Club speed;Ball speed;Launch angle;Spin rate;Carry;Side
                Driver;96;140,5;12,1;2450;222,5;-12
                7 iron;80;107;18;6.400;148;3,5
                """;
        return List.of(
                Sample.read("plain", TITLES + ROWS, BOTH),
                Sample.read("decimal comma with semicolon", semicolons, BOTH),
                Sample.read("tab", (TITLES + ROWS).replace(',', '\t'), BOTH),
                Sample.read("tab and decimal comma", semicolons.replace(';', '\t'), BOTH),
                Sample.read("UTF-8 with mark", "\uFEFF" + TITLES + ROWS, BOTH),
                Sample.read("UTF-16 with mark", TITLES + ROWS, BOTH).in("UTF-16"),
                Sample.read("UTF-16 with mark and tab", (TITLES + ROWS).replace(',', '\t'), BOTH)
                        .in("UTF-16"),
                Sample.read("Windows-1252", "Club,Carry,Wind\nDriver,220,12\u00b0 h\u00f6chstens\n", ONE_DRIVER)
                        .in("windows-1252"),
                Sample.read("line ends of Windows", (TITLES + ROWS).replace("\n", "\r\n"), BOTH),
                Sample.read("line ends of old computers", (TITLES + ROWS).replace("\n", "\r"), BOTH),
                Sample.read("blank lines", "\n" + TITLES + "\n\n" + ROWS.replace("\n", "\n\n,,,,,,\n"), BOTH),
                Sample.read(
                        "quoted",
                        "\"Club\",\"Carry\",\"Note\"\n\"Driver\",\"220\",\"low, left \"\"pull\"\"\"\n",
                        ONE_DRIVER),
                Sample.read("quoted decimal comma", "Club,Carry\nDriver,\"220,04\"\n", ONE_DRIVER),
                Sample.read(
                        "note of two lines",
                        "Club,Note,Carry\nDriver,\"one\ntwo\",220\n5x,,1\n",
                        ONE_DRIVER,
                        "line 4: Golfer A has no club"),
                Sample.read(
                        "separators of thousands",
                        "Club;Spin;Carry\nDriver;2,450;220.0\n",
                        "A Driver spin 2450.0 carry 201.2"),
                Sample.refused("spin that reads two ways", "Club;Spin\nDriver;2,450\n", "two ways"),
                Sample.refused("a quotation mark that is not closed", "Club,Carry\n\"Driver,220\n", "is not closed"));
    }

    private static List<Sample> headings() {
        return List.of(
                Sample.read(
                        "another order and other words",
                        """
                        Total,Carry Distance,Back Spin,Vertical Launch,Ball Velocity,Swing Speed,Offline,Club Name
                        240,222.5,2450,12.1,140.5,96,12 L,Driver
                        155,148,6400,18,107,80,3.5R,7i
                        """,
                        BOTH),
                Sample.read(
                        "capitals and underscores",
                        "CLUB_NAME,CLUB_HEAD_SPEED,BALL_SPEED,LAUNCH_ANGLE,SPIN_RATE,CARRY_DIST,SIDE\n" + ROWS,
                        BOTH),
                Sample.read(
                        "words in one",
                        "clubName,clubSpeed,ballSpeed,launchAngle,spinRate,carryDistance,side\n" + ROWS,
                        BOTH),
                Sample.read(
                        "attack and landing",
                        "Club,Attack Angle,Descent Angle,Carry\nDriver,-1.5,38,220\n",
                        "A Driver attack -1.5 carry 201.2 landing 38.0"),
                Sample.read(
                        "backspin before total spin",
                        "Club,Total Spin,Backspin\nDriver,2600,2450\n",
                        "A Driver spin 2450.0"),
                Sample.refused("no club", "Bat,Carry\nDriver,220\n", "no heading means Club; found \"Bat\", \"Carry\""),
                Sample.refused("nothing measured", "Club,Total\nDriver,240\n", "no heading means Ball speed"),
                Sample.refused("two carries", "Club,Carry (m),Carry (yd)\nDriver,201,220\n", "two headings mean Carry"),
                Sample.read("two carries and a choice", "Club,Carry (m),Carry (yd)\nDriver,201.2,220\n", ONE_DRIVER)
                        .with("--column", "Carry (yd)=none"),
                Sample.read("a heading that is given", "Club,Flight\nDriver,220\n", ONE_DRIVER)
                        .with("--column", "Flight=Carry"),
                Sample.read("a heading that is given with its unit", "Club,Flight\nDriver,201.2\n", ONE_DRIVER)
                        .with("--column", "Flight=Carry (m)"));
    }

    private static List<Sample> units() {
        String metric = "Driver,154.5,226.1,12.1,2450,203.5,-11\n7 iron,128.7,172.2,18,6400,135.3,3.2\n";
        return List.of(
                Sample.read(
                        "units in brackets, metres in a yard book",
                        "Club,Club speed (km/h),Ball speed (km/h),Launch [deg],Spin [rpm],Carry (m),Side (m)\n"
                                + metric,
                        BOTH),
                Sample.read(
                        "units in a second row",
                        "Club,Club speed,Ball speed,Launch,Spin,Carry,Side\n,km/h,km/h,deg,rpm,m,m\n" + metric,
                        BOTH),
                Sample.read(
                        "units in brackets in a second row",
                        "Club,Club speed,Ball speed,Launch,Spin,Carry,Side\n,[km/h],[km/h],[\u00b0],[rpm],[m],[m]\n"
                                + metric,
                        BOTH),
                Sample.read(
                        "units behind the words",
                        "Club,Club speed km/h,Ball speed km/h,Launch deg,Spin rpm,Carry m,Side m\n" + metric,
                        BOTH),
                Sample.read("units by option", TITLES + metric, BOTH).with("--speed", "km/h", "--distance", "m"),
                Sample.read(
                        "units in cells",
                        "Club,Carry,Ball speed\nDriver,201.2 m,140.5 mph\n",
                        "A Driver ball 62.8 carry 201.2"),
                Sample.refused("speeds in km/h without a unit", TITLES + metric, "Ball speed cannot be in mph"),
                Sample.refused(
                        "carries in metres without a unit",
                        TITLES + "Driver,96,140.5,12.1,2450,203.5,-12\n7 iron,80,107,18,6400,135.3,3.5\n",
                        "Carry cannot be in yd"),
                Sample.refused(
                        "carries in metres under a wrong unit",
                        TITLES.replace("Carry", "Carry (yd)")
                                + "Driver,96,140.5,12.1,2450,203.5,-12\n7 iron,80,107,18,6400,135.3,3.5\n",
                        "Carry cannot be in yd"),
                Sample.refused(
                        "head speed above ball speed",
                        "Club,Club speed (mph),Ball speed (mph),Carry\nDriver,154,140.5,222\n",
                        "Head speed cannot be in mph"),
                Sample.refused(
                        "an unknown unit",
                        "Club,Ball speed (knots)\nDriver,120\n",
                        "must be one of mph, m/s, km/h, found \"knots\""),
                Sample.refused("two units", "Club,Carry (yd)\n,m\nDriver,220\n", "says yd, the row below says m"));
    }

    private static List<Sample> rows() {
        return List.of(
                Sample.read(
                                "a preamble",
                                "Session of the range\nPlayer: Golfer A\nDate,2026-05-14\n\n" + TITLES + ROWS,
                                BOTH.replace("Driver head", "Driver 2026-05-14 head")
                                        .replace("iron head", "iron 2026-05-14 head"))
                        .withoutGolfer(),
                Sample.read(
                        "averages at the end",
                        TITLES + ROWS + "Average,88,123,15,4400,185,1\nStd. Dev.,8,17,3,2000,37,8\n",
                        BOTH,
                        "line 4: an average",
                        "line 5: an average"),
                Sample.read(
                        "averages in a column that is not read",
                        "No,Club,Carry\n1,Driver,220\nAvg,Driver,219\n",
                        ONE_DRIVER,
                        "line 3: an average"),
                Sample.read(
                        "summaries in many words, next to places called alike",
                        """
                        Where,Club,Carry
                        Range 3,Driver,220
                        Session avg,Driver,219
                        Deviations,Driver,4
                        Range,Driver,30
                        Best,Driver,230
                        Overall,Driver,219
                        Variance,Driver,16
                        Std. Dev.,Driver,4
                        """,
                        ONE_DRIVER,
                        "line 3: an average",
                        "line 4: an average",
                        "line 5: an average",
                        "line 6: an average",
                        "line 7: an average",
                        "line 8: an average",
                        "line 9: an average"),
                Sample.read(
                        "headings again",
                        "Club,Carry\n,yd\nDriver,220\nClub,Carry\n,yd\n5w,190\n",
                        ONE_DRIVER + "; A 5 wood carry 173.7"),
                Sample.read(
                        "short names",
                        "Club,Carry\nDR,220\n1W,221\n5w,190\nH4,170\n7i,148\nPW,110\n52,95\nGW,96\nSW,85\n",
                        "A Driver carry 201.2; A Driver carry 202.1; A 5 wood carry 173.7; A 4 hybrid carry 155.4;"
                                + " A 7 iron carry 135.3; A PW carry 100.6; A 52 degree carry 86.9; A 52 degree carry 87.8;"
                                + " A 56 degree carry 77.7"),
                Sample.read(
                        "clubs that are not in the book",
                        "Club,Carry\nDriver,220\n3w,205\nDrivr,219\n7,150\n",
                        ONE_DRIVER,
                        "line 3: Golfer A has no club \"3w\".",
                        "line 4: Golfer A has no club \"Drivr\". Maybe \"Driver\"?",
                        "line 5: Golfer A has no club \"7\"."),
                Sample.read(
                        "sides",
                        "Club,Carry,Side\nDriver,220,12 L\nDriver,220,12.3R\nDriver,220,-12\nDriver,220,L 5\nDriver,220,-5 L\n",
                        ONE_DRIVER + " side -11.0; " + ONE_DRIVER + " side 11.2; " + ONE_DRIVER + " side -11.0; "
                                + ONE_DRIVER + " side -4.6",
                        "line 6: Side must have a sign or a side, not both"),
                Sample.read(
                        "cells without a number",
                        "Club,Spin,Carry\nDriver,--,220\nDriver,n/a,#N/A\n",
                        ONE_DRIVER,
                        "line 3: nothing was measured"),
                Sample.read(
                        "an impossible number",
                        "Club,Carry\nDriver,220\nDriver,221\nDriver,2200\n",
                        ONE_DRIVER + "; A Driver carry 202.1",
                        "line 4: Carry must be from"),
                Sample.read(
                        "too many cells",
                        "Club,Carry\nDriver,220\nDriver,221,5\n",
                        ONE_DRIVER,
                        "line 3: the row has more cells"),
                Sample.read(
                        "formula-like cells",
                        "Club,Carry,Note\nDriver,220,=1+1\n=1+1,200,\nDriver,=220,\n@SUM,1,\n",
                        ONE_DRIVER,
                        "line 3:",
                        "line 4: Carry must be a number",
                        "line 5:"),
                Sample.read(
                        "days",
                        "Club,Carry,Date\nDriver,220,31/05/2026\nDriver,220,05/06/2026\n",
                        "A Driver 2026-05-31 carry 201.2; A Driver 2026-06-05 carry 201.2"),
                Sample.refused(
                        "a day that reads two ways",
                        "Club,Carry,Date\nDriver,220,05/06/2026\n",
                        "Date must be a day that can be read in one way"));
    }

    private static List<Sample> whose() {
        String two = "Player,Club,Carry\nGolfer A,Driver,220\ngolfer b,Driver,210\nGolfer C,Driver,200\n";
        return List.of(
                Sample.read(
                                "two golfers",
                                two,
                                ONE_DRIVER + "; B Driver carry 192.0",
                                "line 4: the book has no golfer \"Golfer C\".")
                        .withoutGolfer(),
                Sample.read("one of two golfers", two, ONE_DRIVER, "hit by Golfer B", "no golfer \"Golfer C\""),
                Sample.read("a name that the book has not", "Player,Club,Carry\nAl,Driver,220\n", ONE_DRIVER),
                Sample.refused("nobody", "Club,Carry\nDriver,220\n", "give --golfer \"Golfer A\" or \"Golfer B\"")
                        .withoutGolfer());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void file_isReadAsMeant_orRefusedWithTheReason(Sample sample) throws Exception {
        Path book = SessionBook.sketch().write(folder.resolve("bag.xlsx"));
        Path file = SessionBook.file(folder.resolve("may.csv"), sample.text(), sample.charset());
        String[] options = sample.options().toArray(String[]::new);
        if (sample.refused()) {
            WorkbookProblems wrong =
                    assertThrows(WorkbookProblems.class, () -> SessionBook.add(book, List.of(file), options));
            String all = wrong.messages().stream().map(Message::text).collect(Collectors.joining(" "));
            assertTrue(all.contains(sample.shots()), all);
            return;
        }
        AddedShots added = SessionBook.add(book, List.of(file), options);
        assertEquals(sample.shots(), SessionBook.shown(added.added()));
        List<Message> left = added.files().get(0).left();
        assertEquals(sample.left().size(), left.size(), left.toString());
        for (int index = 0; index < left.size(); index++) {
            String line = left.get(index).cell() + ": " + left.get(index).text();
            assertTrue(line.contains(sample.left().get(index)), line);
        }
    }
}
