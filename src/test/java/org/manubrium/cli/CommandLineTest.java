package org.manubrium.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CommandLineTest {
    private static final Option LOUD = Option.onOff("loud", "Say it in capitals.");
    private static final Option TIMES = new Option("times", "N", "How often.", "1");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void commandGetsItsOptionsAndOperands() {
        assertThat(run("echo", "--times", "3", "a", "--loud", "b")).isEqualTo(ExitCode.DONE);
        assertThat(out()).isEqualTo("[a, b] times 3 loud true");
        assertThat(err()).isEmpty();
    }

    @Test
    void operandOfAnOptionMayStandBehindAnEqualsSign() {
        run("echo", "--times=3");
        assertThat(out()).contains("times 3");
    }

    @Test
    void afterTwoDashesEverythingIsAnOperand() {
        run("echo", "--", "--loud", "--help");
        assertThat(out()).isEqualTo("[--loud, --help] times 1 loud false");
    }

    @Test
    void unknownCommandIsRefusedByName() {
        assertThat(run("ecco")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err()).contains("unknown command ecco");
        assertThat(out()).isEmpty();
    }

    @Test
    void unknownOptionIsRefusedByName() {
        assertThat(run("echo", "--quiet=yes")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err()).contains("unknown option --quiet");
    }

    @Test
    void optionWithoutItsOperandIsRefusedByName() {
        assertThat(run("echo", "--times")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err()).contains("--times needs N");
        assertThat(run("echo", "--times", "--loud")).isEqualTo(ExitCode.WRONG_USE);
    }

    @Test
    void switchTakesNoOperand() {
        assertThat(run("echo", "--loud=yes")).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err()).contains("--loud stands alone");
    }

    @Test
    void nothingAtAllIsWrongUseAndShowsTheCommands() {
        assertThat(run()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(err()).contains("echo").contains("Says it again.");
    }

    @Test
    void helpNamesEveryCommandAndEveryOption() {
        assertThat(run("help")).isEqualTo(ExitCode.DONE);
        assertThat(out()).contains("echo").contains("Says it again.");

        out.reset();
        assertThat(run("echo", "--help")).isEqualTo(ExitCode.DONE);
        assertThat(out())
                .contains("WORD...")
                .contains("--times N")
                .contains("How often. [1]")
                .contains("--loud");
    }

    @Test
    void problemsFoundByTheCommandAreItsExitCode() {
        assertThat(run("echo", "problem")).isEqualTo(ExitCode.PROBLEMS);
        assertThat(ExitCode.PROBLEMS.number()).isEqualTo(1);
    }

    private ExitCode run(String... words) {
        Console console = new Console(stream(out), stream(err));
        return new CommandLine(List.of(new Echo()), console).run(List.of(words));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static final class Echo implements Command {
        @Override
        public String name() {
            return "echo";
        }

        @Override
        public String help() {
            return "Says it again.";
        }

        @Override
        public String operands() {
            return "WORD...";
        }

        @Override
        public List<Option> options() {
            return List.of(LOUD, TIMES);
        }

        @Override
        public ExitCode run(Arguments arguments, Console console) {
            console.out()
                    .print(arguments.operands() + " times "
                            + arguments.operandOf(TIMES).orElse(TIMES.fallback()) + " loud " + arguments.has(LOUD));
            return arguments.operands().contains("problem") ? ExitCode.PROBLEMS : ExitCode.DONE;
        }
    }
}
