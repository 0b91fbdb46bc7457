package org.manubrium.tables;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.manubrium.anatomy.Anatomy;
import org.manubrium.anatomy.Lesion;
import org.manubrium.anatomy.Onset;
import org.manubrium.anatomy.Pathway;
import org.manubrium.anatomy.Side;

/**
 * What one lesion takes and what it must leave, from the texts. A path is weak below 0.85 of its conduction, kept from
 * there. Paths are written as a movement or reflex by its id, {@code control:reflex}, or {@code modality:point}.
 */
record Expectation(String lesion, double loss, Side side, List<String> weak, List<String> kept) {
    private static final double STRONG = 0.85;
    private static final Onset WEEKS = Onset.parse("6 weeks").orElseThrow();

    static List<Expectation> read(String file) {
        try (InputStream in = Expectation.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no such file: " + file);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return CsvReader.builder().ofNamedCsvRecord(text).stream()
                    .map(Expectation::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Expectation of(NamedCsvRecord row) {
        return new Expectation(
                row.getField("lesion"),
                Double.parseDouble(row.getField("loss")),
                row.findField("side").flatMap(Side::of).orElse(Side.LEFT),
                words(row.getField("weak")),
                words(row.getField("kept")));
    }

    private static List<String> words(String cell) {
        return Arrays.stream(cell.split(" ", -1)).filter(w -> !w.isEmpty()).toList();
    }

    /** The expectation with right and left exchanged. */
    Expectation mirrored() {
        String other = lesion.contains("left") ? lesion.replace("left", "right") : lesion.replace("right", "left");
        return new Expectation(other, loss, side.opposite(), weak, kept);
    }

    /** Every path that does not behave as expected, with its conduction. */
    List<String> failures(Anatomy anatomy) {
        List<String> found = new ArrayList<>();
        List<Lesion> lesions = anatomy.lesions(lesion, loss, WEEKS);
        for (String path : weak) {
            double passed = passed(path(anatomy, path), lesions);
            if (passed >= STRONG) {
                found.add(lesion + " should weaken " + path + ", which passes " + passed);
            }
        }
        for (String path : kept) {
            double passed = passed(path(anatomy, path), lesions);
            if (passed < STRONG) {
                found.add(lesion + " should leave " + path + ", which passes " + passed);
            }
        }
        return found;
    }

    private Pathway path(Anatomy anatomy, String text) {
        String[] words = text.split(":", -1);
        if (words[0].equals("control")) {
            return anatomy.control(words[1], side);
        }
        if (words.length == 2) {
            return anatomy.sensory(words[0], words[1], side);
        }
        return text.endsWith("-reflex") || text.startsWith("plantar-")
                ? anatomy.arc(text, side)
                : anatomy.motor(text, side);
    }

    private static double passed(Pathway pathway, List<Lesion> lesions) {
        return pathway.conduction(site -> lesions.stream()
                .filter(l -> l.site().covers(site))
                .mapToDouble(l -> 1 - l.loss())
                .reduce(1, (a, b) -> a * b));
    }

    @Override
    public String toString() {
        return lesion + " (" + side.word() + " side)";
    }
}
