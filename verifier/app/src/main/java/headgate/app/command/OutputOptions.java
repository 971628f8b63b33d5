package headgate.app.command;

import picocli.CommandLine.Option;

/** The option that every command has. */
final class OutputOptions {

    @Option(names = "--json", description = "Answer with a JSON document, errors too.")
    boolean json;
}
