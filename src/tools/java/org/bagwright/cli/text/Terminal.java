package org.bagwright.cli.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.bagwright.cli.Main;
import org.bagwright.cli.json.JsonContract;

/** Runs a command in this process and keeps what it printed. A document that breaks its contract ends the run. */
public record Terminal(int code, String out, String err) {
    public static Terminal run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = new String[args.length];
        for (int index = 0; index < args.length; index++) {
            texts[index] = String.valueOf(args[index]);
        }
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), AnsiStyle.NONE, texts);
        if (List.of(texts).contains("--json") && !out.toString().isBlank()) {
            JsonContract.of(texts[0]).read(out.toString());
        }
        return new Terminal(code, out.toString(), err.toString());
    }

    public JsonNode json() throws IOException {
        return new ObjectMapper().readTree(out);
    }
}
