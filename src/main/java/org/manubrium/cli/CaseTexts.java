package org.manubrium.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.manubrium.casefile.CaseFile;
import org.manubrium.casefile.CaseReading;
import org.manubrium.casefile.Problem;
import org.manubrium.tables.Reference;

/** Reads the files named on the command line. */
final class CaseTexts {
    /** Bytes; far above what a case or an attempt may hold, far below what would fill the memory. */
    private static final long LARGEST = 4_000_000;

    private CaseTexts() {}

    static CaseReading read(String file, Reference reference) {
        try {
            return CaseFile.read(text(file), file, reference);
        } catch (CharacterCodingException e) {
            return refused(file, "encoding", "the file is not in UTF-8");
        } catch (TooLarge e) {
            return refused(file, "too-large", "the file has " + e.bytes + " bytes: expected at most " + LARGEST);
        }
    }

    /** Does something with the case that the first operand names, or prints what is wrong with it. */
    static ExitCode withCase(
            String command, Arguments arguments, Reference reference, Console console, Consumer<CaseFile> work) {
        List<String> operands = arguments.operands();
        if (operands.isEmpty()) {
            throw new UsageException(command + " needs a FILE after it");
        }
        CaseReading reading = read(operands.get(0), reference);
        reading.caseFile().ifPresentOrElse(work, () -> reading.problems().forEach(console.err()::println));
        return reading.caseFile().isPresent() ? ExitCode.DONE : ExitCode.PROBLEMS;
    }

    /**
     * The text of a file.
     *
     * @throws UsageException if there is none to be read
     */
    static String text(String file) throws CharacterCodingException, TooLarge {
        try {
            Path path = Path.of(file);
            if (Files.size(path) > LARGEST) {
                throw new TooLarge(Files.size(path));
            }
            return Files.readString(path);
        } catch (CharacterCodingException e) {
            throw e;
        } catch (NoSuchFileException e) {
            throw new UsageException("there is no file " + file);
        } catch (IOException | InvalidPathException e) {
            throw new UsageException("cannot read " + file + ": " + e.getMessage());
        }
    }

    private static CaseReading refused(String file, String rule, String text) {
        return new CaseReading(Optional.empty(), List.of(new Problem(file, 1, rule, text)));
    }

    /** A file so large that it is not read at all. */
    static final class TooLarge extends Exception {
        private static final long serialVersionUID = 1L;

        final long bytes;

        TooLarge(long bytes) {
            super(bytes + " bytes");
            this.bytes = bytes;
        }
    }
}
