package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of section 1, from the commands and options themselves. */
public final class ManPage {
    private final StringWriter text = new StringWriter();
    private final PrintWriter page = new PrintWriter(text);

    private ManPage() {}

    /** Arguments: the file to write, the version and the date of the release. */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]).toAbsolutePath();
        Files.createDirectories(file.getParent());
        Files.writeString(file, of(args[1], args[2]));
    }

    /** The page as troff text. */
    static String of(String version, String date) {
        ManPage page = new ManPage();
        page.write(Main.commandLine(), version, date);
        return page.text.toString();
    }

    private void write(CommandLine line, String version, String date) {
        CommandSpec main = line.getCommandSpec();
        macro(".TH BAGWRIGHT 1 " + quoted(date) + " " + quoted("bagwright " + version) + " " + quoted("User commands"));
        macro(".SH NAME");
        page.println("bagwright \\- " + escaped(formatted(main.usageMessage().description())));
        macro(".SH SYNOPSIS");
        bold("bagwright COMMAND [OPTION]... [FILE]...");
        macro(".SH DESCRIPTION");
        body("Bagwright reads a workbook (.xlsx) with a golfer's clubs and writes its plan into a copy of it."
                + " The manual for fitters, manual.html, comes with the program.");
        macro(".SH OPTIONS OF ALL COMMANDS");
        main.options().forEach(this::option);
        macro(".SH COMMANDS");
        line.getSubcommands().values().forEach(this::command);
        macro(".SH EXIT STATUS");
        main.usageMessage().exitCodeList().forEach(this::item);
        examples(main);
    }

    private void command(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        macro(".SS " + quoted(spec.name()));
        bold(new Help(spec, Help.defaultColorScheme(Help.Ansi.OFF))
                .synopsis(0)
                .strip()
                .replaceAll("\\s+", " "));
        macro(".PP");
        body(formatted(spec.usageMessage().description()));
        for (PositionalParamSpec parameter : spec.positionalParameters()) {
            item(parameter.paramLabel(), formatted(parameter.description()));
        }
        spec.options().stream()
                .filter(option -> !option.hidden() && !option.usageHelp() && !option.versionHelp())
                .forEach(this::option);
        examples(spec);
    }

    private void option(OptionSpec option) {
        String label = option.typeInfo().isBoolean() ? "" : " " + option.paramLabel();
        item(String.join(", ", option.names()) + label, formatted(option.description()));
    }

    /** What is under the help of a command: text, and examples as they are there. */
    private void examples(CommandSpec spec) {
        formatted(spec.usageMessage().footerHeading())
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(line -> {
                    macro(".PP");
                    body(line);
                });
        if (spec.usageMessage().footer().length > 0) {
            macro(".PP");
            macro(".nf");
            Stream.of(spec.usageMessage().footer()).map(ManPage::formatted).forEach(this::body);
            macro(".fi");
        }
    }

    private void item(String name, String meaning) {
        macro(".TP");
        bold(name);
        body(meaning);
    }

    private void bold(String words) {
        page.println("\\fB" + escaped(words) + "\\fR");
    }

    private void body(String words) {
        page.println(escaped(words));
    }

    private void macro(String line) {
        page.println(line);
    }

    private static String formatted(String... lines) {
        return Stream.of(lines)
                .map(line -> String.format(line))
                .reduce("", (all, line) -> all.isEmpty() ? line : all + " " + line);
    }

    private static String quoted(String words) {
        return '"' + escaped(words) + '"';
    }

    /** Nothing that troff would take as a command. */
    private static String escaped(String words) {
        String plain = words.replace("\\", "\\e").replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
