package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.bagwright.ChildJava;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A fitter's book stays on his machine and in his folder. */
@Tag("regression")
class PrivacyTest {
    private static final String EXTERNAL =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink";

    @TempDir
    Path folder;

    /** With a plain file in the place of the folder for temporary files nothing could be put there. */
    @Test
    void readingAndWriting_needNoFileInTheSystemsTemporaryFolder() throws Exception {
        Path book = Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
        Path noFolder = Files.writeString(folder.resolve("no-folder"), "");
        assertEquals(0, run(folder, TemporaryUse.class.getName()), "the means of this test work");
        assertEquals(1, run(noFolder, TemporaryUse.class.getName()), "the means of this test work");
        assertEquals(0, run(noFolder, "org.bagwright.cli.Main", "plan", book, "--in-place"));
        assertTrue(Files.size(book) > 0);
    }

    private static int run(Path temporary, Object... main) throws IOException, InterruptedException {
        List<Object> words = new ArrayList<>(List.of("-Djava.io.tmpdir=" + temporary));
        words.addAll(List.of(main));
        return ChildJava.of(words.toArray())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    /** A program that does what is not to be done. */
    static final class TemporaryUse {
        private TemporaryUse() {}

        public static void main(String[] args) throws IOException {
            Files.createTempFile("a", "b");
        }
    }

    /** Everything in a book that a program might follow: a linked book, a linked picture, entities and a schema. */
    @ParameterizedTest
    @ValueSource(
            strings = {"links", "xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/styles.xml", "[Content_Types].xml"})
    void bookThatPointsOutside_opensNoConnection(String part) throws Exception {
        try (Listener listener = new Listener()) {
            Path book = Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
            try (FileSystem zip = FileSystems.newFileSystem(book)) {
                if (part.equals("links")) {
                    addLinks(zip, listener.address());
                } else {
                    addEntity(zip.getPath(part), listener.address());
                }
            }
            for (String command : List.of("check", "chart", "plan", "gauge", "page")) {
                int code = Terminal.run(command, book).code();
                assertTrue(
                        part.equals("links") ? code == 0 || command.equals("gauge") : code == 3, command + " " + code);
            }
            assertEquals(0, listener.seen());
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), listener.port())) {
                assertTrue(socket.isConnected());
            }
            assertEquals(1, listener.seenInTime(), "the means of this test work");
        }
    }

    private static void addLinks(FileSystem zip, String address) throws IOException {
        edit(
                zip.getPath("[Content_Types].xml"),
                "</Types>",
                "<Override PartName=\"/xl/externalLinks/externalLink1.xml\" ContentType=\"application/vnd.openxmlformats-"
                        + "officedocument.spreadsheetml.externalLink+xml\"/></Types>");
        edit(
                zip.getPath("xl/_rels/workbook.xml.rels"),
                "</Relationships>",
                "<Relationship Id=\"rIdX\" Type=\"" + EXTERNAL + "\" Target=\"externalLinks/externalLink1.xml\"/>"
                        + "<Relationship Id=\"rIdP\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/"
                        + "relationships/image\" Target=\"" + address + "a.png\" TargetMode=\"External\"/>"
                        + "</Relationships>");
        Files.createDirectories(zip.getPath("xl/externalLinks/_rels"));
        Files.writeString(
                zip.getPath("xl/externalLinks/externalLink1.xml"),
                "<externalLink xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><externalBook"
                        + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\""
                        + " r:id=\"rId1\"><sheetNames><sheetName val=\"Far\"/></sheetNames></externalBook></externalLink>");
        Files.writeString(
                zip.getPath("xl/externalLinks/_rels/externalLink1.xml.rels"),
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship"
                        + " Id=\"rId1\" Type=\"" + EXTERNAL + "Path\" Target=\"" + address
                        + "far.xlsx\" TargetMode=\"External\"/></Relationships>");
    }

    private static void addEntity(Path part, String address) throws IOException {
        String text = Files.readString(part);
        int root = text.startsWith("<?xml") ? text.indexOf("?>") + 2 : 0;
        String type = "<!DOCTYPE x [<!ENTITY % far SYSTEM \"" + address + "far.dtd\"> %far;]>";
        Files.writeString(part, text.substring(0, root) + type + text.substring(root));
    }

    private static void edit(Path part, String end, String replacement) throws IOException {
        String text = Files.readString(part, StandardCharsets.UTF_8);
        assertTrue(text.contains(end), part.toString());
        Files.writeString(part, text.replace(end, replacement));
    }

    /** Counts who calls on this machine's own address. */
    private static final class Listener implements AutoCloseable {
        private final ServerSocket server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        private final AtomicInteger seen = new AtomicInteger();

        Listener() throws IOException {
            Thread thread = new Thread(this::listen);
            thread.setDaemon(true);
            thread.start();
        }

        private void listen() {
            while (!server.isClosed()) {
                try (Socket call = server.accept()) {
                    seen.addAndGet(call.isConnected() ? 1 : 0);
                } catch (IOException closed) {
                    return;
                }
            }
        }

        int port() {
            return server.getLocalPort();
        }

        String address() {
            return "http://" + server.getInetAddress().getHostAddress() + ":" + port() + "/";
        }

        int seen() {
            return seen.get();
        }

        int seenInTime() throws InterruptedException {
            for (int tries = 0; tries < 200 && seen() == 0; tries++) {
                Thread.sleep(10);
            }
            return seen();
        }

        @Override
        public void close() throws IOException {
            server.close();
        }
    }
}
