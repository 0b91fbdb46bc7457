package org.manubrium.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.manubrium.tables.Reference;

/** Reads one case file. */
final class CaseReader {
    private static final List<String> KEYS = List.of(
            "title",
            "slug",
            "difficulty",
            "patient",
            "vignette",
            "history",
            "observations",
            "conditions",
            "lesions",
            "quantities",
            "differential",
            "conclusion",
            "essential",
            "unneeded",
            "expected",
            "unsafe",
            "expect");

    private final Reference reference;
    private final Problems problems;

    CaseReader(Reference reference, String path) {
        this.reference = reference;
        this.problems = new Problems(path);
    }

    CaseReading read(String text) {
        return read(text, true);
    }

    CaseReading reread(String text) {
        return read(text, false);
    }

    private CaseReading read(String text, boolean checked) {
        Optional<CaseFile> found = Yaml.tree(text, problems)
                .flatMap(node -> Mapping.of(node, "the case", KEYS, problems))
                .flatMap(file -> read(file, checked));
        if (text.isBlank()) {
            problems.add(1, "missing", "expected \"patient: {age: 47, sex: female}\", found an empty file");
        }
        return new CaseReading(found.filter(f -> problems.count() == 0), problems.byLine());
    }

    private Optional<CaseFile> read(Mapping file, boolean checked) {
        UseReader uses = new UseReader(reference, problems);
        KeyReader key = new KeyReader(reference, uses, problems);
        ToldReader told = new ToldReader(reference, problems);
        Optional<Profile> patient = new ProfileReader(problems).read(file);
        String title = file.text("title").map(Text::words).orElse("");
        Told texts = new Told(file.text("title"), file.text("vignette"));
        var conditions = all(file.mappings("conditions", UseReader.CONDITION_KEYS), uses::condition);
        var lesions = all(file.mappings("lesions", UseReader.LESION_KEYS), uses::lesion);
        int before = problems.count();
        var differential = all(file.mappings("differential", UseReader.CONDITION_KEYS), uses::condition);
        boolean wholeDifferential = problems.count() == before;
        var expected = new ExpectedReader(reference, problems).read(file);
        Optional<Difficulty> difficulty = difficulty(file);
        Optional<CaseFile> found = patient.map(profile -> new CaseFile(
                titleOr(title, profile),
                slug(file, titleOr(title, profile)),
                difficulty,
                profile,
                texts.vignette().map(Text::words).orElse(""),
                told.history(file),
                told.observations(file),
                things(conditions),
                things(lesions),
                told.quantities(file),
                things(differential),
                key.conclusion(file),
                key.changes(file, "essential"),
                key.changes(file, "unneeded"),
                things(expected),
                key.unsafe(file),
                key.expect(file)));
        int unread = problems.count();
        found.filter(read -> checked).ifPresent(read -> {
            CaseChecks checks = new CaseChecks(reference, problems, read);
            checks.run(texts, file, differential, wholeDifferential);
            if (unread == 0) {
                checks.told(file);
                new ExpectedCheck(reference, problems, read.body(reference)).run(expected);
            }
        });
        return found;
    }

    private Optional<Difficulty> difficulty(Mapping file) {
        Optional<Text> text = file.text("difficulty");
        Optional<Difficulty> found = text.flatMap(t -> Difficulty.of(t.words()));
        if (text.isPresent() && found.isEmpty()) {
            problems.add(
                    text.get().line(),
                    "wrong-type",
                    "difficulty: expected " + String.join(", ", Difficulty.words()) + ", found \""
                            + text.get().words() + "\"");
        }
        return found;
    }

    /** The texts that a student reads before examining. */
    record Told(Optional<Text> title, Optional<Text> vignette) {}

    private static <T> List<Placed<T>> all(List<Mapping> entries, Function<Mapping, Optional<T>> read) {
        List<Placed<T>> found = new ArrayList<>();
        for (Mapping entry : entries) {
            read.apply(entry).ifPresent(thing -> found.add(new Placed<>(thing, entry.line())));
        }
        return found;
    }

    private static <T> List<T> things(List<Placed<T>> placed) {
        return placed.stream().map(Placed::thing).toList();
    }

    private static String titleOr(String title, Profile patient) {
        return title.isBlank() ? "A " + patient.sex().word() + " patient of " + patient.age() : title.trim();
    }

    private String slug(Mapping file, String title) {
        Optional<Text> given = file.text("slug");
        if (given.isPresent() && !given.get().words().matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            problems.add(
                    given.get().line(),
                    "wrong-type",
                    "slug: expected lower-case words with hyphens, found \""
                            + given.get().words() + "\"");
        }
        return given.map(Text::words)
                .orElseGet(() -> title.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", ""));
    }
}
