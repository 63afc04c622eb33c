package org.bagwright.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder;
import org.apache.xmlbeans.XmlBeans;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Finds in a book's file what makes a spreadsheet program offer to repair it: parts, relations and schema. */
final class PackageCheck {
    private static final String RELATION_SPACE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String COMPATIBILITY_SPACE = "http://schemas.openxmlformats.org/markup-compatibility/2006";

    private final BookPackage file;
    private final List<String> problems = new ArrayList<>();

    private PackageCheck(BookPackage file) {
        this.file = file;
    }

    /** Everything wrong with the parts of a file and with what is in its sheets. */
    static List<String> problems(Path book) throws IOException {
        BookPackage file = BookPackage.of(book);
        PackageCheck check = new PackageCheck(file);
        check.entries();
        check.contentTypes();
        check.reach();
        file.parts().keySet().stream().filter(file::isXml).forEach(check::part);
        check.problems.addAll(SheetCheck.problems(file));
        return check.problems;
    }

    /** Where the parts named do not follow the published schema of their kind. */
    static List<String> schemaProblems(Path book, List<String> parts) throws IOException {
        PackageCheck check = new PackageCheck(BookPackage.of(book));
        parts.forEach(check::schema);
        return check.problems;
    }

    private void entries() {
        Set<String> seen = new HashSet<>();
        for (String entry : file.entries()) {
            require(seen.add(entry.toLowerCase(Locale.ROOT)), entry, "appears twice");
        }
    }

    private void contentTypes() {
        Element types = file.xml(BookPackage.CONTENT_TYPES).getDocumentElement();
        Set<String> endings = new HashSet<>();
        Set<String> named = new HashSet<>();
        for (Element one : BookPackage.all(types, "Default")) {
            String ending = one.getAttribute("Extension").toLowerCase(Locale.ROOT);
            require(endings.add(ending), ending, "has two default types");
        }
        for (Element one : BookPackage.all(types, "Override")) {
            String part = one.getAttribute("PartName").substring(1);
            require(named.add(part), part, "has two types");
            require(file.parts().containsKey(part), part, "has a type but is not there");
        }
        for (String part : file.contents()) {
            String ending = part.substring(part.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
            require(named.contains(part) || endings.contains(ending), part, "has no content type");
        }
    }

    /** Every part can be come to from the root of the file, and no relation leads to nothing. */
    private void reach() {
        Set<String> reached = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(""));
        while (!open.isEmpty()) {
            String part = open.pop();
            Set<String> ids = new HashSet<>();
            for (Element relation : file.relationElements(part)) {
                String id = relation.getAttribute("Id");
                require(ids.add(id), part, "has two relations " + id);
                String target = file.relations(part).get(id);
                if (!BookPackage.isOutside(relation)) {
                    require(file.parts().containsKey(target), part, "leads to " + target + ", which is not there");
                    if (file.parts().containsKey(target) && reached.add(target)) {
                        open.push(target);
                    }
                }
            }
        }
        file.contents().forEach(part -> require(reached.contains(part), part, "is an orphan"));
        for (String part : file.parts().keySet()) {
            if (part.endsWith(".rels") && !part.equals("_rels/.rels")) {
                String owner = part.replace("_rels/", "").replaceAll("\\.rels$", "");
                require(file.parts().containsKey(owner), part, "belongs to no part");
            }
        }
    }

    private void part(String part) {
        walk(part, file.xml(part).getDocumentElement(), file.relations(part).keySet());
    }

    private void walk(String part, Element element, Set<String> ids) {
        NamedNodeMap attributes = element.getAttributes();
        for (int index = 0; index < attributes.getLength(); index++) {
            attribute(part, element, (Attr) attributes.item(index), ids);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                walk(part, inner, ids);
            }
        }
    }

    private void attribute(String part, Element element, Attr attribute, Set<String> ids) {
        if (RELATION_SPACE.equals(attribute.getNamespaceURI())
                && !attribute.getValue().isEmpty()) {
            require(ids.contains(attribute.getValue()), part, "names the relation " + attribute.getValue());
        }
        boolean ignorable = COMPATIBILITY_SPACE.equals(attribute.getNamespaceURI());
        boolean requires = "Choice".equals(element.getLocalName()) && "Requires".equals(attribute.getName());
        if (ignorable || requires) {
            for (String prefix : attribute.getValue().trim().split("\\s+", -1)) {
                require(element.lookupNamespaceURI(prefix) != null, part, "does not declare the prefix " + prefix);
            }
        }
    }

    private void schema(String part) {
        List<XmlError> errors = new ArrayList<>();
        try {
            XmlObject read = XmlBeans.typeLoaderUnion(TypeSystemHolder.typeSystem, XmlBeans.getBuiltinTypeSystem())
                    .parse(new ByteArrayInputStream(file.parts().get(part)), null, null);
            require(!read.schemaType().isNoType() && read.schemaType().isDocumentType(), part, "is of no known kind");
            read.validate(new XmlOptions().setErrorListener(errors));
        } catch (XmlException | IOException broken) {
            problems.add(part + " is no XML: " + broken.getMessage());
        }
        errors.forEach(error -> problems.add(part + ": " + error.getMessage()));
    }

    private void require(boolean holds, String where, String what) {
        if (!holds) {
            problems.add(where + " " + what);
        }
    }
}
