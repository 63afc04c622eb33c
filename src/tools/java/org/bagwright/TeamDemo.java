package org.bagwright;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Twelve right- and left-handed golfers with bags of 5 to 14 clubs, who share a bench that has too little of some pieces. */
final class TeamDemo {
    /** A club as it is sold: kind, loft and lie in degrees, length in inches. */
    private record Model(String name, String kind, double loftDeg, double lieDeg, double lengthIn) {}

    private static final Map<String, Model> MODELS = Map.ofEntries(
            model("D", "Driver", "driver", 10.5, 58, 45),
            model("3W", "3 wood", "wood", 15, 57.5, 43),
            model("5W", "5 wood", "wood", 18.5, 58, 42.25),
            model("7W", "7 wood", "wood", 21.5, 58.5, 41.5),
            model("3H", "3 hybrid", "hybrid", 19.5, 58.5, 40.5),
            model("4H", "4 hybrid", "hybrid", 23, 59, 39.75),
            model("5H", "5 hybrid", "hybrid", 26, 59.5, 39),
            model("4", "4 iron", "iron", 21.5, 60.5, 38.5),
            model("5", "5 iron", "iron", 25, 61, 38),
            model("6", "6 iron", "iron", 28.5, 61.5, 37.5),
            model("7", "7 iron", "iron", 32.5, 62.5, 37),
            model("8", "8 iron", "iron", 36.5, 63, 36.5),
            model("9", "9 iron", "iron", 41, 63.5, 36),
            model("PW", "Pitching wedge", "iron", 45.5, 64, 35.5),
            model("50", "50 wedge", "wedge", 50, 64, 35.5),
            model("54", "54 wedge", "wedge", 54.5, 64, 35.25),
            model("58", "58 wedge", "wedge", 58.5, 64, 35),
            model("P", "Putter", "putter", 3, 70, 34));

    /**
     * A golfer and his bag.
     *
     * @param liesDeg how much more upright than sold his irons and wedges should be
     * @param most the most items he lets change; null is no limit
     * @param weighting what is in his driver today; null is a driver without ports
     * @param bag his clubs from the longest
     */
    private record Member(
            String letter, String hand, double driverMph, double liesDeg, Integer most, String weighting, String bag) {
        String name() {
            return "Golfer " + letter;
        }

        List<Model> clubs() {
            return List.of(bag.split(" ")).stream().map(MODELS::get).toList();
        }
    }

    private static final List<Member> MEMBERS = List.of(
            new Member("A", "R", 104, 1, null, "Light", "D 3W 5W 4H 5 6 7 8 9 PW 50 54 58 P"),
            new Member("B", "L", 98, -0.5, null, "Light", "D 3W 3H 4 5 6 7 8 9 PW 50 54 58 P"),
            new Member("C", "R", 92, 0.5, null, "Light", "D 3W 7W 4H 5 6 7 8 9 PW 50 54 P"),
            new Member("D", "R", 88, 0, 8, "Even", "D 5W 4H 5H 6 7 8 9 PW 54 P"),
            new Member("E", "L", 109, 1, null, "Light", "D 3W 3H 4 5 6 7 8 9 PW 50 54 58 P"),
            new Member("F", "R", 78, -1, 6, null, "D 5W 7W 5H 7 8 9 PW 54 P"),
            new Member("G", "R", 95, 0.5, null, "Light", "D 3W 5W 4H 6 7 8 9 PW 50 54 58 P"),
            new Member("H", "R", 84, 0, null, null, "D 5W 4H 6 7 8 9 PW 54 P"),
            new Member("I", "L", 90, -0.5, 6, "Even", "D 5W 4H 5 6 7 8 9 PW 50 54 P"),
            new Member("J", "R", 113, 1, null, "Light", "D 3W 4 5 6 7 8 9 PW 50 54 58 P"),
            new Member("K", "R", 74, -1, 4, null, "D 5W 5H 7 9 54 P"),
            new Member("L", "L", 70, -1, null, null, "D 7W 7 PW P"));

    private TeamDemo() {}

    private static Map.Entry<String, Model> model(
            String code, String name, String kind, double loftDeg, double lieDeg, double lengthIn) {
        return Map.entry(code, new Model(name, kind, loftDeg, lieDeg, lengthIn));
    }

    static XSSFWorkbook book() throws IOException {
        XSSFWorkbook book = BookFiller.blank();
        DemoBooks.introduce(
                book, "A team of twelve", "Shows one bench shared by all, which runs short of some pieces.");
        BookFiller golfers = new BookFiller(book, "Golfers")
                .under("Golfer, Hand, Driver speed, Most open, Most closed, Gap wish, Most changes");
        BookFiller clubs = new BookFiller(book, "Clubs");
        for (Member member : MEMBERS) {
            golfers.row(member.name(), member.hand(), member.driverMph(), -2.5, 2.5, "even", member.most());
            bag(clubs, member);
        }
        BookFiller sleeves = new BookFiller(book, "Sleeves");
        DemoBooks.eightMarks(sleeves, "Sleeve P", 1.5);
        DemoBooks.fourMarks(sleeves, "Sleeve Q", 1.0);
        shots(new BookFiller(book, "Shots"));
        weights(new BookFiller(book, "Weights"));
        new BookFiller(book, "Stock")
                .under("Item, Count")
                .row("Kit D: 12 g", 2)
                .row("Kit D: 6 g", 3)
                .row("Sleeve Q", 1);
        return book;
    }

    private static void bag(BookFiller clubs, Member member) {
        int slot = 1;
        for (Model model : member.clubs()) {
            switch (model.kind()) {
                case "driver", "wood", "hybrid" -> sleeved(clubs, member, slot, model);
                case "putter" ->
                    clubs.under("Golfer, Slot, Club, Kind, Loft, Lie, Length")
                            .row(member.name(), slot, model.name(), "putter", 3, 70, 34);
                default -> bent(clubs, member, slot, model);
            }
            slot++;
        }
    }

    private static void sleeved(BookFiller clubs, Member member, int slot, Model model) {
        boolean hybrid = model.kind().equals("hybrid");
        boolean ported = model.kind().equals("driver") && member.weighting() != null;
        int turned = member.letter().charAt(0) + 3 * slot;
        clubs.under("Golfer, Slot, Club, Kind, Loft, Lie, Stated at, Length, Sleeve, Setting, Kit, Weighting,"
                        + " Swingweight target, Head mass, CG depth, Head inertia")
                .row(
                        member.name(),
                        slot,
                        model.name(),
                        model.kind(),
                        model.loftDeg() + asMade(member, slot),
                        model.lieDeg(),
                        hybrid ? "A" : "1",
                        model.lengthIn(),
                        hybrid ? "Sleeve Q" : "Sleeve P",
                        hybrid ? "ABCD".substring(turned % 4, turned % 4 + 1) : String.valueOf(1 + turned % 8),
                        ported ? "Kit D" : null,
                        ported ? member.weighting() : null,
                        ported ? "D3" : null,
                        ported ? 188 : null,
                        ported ? 36 : null,
                        ported ? 4450 : null);
    }

    private static void bent(BookFiller clubs, Member member, int slot, Model model) {
        clubs.under("Golfer, Slot, Club, Kind, Loft, Lie, Length, Bend limit, Bend step, Lie target")
                .row(
                        member.name(),
                        slot,
                        model.name(),
                        model.kind(),
                        model.loftDeg() + asMade(member, slot),
                        model.lieDeg(),
                        model.lengthIn(),
                        1,
                        0.5,
                        model.lieDeg() + member.liesDeg());
    }

    /** How far a loft is off as made: within a degree, which is common practice. */
    private static double asMade(Member member, int slot) {
        return ((member.letter().charAt(0) * 5 + slot * 7) % 5 - 2) * 0.5;
    }

    private static void shots(BookFiller shots) {
        shots.under("Golfer, Club, Head speed, Ball speed, Launch, Spin, Carry, Shots")
                .row("Golfer A", "Driver", 104, 153, 11.2, 2650, 248, 8)
                .row("Golfer A", "7 iron", 85, 117, 18.2, 6500, 167, 8)
                .row("Golfer D", "Driver", 88, 128, 12.4, 2700, 199, 8)
                .row("Golfer D", "7 iron", 73, 99, 18.8, 5700, 137, 8)
                .row("Golfer E", "Driver", 109, 160, 10.6, 2550, 261, 8)
                .row("Golfer H", "Driver", 84, 122, 12.8, 2850, 188, 8)
                .row("Golfer H", "7 iron", 70, 95, 19.4, 5600, 130, 8)
                .row("Golfer L", "Driver", 70, 101, 14.1, 3000, 146, 8);
    }

    private static void weights(BookFiller weights) {
        weights.under("Kit, Weighting, Port, Mass, X, Y, Z")
                .row("Kit D", "Light", "Front", 2, 24, -5, -24)
                .row("Kit D", "Light", "Back", 2, -62, 0, -12)
                .row("Kit D", "Even", "Front", 6, 24, -5, -24)
                .row("Kit D", "Even", "Back", 6, -62, 0, -12)
                .row("Kit D", "Back", "Front", 2, 24, -5, -24)
                .row("Kit D", "Back", "Back", 12, -62, 0, -12);
    }
}
