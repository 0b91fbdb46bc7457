package org.manubrium.school.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.manubrium.marking.DomainName;
import org.manubrium.marking.MarkSheet;
import org.manubrium.marking.MarkSheet.Line;

/** What the same line of several mark sheets asks. */
public record SheetLine(String id, DomainName domain, String asked, String key) {

    /** Every line that stands on any of the sheets, by domain, in an order that agrees with theirs. */
    static List<SheetLine> over(List<MarkSheet> sheets) {
        List<SheetLine> lines = new ArrayList<>();
        for (MarkSheet sheet : sheets) {
            int at = 0;
            for (Line line : sheet.lines()) {
                int found = indexOf(lines, line);
                if (found < 0) {
                    lines.add(at, new SheetLine(line.id(), line.domain(), line.asked(), line.key()));
                    at++;
                } else {
                    at = found + 1;
                }
            }
        }
        lines.sort(Comparator.comparing(SheetLine::domain));
        return List.copyOf(lines);
    }

    private static int indexOf(List<SheetLine> lines, Line line) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).id().equals(line.id())) {
                return i;
            }
        }
        return -1;
    }
}
