package org.manubrium.casefile;

import org.manubrium.marking.compile.CaseTruth;
import org.manubrium.marking.compile.CaseWeigher;
import org.manubrium.marking.compile.KeyCompiler;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.patient.Body;
import org.manubrium.reasoning.weigh.Weigher;
import org.manubrium.tables.MarkingTables;
import org.manubrium.tables.Reference;

/** Compiles the key of a case file from the tables. */
public final class CaseKeys {
    private final Reference reference;
    private final KeyCompiler compiler;
    private final HarmsOfCase harms;
    private final SoreOfCase sore;
    private final ExpectationsOfCase expectations;

    public CaseKeys(Reference reference) {
        MarkingTables marking = reference.marking();
        this.reference = reference;
        this.expectations = new ExpectationsOfCase(reference);
        this.harms = new HarmsOfCase(reference.signs(), marking.harms());
        this.sore = new SoreOfCase(reference.signs(), marking.hurting());
        this.compiler = new KeyCompiler(
                reference.signs(),
                marking.conventions(),
                reference.conditions(),
                marking.related(),
                marking.harms(),
                reference.hash(),
                new CaseWeigher(new Weigher(
                        reference.signs(),
                        reference.conditions(),
                        reference.reasoning().grounds())));
    }

    /** The key of a case; the same case and tables always give the same. */
    public CompiledKey of(CaseFile file) {
        CaseTruth truth = file.truth(reference);
        CompiledKey key = compiler.compile(truth);
        Body body = truth.body();
        return key.withHarms(harms.of(body, file.unsafe()))
                .withSore(sore.of(body))
                .with(key.conclusion().expecting(expectations.of(file)));
    }
}
