package org.bagwright.cli.text;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.text.CloseNames;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with the words typed, in one sentence, and what was probably meant. */
public final class UsageText {
    private final ParameterException fault;
    private final CommandLine command;

    public UsageText(ParameterException fault) {
        this.fault = fault;
        this.command = fault.getCommandLine();
    }

    public String sentence() {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched.getUnmatched().get(0));
        }
        if (!command.getUnmatchedArguments().isEmpty()) {
            return unmatched(command.getUnmatchedArguments().get(0));
        }
        if (fault instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0));
        }
        if (fault instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice.";
        }
        if (fault.getArgSpec() != null && fault.getValue() != null) {
            return name(fault.getArgSpec()) + " takes " + kind(fault.getArgSpec()) + ", found \"" + fault.getValue()
                    + "\".";
        }
        return fault.getMessage();
    }

    /** How to get more help. */
    public static String help(CommandLine command) {
        return "Help: " + command.getCommandSpec().qualifiedName() + " --help";
    }

    private String unmatched(String typed) {
        if (typed.length() > 1 && typed.startsWith("-")) {
            return "There is no option " + typed + "." + CloseNames.maybe(typed, optionsAndCommands());
        }
        if (command.getParent() != null) {
            return "Unexpected argument \"" + typed + "\"." + maybeOut(typed);
        }
        if (isBook(typed)) {
            return "\"" + typed + "\" is a book; give a command before it. Maybe \"bagwright plan " + typed + "\"?";
        }
        String maybe = CloseNames.maybe(typed, command.getSubcommands().keySet());
        return "There is no command \"" + typed + "\"."
                + (maybe.isEmpty()
                        ? " There are: "
                                + String.join(", ", command.getSubcommands().keySet()) + "."
                        : maybe);
    }

    private List<String> optionsAndCommands() {
        List<String> names =
                new ArrayList<>(command.getCommandSpec().optionsMap().keySet());
        names.addAll(command.getSubcommands().keySet());
        return names;
    }

    private String maybeOut(String typed) {
        boolean known = command.getCommandSpec().optionsMap().containsKey("-o");
        boolean given =
                command.getParseResult() != null && command.getParseResult().hasMatchedOption("-o");
        return known && !given ? " Maybe \"-o " + typed + "\"?" : "";
    }

    private static boolean isBook(String typed) {
        String lower = typed.toLowerCase(Locale.ROOT);
        try {
            return lower.endsWith(".xlsx") || lower.endsWith(".xlsm") || Files.isRegularFile(Path.of(typed));
        } catch (InvalidPathException noFile) {
            return false;
        }
    }

    private String missing(ArgSpec arg) {
        if (arg.isOption()) {
            return name(arg) + " needs " + kind(arg) + " after it.";
        }
        String what = "FILE".equals(arg.paramLabel()) ? "a book" : arg.paramLabel();
        String example = command.getCommandSpec().qualifiedName() + " bag.xlsx";
        return arg.arity().min() > 1
                ? "Give at least " + arg.arity().min() + " books, such as " + example + " june.xlsx"
                : "Give " + what + ", such as " + example;
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    private static String kind(ArgSpec arg) {
        Class<?> type = arg.auxiliaryTypes()[0];
        if (type == double.class) {
            return "a number such as 2.5";
        }
        if (type == long.class) {
            return "a whole number";
        }
        return type == Path.class ? "the name of a file" : "a name";
    }
}
