package org.bagwright.dist;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** A library that Maven resolved for running the program, as it lies in the local repository. */
record ShippedLibrary(Path jar) {
    private static final Pattern LEGAL_TEXT =
            Pattern.compile("META-INF/[^/]*(LICENSE|NOTICE)[^/]*", Pattern.CASE_INSENSITIVE);

    /** All of them, from the list that the build writes before the tests. */
    static List<ShippedLibrary> all() throws IOException {
        String list = Files.readString(Path.of("target", "shipped.txt")).strip();
        return Stream.of(list.split(Pattern.quote(File.pathSeparator)))
                .map(jar -> new ShippedLibrary(Path.of(jar)))
                .toList();
    }

    String version() {
        return folder().getFileName().toString();
    }

    String artifact() {
        return folder().getParent().getFileName().toString();
    }

    /** The licence that the library's project states, or the nearest parent project that states one. */
    String licence() throws Exception {
        Path pom = folder().resolve(artifact() + "-" + version() + ".pom");
        while (true) {
            Element project = project(pom);
            Element licences = child(project, "licenses");
            if (licences != null) {
                return shortName(text(child(licences, "license"), "name"));
            }
            pom = parentPom(pom, project);
        }
    }

    /** Licence and notice texts inside the jar, by name. */
    Map<String, String> legalTexts() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            for (var entry : file.stream().toList()) {
                if (LEGAL_TEXT.matcher(entry.getName()).matches()) {
                    byte[] bytes = file.getInputStream(entry).readAllBytes();
                    texts.put(entry.getName(), plain(new String(bytes, StandardCharsets.UTF_8)));
                }
            }
        }
        return texts;
    }

    /** A text without what differs between systems and editors: line ends, blanks at their end, outer blank lines. */
    static String plain(String text) {
        return text.lines()
                .map(String::stripTrailing)
                .reduce("", (all, line) -> all + "\n" + line)
                .strip();
    }

    private Path folder() {
        return jar.getParent();
    }

    private static Path parentPom(Path pom, Element project) {
        Element parent = child(project, "parent");
        String ownGroup = text(project, "groupId") == null ? text(parent, "groupId") : text(project, "groupId");
        Path repository = pom.getParent().getParent().getParent();
        for (int up = 0; up < ownGroup.split("\\.").length; up++) {
            repository = repository.getParent();
        }
        String artifact = text(parent, "artifactId");
        String version = text(parent, "version");
        return repository
                .resolve(text(parent, "groupId").replace('.', '/'))
                .resolve(artifact)
                .resolve(version)
                .resolve(artifact + "-" + version + ".pom");
    }

    private static Element project(Path pom) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(pom.toFile())
                .getDocumentElement();
    }

    private static Element child(Element of, String name) {
        for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && element.getTagName().equals(name)) {
                return element;
            }
        }
        return null;
    }

    private static String text(Element of, String name) {
        Element found = child(of, name);
        return found == null ? null : found.getTextContent().strip();
    }

    private static String shortName(String stated) {
        String name = stated.toLowerCase(Locale.ROOT);
        if (name.contains("apache") && name.contains("2")) {
            return "Apache-2.0";
        }
        return name.startsWith("mit") || name.contains("mit license") ? "MIT" : stated;
    }
}
