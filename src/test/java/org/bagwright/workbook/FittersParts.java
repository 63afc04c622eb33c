package org.bagwright.workbook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bagwright.workbook.schema.ResultSheet;
import org.w3c.dom.Element;

/** The parts of a planned book that one comes to without going through a result sheet. */
final class FittersParts {
    private FittersParts() {}

    static Set<String> of(BookPackage book) {
        Set<String> results = BookPackage.all(book.xml("xl/workbook.xml").getDocumentElement(), "sheet").stream()
                .map(sheet -> sheet.getAttribute("name"))
                .filter(ResultSheet.NAMES::contains)
                .map(book::sheet)
                .collect(Collectors.toSet());
        Set<String> reached = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>();
        open.push("");
        while (!open.isEmpty()) {
            String part = open.pop();
            for (Element relation : book.relationElements(part)) {
                String target = book.relations(part).get(relation.getAttribute("Id"));
                if (!BookPackage.isOutside(relation) && !results.contains(target) && reached.add(target)) {
                    open.push(target);
                }
            }
        }
        return reached;
    }
}
