package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bagwright.cli.text.AnsiStyle;
import org.bagwright.cli.text.FaultText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.cli.text.UsageText;
import org.bagwright.files.SavedMeanwhileException;
import org.bagwright.planning.WorkbookProblems;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: {@code bagwright COMMAND}. */
@Command(
        name = "bagwright",
        description = "Plans every setting and bend of a golf bag from a spreadsheet.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:not done: a full disk, no permission to write, or a fault of the program",
            "2:wrong arguments",
            "3:something is wrong in the workbook or a file of shots; nothing was written",
            "4:not every must can be met; the plan was still written",
            "130:stopped by Ctrl-C; plan and compare still give the best so far"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright demo                    plan an invented bag and see what comes out",
            "  bagwright new bag.xlsx            a blank book to fill in",
            "  bagwright check bag.xlsx          list what is wrong in it",
            "  bagwright gauge bag.xlsx          learn heads and sleeves from readings",
            "  bagwright add-shots bag.xlsx may.csv    the shots of a session from a file",
            "  bagwright plan bag.xlsx           plan it into bag-plan.xlsx",
            "  bagwright page bag.xlsx           the planned bag as a page for the bench",
            "  bagwright watch bag.xlsx          the same each time you save the book",
            "  bagwright compare a.xlsx b.xlsx   two books side by side",
            "  bagwright help plan               the help of a command"
        })
public final class Main implements Runnable {
    static final int DONE = 0;
    static final int OUR_FAULT = 1;
    static final int WRONG_ARGUMENTS = 2;
    static final int WRONG_WORKBOOK = 3;
    static final int MUSTS_NOT_MET = 4;

    /** The commands in the order in which the help lists them. */
    private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

    /** The commands that need all others. */
    private static final Set<String> ABOUT_ALL = Set.of("completion", "help");

    static {
        COMMANDS.put("demo", DemoCommand.class);
        COMMANDS.put("new", NewCommand.class);
        COMMANDS.put("check", CheckCommand.class);
        COMMANDS.put("chart", ChartCommand.class);
        COMMANDS.put("gauge", GaugeCommand.class);
        COMMANDS.put("add-shots", AddShotsCommand.class);
        COMMANDS.put("plan", PlanCommand.class);
        COMMANDS.put("page", PageCommand.class);
        COMMANDS.put("watch", WatchCommand.class);
        COMMANDS.put("compare", CompareCommand.class);
        COMMANDS.put("completion", CompletionCommand.class);
        COMMANDS.put("help", HelpCommand.class);
    }

    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, fault) -> err.println("bagwright: " + new FaultText(fault).sentence()));
        System.exit(run(new PrintWriter(System.out, true, StandardCharsets.UTF_8), err, AnsiStyle.ofProcess(), args));
    }

    /** Runs one command and gives its exit code. */
    public static int run(PrintWriter out, PrintWriter err, AnsiStyle style, String... args) {
        CommandLine line = commandLine(needed(args));
        style.giveTo(line);
        line.setOut(out).setErr(err);
        line.setExecutionExceptionHandler((fault, command, parsed) -> report(fault, command));
        line.setParameterExceptionHandler((fault, typed) -> report(fault));
        int code = executed(line, args);
        err.flush();
        if (out.checkError()) {
            err.println(
                    "bagwright: what was printed is lost or not whole: the output is a full disk, or the program that"
                            + " reads it has ended.");
            return OUR_FAULT;
        }
        return code;
    }

    /** Errors of the virtual machine are no exceptions, so they pass through the library. */
    private static int executed(CommandLine line, String... args) {
        try {
            return line.execute(args);
        } catch (VirtualMachineError fault) {
            line.getErr().println("bagwright: " + new FaultText(fault).sentence());
            return OUR_FAULT;
        }
    }

    /** The one command that is typed, as looking at the others takes longer than some of them run. */
    private static Set<String> needed(String... args) {
        return args.length > 0 && COMMANDS.containsKey(args[0]) && !ABOUT_ALL.contains(args[0])
                ? Set.of(args[0])
                : COMMANDS.keySet();
    }

    static CommandLine commandLine() {
        return commandLine(COMMANDS.keySet());
    }

    private static CommandLine commandLine(Set<String> names) {
        CommandLine line = new CommandLine(new Main());
        names.forEach(name -> line.addSubcommand(name, COMMANDS.get(name)));
        HelpOptions.addTo(line);
        line.registerConverter(double.class, new DecimalNumber());
        line.registerConverter(Path.class, new FileName());
        return line;
    }

    private static int report(CommandLine.ParameterException fault) {
        PrintWriter err = fault.getCommandLine().getErr();
        err.println(new UsageText(fault).sentence());
        err.println(UsageText.help(fault.getCommandLine()));
        return WRONG_ARGUMENTS;
    }

    private static int report(Exception fault, CommandLine command) {
        PrintWriter err = command.getErr();
        if (fault instanceof WorkbookProblems problems) {
            new MessageText(problems.messages()).problems(AnsiStyle.of(command)).forEach(err::println);
            return WRONG_WORKBOOK;
        }
        if (fault instanceof SavedMeanwhileException saved) {
            new MessageText(List.of(saved.found()))
                    .problems(AnsiStyle.of(command))
                    .forEach(err::println);
            return WRONG_WORKBOOK;
        }
        if (fault instanceof WrongArguments) {
            err.println(fault.getMessage());
            err.println(UsageText.help(command));
            return WRONG_ARGUMENTS;
        }
        err.println("bagwright: " + new FaultText(fault).sentence());
        return OUR_FAULT;
    }

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(),
                "Say what to do, such as \"bagwright plan bag.xlsx\". The commands: "
                        + String.join(", ", spec.subcommands().keySet()) + ".");
    }
}
