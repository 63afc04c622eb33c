package org.bagwright.workbook.cells;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * The text of one part of a workbook's file. The library reads some parts only when it writes a book, and names none in its
 * faults.
 */
final class PartXml {
    /** Charts have some thirty elements one inside another; the library fails above a thousand. */
    private static final int MOST_DEPTH = 256;

    private static final String LEXICAL = "http://xml.org/sax/properties/lexical-handler";

    private final String name;
    private final Path file;
    private String wrong = "";

    PartXml(String name, Path file) {
        this.name = name;
        this.file = file;
    }

    /** Whether the library reads it as XML; the fitter's own attachments are his, and old drawings are often no XML. */
    private boolean isXml() {
        return name.endsWith(".rels") || (name.endsWith(".xml") && !name.startsWith("customXml/"));
    }

    /** Reads it if it is XML. */
    void read(InputStream content) throws IOException {
        if (!isXml()) {
            return;
        }
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            SAXParser parser = factory.newSAXParser();
            Nesting nesting = new Nesting();
            parser.setProperty(LEXICAL, nesting);
            parser.parse(content, nesting);
        } catch (SAXParseException broken) {
            wrong = "is not sound XML, line " + broken.getLineNumber() + " character " + broken.getColumnNumber();
        } catch (SAXException found) {
            wrong = found.getMessage();
        } catch (ParserConfigurationException never) {
            throw new IllegalStateException(never);
        }
    }

    void requireSound() throws UnreadableBookException {
        if (!wrong.isEmpty()) {
            throw UnreadableBookException.damagedPart(file, name, wrong);
        }
    }

    /** Follows how deep the elements are one inside another. */
    private static final class Nesting extends DefaultHandler2 {
        private int depth;

        @Override
        public void startDTD(String root, String publicId, String systemId) throws SAXException {
            throw new SAXException("has a document type, which no spreadsheet program writes");
        }

        @Override
        public void startElement(String uri, String local, String qualified, Attributes attributes)
                throws SAXException {
            if (++depth > MOST_DEPTH) {
                throw new SAXException("has more than " + MOST_DEPTH + " elements one inside another");
            }
        }

        @Override
        public void endElement(String uri, String local, String qualified) {
            depth--;
        }
    }
}
