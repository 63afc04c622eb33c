package org.bagwright.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The parts of a book's file as they lie in it, by name without a leading stroke, and what leads from one to another. */
record BookPackage(Map<String, byte[]> parts, List<String> entries) {
    static final String CONTENT_TYPES = "[Content_Types].xml";

    static BookPackage of(Path file) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        List<String> entries = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                entries.add(entry.getName());
                try (InputStream input = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), input.readAllBytes());
                }
            }
        }
        return new BookPackage(parts, entries);
    }

    /** Names of the parts that hold content, not relations or content types. */
    List<String> contents() {
        return parts.keySet().stream()
                .filter(name -> !name.equals(CONTENT_TYPES) && !name.endsWith(".rels"))
                .toList();
    }

    boolean isXml(String part) {
        return part.endsWith(".xml") || part.endsWith(".rels") || part.endsWith(".vml");
    }

    Document xml(String part) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(part)));
        } catch (SAXException | IOException | javax.xml.parsers.ParserConfigurationException broken) {
            throw new AssertionError(part + " is no XML: " + broken.getMessage(), broken);
        }
    }

    /** Where a part leads: the target of each relation, by its id; a target outside the file as it is written. */
    Map<String, String> relations(String part) {
        Map<String, String> targets = new LinkedHashMap<>();
        for (Element relation : relationElements(part)) {
            targets.put(relation.getAttribute("Id"), target(part, relation));
        }
        return targets;
    }

    List<Element> relationElements(String part) {
        int slash = part.lastIndexOf('/') + 1;
        String list = part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
        return parts.containsKey(list) ? all(xml(list).getDocumentElement(), "Relationship") : List.of();
    }

    static boolean isOutside(Element relation) {
        return relation.getAttribute("TargetMode").equals("External");
    }

    private static String target(String part, Element relation) {
        String target = relation.getAttribute("Target");
        return isOutside(relation)
                ? target
                : URI.create("/" + part).resolve(target).getPath().substring(1);
    }

    /** The part of the sheet of that name. */
    String sheet(String name) {
        for (Element sheet : all(xml("xl/workbook.xml").getDocumentElement(), "sheet")) {
            if (sheet.getAttribute("name").equals(name)) {
                return relations("xl/workbook.xml").get(sheet.getAttribute("r:id"));
            }
        }
        throw new AssertionError("no sheet " + name);
    }

    /** The type that is written for a part, by its own name or by the ending of it. */
    String contentType(String part) {
        Element types = xml(CONTENT_TYPES).getDocumentElement();
        String ending = part.substring(part.lastIndexOf('.') + 1);
        return all(types, "Override").stream()
                .filter(one -> one.getAttribute("PartName").equals("/" + part))
                .findFirst()
                .or(() -> all(types, "Default").stream()
                        .filter(one -> one.getAttribute("Extension").equals(ending))
                        .findFirst())
                .orElseThrow()
                .getAttribute("ContentType");
    }

    /** Every element of a local name, at any depth. */
    static List<Element> all(Element root, String name) {
        NodeList found = root.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int index = 0; index < found.getLength(); index++) {
            elements.add((Element) found.item(index));
        }
        return elements;
    }
}
