package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Each test has one tag that says what its evidence is, and a published check has its source next to it, with the mark of how
 * we know it. What only a program of our own computed [own] is no publication: such a test is analytic.
 */
@Tag("regression")
class TagsTest {
    private static final Path TESTS = Path.of("src/test/java");
    private static final Pattern TYPE = Pattern.compile("^(?:(?:abstract|final|public) )*class ", Pattern.MULTILINE);
    private static final Pattern TAG = Pattern.compile("@(?:net\\.jqwik\\.api\\.)?Tag\\(\"(\\w+)\"\\)");
    /** The comment of a test, its annotations and its name. */
    private static final Pattern METHOD = Pattern.compile(
            "(?s)((?:    /\\*\\*(?:(?!\\*/).)*\\*/\\n)?)((?:    @[\\w.]+(?:\\((?:(?!\\n    [@\\w}]).)*?\\))?\\n(?:    \\}\\)\\n)?)+)"
                    + "    (?:static )?void (\\w+)\\(");

    private static final Pattern IS_TEST =
            Pattern.compile("@(?:net\\.jqwik\\.api\\.)?(?:\\w*Test|Property|Example)\\b");
    private static final Pattern SOURCE = Pattern.compile("\\[(read|quoted|memory)\\b|[Cc]ommon\\s+(\\*\\s+)?practice");

    private final List<String> wrong = new ArrayList<>();
    private int tests;
    private int published;

    @Test
    void eachTest_hasOneTag_andAPublishedOneItsSource() throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(TESTS)) {
            files = walk.filter(file -> file.toString().endsWith("Test.java"))
                    .filter(file -> !file.endsWith("ArchitectureTest.java"))
                    .toList();
        }
        for (Path file : files) {
            look(TESTS.relativize(file), Files.readString(file));
        }
        assertEquals(List.of(), wrong);
        assertTrue(tests > 1000 && published > 20, tests + " tests, published " + published);
    }

    private void look(Path file, String source) {
        Matcher type = TYPE.matcher(source);
        if (!type.find()) {
            wrong.add(file + ": no class");
            return;
        }
        String head = source.substring(0, type.start());
        String comment = head.substring(Math.max(0, head.lastIndexOf("/**")));
        List<String> all = tags(head);
        Matcher method = METHOD.matcher(source.substring(type.start()));
        while (method.find()) {
            if (IS_TEST.matcher(method.group(2)).find()) {
                tests++;
                List<String> tags = new ArrayList<>(all);
                tags.addAll(tags(method.group(2)));
                judge(file + " " + method.group(3), tags, comment + method.group(1));
            }
        }
    }

    private void judge(String test, List<String> tags, String comment) {
        if (tags.size() != 1 || !List.of("published", "analytic", "regression").contains(tags.get(0))) {
            wrong.add(test + ": tags " + tags);
        } else if (tags.get(0).equals("published")) {
            published++;
            if (!SOURCE.matcher(comment).find()) {
                wrong.add(test + ": published without a source");
            }
        }
    }

    private static List<String> tags(String annotations) {
        Matcher tag = TAG.matcher(annotations);
        return tag.results().map(found -> found.group(1)).toList();
    }
}
