package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.InputSheet;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.ShotColumn;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every heading of every input sheet in other words and with slips: understood or said, never silent. */
@Tag("analytic")
class HeadingWordsTest {
    private static final String UNREAD = "not read: ";

    /** Words of the trade at large for headings, from memory. */
    private static final Map<String, List<String>> SAME = Map.of(
            "Golfers",
            List.of(
                    "Player=Golfer",
                    "Golfer name=Golfer",
                    "Driver club head speed=Driver speed",
                    "7-iron head speed=Iron speed",
                    "Min gap=Gap least",
                    "Max gap=Gap most",
                    "Maximum changes=Most changes",
                    "Max. open=Most open",
                    "Gap target=Gap wish",
                    "Comments=Note"),
            "Clubs",
            List.of(
                    "Player=Golfer",
                    "Club type=Kind",
                    "Static loft=Loft",
                    "Lie angle=Lie",
                    "Face angle=Face",
                    "Club length=Length",
                    "Playing length=Length",
                    "Adapter=Sleeve",
                    "Current setting=Setting",
                    "Swing weight=Swingweight",
                    "Target swing weight=Swingweight target",
                    "Head weight=Head mass",
                    "Shaft wt.=Shaft mass",
                    "Grip weight=Grip mass",
                    "Balance point=Shaft balance",
                    "Center of gravity height=CG height",
                    "CoG depth=CG depth",
                    "Head MOI=Head inertia",
                    "Target loft=Loft target",
                    "Desired carry=Carry target",
                    "In the bag=In bag"),
            "Sleeves",
            List.of("Adaptor=Sleeve", "Mark=Setting", "Bend angle=Bend", "Loft adjustment=Loft change"),
            "Readings",
            List.of("Loft reading=Loft", "Measured lie=Lie", "Player name=Golfer"),
            "Shots",
            List.of(
                    "Backspin=Spin",
                    "Back spin=Spin",
                    "Spin rate=Spin",
                    "Club speed=Head speed",
                    "Club head speed=Head speed",
                    "Clubhead speed=Head speed",
                    "Swing speed=Head speed",
                    "Ball=Ball speed",
                    "BallSpeed=Ball speed",
                    "Launch angle=Launch",
                    "Carry distance=Carry",
                    "Attack angle=Attack",
                    "Angle of attack=Attack"),
            "Weights",
            List.of("Weight=Mass", "Weight port=Port"),
            "Stock",
            List.of("Qty=Count", "Quantity=Count", "Part=Item"),
            "Aims",
            List.of("Tol.=Tolerance", "Required=Must", "Priority=Importance"));

    @ParameterizedTest
    @EnumSource(InputSheet.class)
    void wordsOfTheTrade_meanTheColumn(InputSheet sheet) {
        for (String pair : SAME.get(sheet.schema().name())) {
            String[] words = pair.split("=");
            assertEquals(Optional.of(words[1]), sheet.schema().column(words[0]).map(Column::header), pair);
        }
    }

    @ParameterizedTest
    @EnumSource(InputSheet.class)
    void everyWordForAColumn_meansThatColumnAlone(InputSheet sheet) {
        for (Column column : sheet.schema().columns()) {
            Stream.concat(Stream.of(column.header()), column.alsoCalled().stream())
                    .forEach(word ->
                            assertEquals(Optional.of(column), sheet.schema().column(word), word));
        }
    }

    @ParameterizedTest
    @EnumSource(InputSheet.class)
    void otherWritingOfAHeading_isUnderstood(InputSheet sheet) {
        for (Column column : sheet.schema().columns()) {
            String header = column.header();
            for (String written : List.of(
                    header.toUpperCase(Locale.ROOT),
                    "  " + header.toLowerCase(Locale.ROOT) + " ",
                    header.replace(" ", ""),
                    header.replace(' ', '-'),
                    header.replace(' ', '_'),
                    header.replace(" ", "  "),
                    header + "s",
                    header + ".")) {
                Optional<Column> found = sheet.schema().column(written);
                boolean twicePlural = header.endsWith("s");
                boolean plural = written.equals(header + "s") && (header.length() < 3 || twicePlural);
                assertTrue(found.equals(Optional.of(column)) || plural, sheet + ": " + written + " is " + found);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(InputSheet.class)
    void headingWithASlip_isUnderstoodOrSaidWithItsColumn(InputSheet sheet) {
        SheetSchema schema = sheet.schema();
        for (Column column : schema.columns()) {
            for (String slip : slips(column.header())) {
                boolean understood = schema.column(slip).filter(column::equals).isPresent();
                boolean isOther = schema.columns().stream()
                        .anyMatch(other -> other.header().equalsIgnoreCase(slip.strip()));
                boolean isShort = column.header().length() <= 3;
                assertTrue(
                        understood || isOther || schema.column(slip).isEmpty(),
                        sheet + ": " + slip + " is read as " + schema.column(slip));
                assertTrue(
                        understood
                                || isOther
                                || isShort
                                || schema.closest(slip, List.of(column)).isPresent(),
                        sheet + ": " + slip + " is said without a guess");
            }
        }
    }

    /** A letter dropped, doubled, or swapped with the next one. */
    private static Set<String> slips(String header) {
        Set<String> slips = new LinkedHashSet<>();
        for (int index = 0; index < header.length(); index++) {
            String before = header.substring(0, index);
            String letter = header.substring(index, index + 1);
            String after = header.substring(index + 1);
            slips.add(before + after);
            slips.add(before + letter + letter + after);
            if (!after.isEmpty()) {
                slips.add(before + after.charAt(0) + letter + after.substring(1));
            }
        }
        slips.remove(header);
        slips.removeIf(String::isBlank);
        return slips;
    }

    @ParameterizedTest
    @EnumSource(InputSheet.class)
    void headingNotRead_isSaidOnceASheet(InputSheet sheet) {
        for (Column column : sheet.schema().columns()) {
            for (String wrong : List.of(column.header() + "x", "Apex of " + column.header(), "Smash")) {
                List<String> said = unread(sheet, List.of(wrong));
                assertEquals(1, said.size(), wrong + " " + said);
                assertTrue(said.get(0).contains("\"" + wrong + "\""), said.get(0));
            }
        }
    }

    private static List<String> unread(InputSheet sheet, List<String> extra) {
        TestBook book = TestBook.sound();
        List<Object> headings = new ArrayList<>();
        sheet.schema().columns().forEach(column -> headings.add(column.header()));
        headings.addAll(extra);
        String name = sheet.schema().name();
        if (List.of("Golfers", "Clubs", "Sleeves", "Shots", "Aims").contains(name)) {
            book.without(name);
        }
        book.sheet(name).row(headings.toArray());
        return book.read().messages().stream()
                .map(message -> message.cell() + ": " + message.text())
                .filter(line -> line.contains(UNREAD))
                .toList();
    }

    @Test
    void severalHeadingsNotRead_areOneMessageWithWhatWasProbablyMeant() {
        TestBook book = TestBook.sound()
                .set("Shots!F1", "Bakcspin")
                .set("Shots!I1", "Apex")
                .set("Shots!J1", "Note");
        assertEquals(
                List.of("Shots!F1: not read: \"Bakcspin\" (Maybe Spin?), \"Apex\"; * before a heading marks it as your"
                        + " own."),
                book.lines(Message.Severity.WARNING).stream()
                        .filter(line -> line.contains(UNREAD))
                        .toList());
    }

    @Test
    void headingsMarkedAsOwn_areNeitherReadNorSaid() {
        TestBook book = TestBook.sound()
                .set("Shots!I1", "*Spin")
                .set("Shots!J1", "* Apex")
                .set("Shots!I2", 9999);
        assertEquals(
                List.of(),
                book.read().messages().stream()
                        .filter(message -> message.text().contains(UNREAD))
                        .toList());
        assertEquals(2700, book.book().shots().get(0).measured().spinRpm().orElseThrow());
    }

    @Test
    void twoHeadingsForOneColumn_areAProblemAtTheSecond() {
        assertEquals(
                List.of("Shots!I1: \"Backspin\" means the column Spin, which appears twice, first in Shots!F1; expected"
                        + " once. Put * before the heading that should not be read."),
                TestBook.sound().set("Shots!I1", "Backspin").problems());
    }

    @Test
    void otherAnglesAndTotals_areNotTakenForTheColumn() {
        for (String other : List.of(
                "Total",
                "Total distance",
                "Launch direction",
                "Spin axis",
                "Side spin",
                "Smash factor",
                "Dynamic loft")) {
            assertEquals(Optional.empty(), ShotColumn.SHEET.column(other), other);
        }
    }

    @Test
    void lengthOfTheShaft_isNotTheLengthOfTheClub() {
        assertEquals(Optional.empty(), InputSheet.CLUBS.schema().column("Shaft length"));
        TestBook book = TestBook.sound().set("Clubs!G1", "Shaft length");
        assertTrue(book.lines(Message.Severity.WARNING).stream()
                .anyMatch(line -> line.startsWith("Clubs!G1: not read: \"Shaft length\" (Maybe ")));
    }

    @Test
    void labelOfStartWithASlip_isSaid() {
        TestBook book = TestBook.sound();
        book.workbook().getSheet("Start").createRow(5);
        book.set("Start!A6", "Altitute").set("Start!B6", 1600);
        assertTrue(
                book.lines(Message.Severity.WARNING).contains("Start!A6: not read: \"Altitute\" (Maybe Altitude?)."));
    }
}
