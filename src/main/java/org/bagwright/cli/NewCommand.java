package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.bagwright.planning.ShippedBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code new FILE}: a blank book. */
@Command(
        name = "new",
        description = "Make a blank book with drop-downs and help. An existing file is never overwritten.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright new bag.xlsx              a blank book here",
            "  bagwright new \"Golfer A.xlsx\"       quotation marks around a name with spaces"
        })
final class NewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the book to make, ending in .xlsx")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        if (!new NamedFile(file).ending().equalsIgnoreCase(".xlsx")) {
            throw new WrongArguments("The name of a book ends in .xlsx: " + file + ". Maybe \"" + withEnding() + "\"?");
        }
        if (Files.exists(file)) {
            throw new WrongArguments(file + " already exists. Give another name, or move it away first.");
        }
        new NamedFile(file).requireFolder();
        ShippedBook.BLANK.create(file);
        out.println("Made " + file);
        out.println("Open it in your spreadsheet program and start on the sheet Start. Then: bagwright plan " + file);
        return Main.DONE;
    }

    private String withEnding() {
        String name = file.toString();
        return name.endsWith(".xls") ? name + "x" : name + ".xlsx";
    }
}
