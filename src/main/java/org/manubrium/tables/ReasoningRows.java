package org.manubrium.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.manubrium.reasoning.odds.LikelihoodRatio;
import org.manubrium.reasoning.weigh.Calibration;
import org.manubrium.reasoning.weigh.Calibration.State;
import org.manubrium.reasoning.weigh.Grounds;

/** Reads the tables of reasoning. */
final class ReasoningRows {
    private static final double HUNDRED = 100;
    private static final String MISREAD = "misread";

    private final TableFiles files;

    ReasoningRows(TableFiles files) {
        this.files = files;
    }

    ReasoningTables read() {
        List<LikelihoodRatio> ratios = files.rows("likelihood_ratios", ReasoningRows::ratio);
        Map<String, Ground> amounts = files
                .rows(
                        "grounds",
                        r -> new Ground(r.word("name"), r.number("amount"), r.word("source"), r.word("confidence")))
                .stream()
                .collect(Collectors.toMap(Ground::name, Function.identity()));
        Ground practised = ground(amounts, "practised most");
        return new ReasoningTables(
                new Grounds(
                        misread(amounts),
                        amount(amounts, "decline"),
                        amount(amounts, "other"),
                        amount(amounts, "threshold"),
                        new HashSet<>(files.rows("risks", r -> r.word("risk"))),
                        calibrations(ratios)),
                ratios,
                new PractisedTime(
                        (int) amount(amounts, "practised least"),
                        (int) practised.amount(),
                        practised.source(),
                        practised.confidence()));
    }

    private record Ground(String name, double amount, String source, String confidence) {}

    private static Ground ground(Map<String, Ground> rows, String name) {
        Ground row = rows.get(name);
        if (row == null) {
            throw new IllegalArgumentException("the table of grounds has no row " + name);
        }
        return row;
    }

    private static double amount(Map<String, Ground> rows, String name) {
        return ground(rows, name).amount();
    }

    /** By the quantity after the word; blank for all others. */
    private static Map<String, Double> misread(Map<String, Ground> rows) {
        amount(rows, MISREAD);
        return rows.values().stream()
                .filter(row -> row.name().startsWith(MISREAD))
                .collect(Collectors.toMap(
                        row -> row.name().substring(MISREAD.length()).trim(), Ground::amount));
    }

    private static LikelihoodRatio ratio(Row r) {
        return new LikelihoodRatio(
                r.word("id"),
                r.word("finding"),
                r.word("of"),
                number(r, "lr_pos", 1),
                number(r, "lr_neg", 1),
                number(r, "sensitivity", HUNDRED),
                number(r, "specificity", HUNDRED),
                r.word("basis").equals("computed"),
                r.word("source"),
                r.word("confidence"),
                r.text("note"));
    }

    private static OptionalDouble number(Row r, String column, double unit) {
        return r.text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(r.number(column) / unit);
    }

    private record RatioState(String ratio, State state) {}

    private List<Calibration> calibrations(List<LikelihoodRatio> ratios) {
        Map<String, LikelihoodRatio> published =
                ratios.stream().collect(Collectors.toMap(LikelihoodRatio::id, Function.identity()));
        Map<String, State> states = files
                .rows(
                        "calibration_states",
                        r -> new RatioState(
                                r.word("ratio"),
                                new State(r.list("structures"), r.text("part"), r.yes("both"), r.text("quantity"))))
                .stream()
                .collect(Collectors.toMap(RatioState::ratio, RatioState::state));
        return files.rows("calibration_signs", r -> calibration(r, published, states));
    }

    private static Calibration calibration(Row r, Map<String, LikelihoodRatio> published, Map<String, State> states) {
        LikelihoodRatio ratio = published.get(r.word("ratio"));
        State state = states.get(r.word("ratio"));
        if (ratio == null || ratio.share().isEmpty() || state == null) {
            throw r.bad("ratio: expected one with a sensitivity, or with both ratios, and a state, found \""
                    + r.word("ratio") + "\"");
        }
        return new Calibration(ratio.id(), ratio.share().getAsDouble(), state, r.word("reads"), r.list("shows"));
    }
}
