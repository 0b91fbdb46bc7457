package org.manubrium.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was written after a command's name, sorted into options and operands. {@code --name operand} and
 * {@code --name=operand} mean the same; after {@code --} everything is an operand.
 */
public final class Arguments {
    private final Map<String, String> given;
    private final List<String> operands;

    private Arguments(Map<String, String> given, List<String> operands) {
        this.given = Map.copyOf(given);
        this.operands = List.copyOf(operands);
    }

    /**
     * Sorts the words.
     *
     * @throws UsageException naming an option that the command does not have, or that lacks its operand
     */
    public static Arguments parse(List<Option> options, List<String> words) {
        Map<String, String> given = new HashMap<>();
        List<String> operands = new ArrayList<>();
        int next = 0;
        while (next < words.size()) {
            String word = words.get(next++);
            if (word.equals("--")) {
                operands.addAll(words.subList(next, words.size()));
                break;
            } else if (!word.startsWith("--")) {
                operands.add(word);
            } else if (take(option(options, word), word, next < words.size() ? words.get(next) : "", given)) {
                next++;
            }
        }
        return new Arguments(given, operands);
    }

    /** Whether the switch was given. */
    public boolean has(Option option) {
        return given.containsKey(option.name());
    }

    /** The operand of an option, if it was given. */
    public Optional<String> operandOf(Option option) {
        return Optional.ofNullable(given.get(option.name()));
    }

    /** Everything that is not an option, in order. */
    public List<String> operands() {
        return operands;
    }

    /** Notes the option; whether the word after it was its operand. */
    private static boolean take(Option option, String word, String following, Map<String, String> given) {
        int equals = word.indexOf('=');
        if (option.isSwitch()) {
            if (equals >= 0) {
                throw new UsageException(option.flag() + " stands alone: it takes no operand");
            }
            given.put(option.name(), "");
            return false;
        }
        String operand = equals >= 0 ? word.substring(equals + 1) : following;
        if (operand.isEmpty() || (equals < 0 && operand.startsWith("--"))) {
            throw new UsageException(option.flag() + " needs " + option.operand() + " after it");
        }
        given.put(option.name(), operand);
        return equals < 0;
    }

    private static Option option(List<Option> options, String word) {
        int equals = word.indexOf('=');
        String flag = equals < 0 ? word : word.substring(0, equals);
        return options.stream()
                .filter(option -> option.flag().equals(flag))
                .findFirst()
                .orElseThrow(() -> new UsageException("unknown option " + flag));
    }
}
