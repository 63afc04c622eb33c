package org.bagwright.workbook;

/**
 * A sound book with kits and stock. On Clubs the columns K to M are Kit, Weighting and In bag; Front has the weightings
 * Light (4 g) and Heavy (4 g and 12 g), Rear has one only (7 g).
 */
public final class KitBook {
    private KitBook() {}

    public static TestBook sound() {
        return TestBook.sound()
                .set("Clubs!K1", "Kit")
                .set("Clubs!L1", "Weighting")
                .set("Clubs!M1", "In bag")
                .set("Clubs!K2", "Front")
                .set("Clubs!L2", "Light")
                .sheet("Weights")
                .row("Kit", "Weighting", "Port", "Mass", "X", "Y", "Z")
                .row("Front", "Light", "A", 4, 20, 10, -5)
                .row("Front", "Light", "B", 0)
                .row("Front", "Heavy", "A", 4, 20, 10, -5)
                .row("Front", "Heavy", "B", 12, 20, -10, -5)
                .row("Rear", "Only", "R", 7, -40, 0, -8)
                .sheet("Stock")
                .row("Item", "Count")
                .row("Front: 12 g", 1);
    }
}
