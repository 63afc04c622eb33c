package org.bagwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** What an XML document says, line by line, whatever its prefixes, the order of its attributes and its line breaks. */
final class SameXml {
    private static final String DECLARATION = "http://www.w3.org/2000/xmlns/";

    /** Attributes that say the same when they are not there: a cell has format 0, a sheet is not selected. */
    private static final Map<String, String> DEFAULTS = Map.of("c", "s", "sheetView", "tabSelected");

    private final List<String> lines = new ArrayList<>();

    private SameXml() {}

    static List<String> lines(Document document) {
        SameXml xml = new SameXml();
        xml.add("", document.getDocumentElement());
        return xml.lines;
    }

    /** What each element of a name says, in order. */
    static List<String> items(Document document, String name) {
        return BookPackage.all(document.getDocumentElement(), name).stream()
                .map(element -> {
                    SameXml xml = new SameXml();
                    xml.add("", element);
                    return String.join("\n", xml.lines);
                })
                .toList();
    }

    private void add(String path, Element element) {
        String here = path + "/" + element.getLocalName();
        lines.add(here + " of " + element.getNamespaceURI() + " " + attributes(element));
        boolean leaf = true;
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                leaf = false;
                add(here, inner);
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text && (leaf || !text.getData().isBlank())) {
                lines.add(here + " says " + text.getData());
            }
        }
    }

    private static SortedMap<String, String> attributes(Element element) {
        SortedMap<String, String> attributes = new TreeMap<>();
        NamedNodeMap all = element.getAttributes();
        for (int index = 0; index < all.getLength(); index++) {
            Attr one = (Attr) all.item(index);
            if (!DECLARATION.equals(one.getNamespaceURI())) {
                String space = one.getNamespaceURI() == null ? "" : "{" + one.getNamespaceURI() + "}";
                attributes.put(space + one.getLocalName(), truth(one.getValue()));
            }
        }
        attributes.remove(DEFAULTS.getOrDefault(element.getLocalName(), ""), "0");
        return attributes;
    }

    private static String truth(String value) {
        return value.equals("true") ? "1" : value.equals("false") ? "0" : value;
    }
}
