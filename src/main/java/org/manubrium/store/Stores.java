package org.manubrium.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** Every table, within one scope of the database. Not to be kept beyond it. */
public final class Stores {
    static final List<Class<?>> ROWS = List.of(
            org.manubrium.security.OneTimeLink.class,
            CaseFile.class,
            CaseVersion.class,
            VersionLine.class,
            CaseDraft.class,
            Cohort.class,
            Enrolment.class,
            Invitation.class,
            SetCase.class,
            Attempt.class,
            StoredMark.class,
            MarkChange.class,
            StoredEvent.class,
            KeyCorrection.class,
            Remarking.class,
            Confirmation.class,
            DrillQuestion.class,
            AuditEntry.class,
            ReferenceRow.class);

    private final Handle handle;

    Stores(Handle handle) {
        this.handle = handle;
    }

    public AccountStore accounts() {
        return new AccountStore(handle);
    }

    public SessionStore sessions() {
        return new SessionStore(handle);
    }

    public LinkStore links() {
        return new LinkStore(handle);
    }

    public ThrottleStore throttle() {
        return new ThrottleStore(handle);
    }

    public AuditStore audit() {
        return new AuditStore(handle);
    }

    public ReferenceStore reference() {
        return new ReferenceStore(handle);
    }

    public CaseStore cases() {
        return new CaseStore(handle);
    }

    public DraftStore drafts() {
        return new DraftStore(handle);
    }

    public CohortStore cohorts() {
        return new CohortStore(handle);
    }

    public InvitationStore invitations() {
        return new InvitationStore(handle);
    }

    public SetCaseStore setCases() {
        return new SetCaseStore(handle);
    }

    public AttemptStore attempts() {
        return new AttemptStore(handle);
    }

    public EventStore events() {
        return new EventStore(handle);
    }

    public MarkStore marks() {
        return new MarkStore(handle);
    }

    public KeyStore keys() {
        return new KeyStore(handle);
    }

    public RemarkingStore remarkings() {
        return new RemarkingStore(handle);
    }

    public ConfirmationStore confirmations() {
        return new ConfirmationStore(handle);
    }

    public DrillStore drill() {
        return new DrillStore(handle);
    }
}
