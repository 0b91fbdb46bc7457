package org.manubrium.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.marking.key.Form;
import org.manubrium.marking.key.KeyLine;
import org.manubrium.school.mark.HandedIn;

class KeyJsonTest {
    private static final CompiledKey READ = KeyJson.read(KeyJson.write(HandedIn.KEY));

    @Test
    void whatIsReadIsWhatWasWritten() {
        assertThat(READ).isEqualTo(HandedIn.KEY);
    }

    @Test
    void equalFormsAndLabelsAreOneObject() {
        List<Form> forms =
                READ.lines().stream().flatMap(line -> line.forms().stream()).toList();
        assertThat(distinct(forms)).hasSize((int) forms.stream().distinct().count());

        KeyLine line = READ.lines().get(0);
        assertThat(line.label())
                .isSameAs(
                        KeyJson.read(KeyJson.write(HandedIn.KEY)).lines().get(0).label());
    }

    /** The forms that are objects of their own. */
    private static Set<Form> distinct(List<Form> forms) {
        Set<Form> distinct = Collections.newSetFromMap(new IdentityHashMap<>());
        distinct.addAll(forms);
        return distinct;
    }
}
