-- Notes of moved rows stay as they are, like the rows themselves.
CREATE TRIGGER audit_segment_no_update BEFORE UPDATE ON audit_segment BEGIN SELECT RAISE(ABORT, 'audit_segment is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_segment_no_delete BEFORE DELETE ON audit_segment BEGIN SELECT RAISE(ABORT, 'audit_segment is append-only'); END;
--> statement-breakpoint
-- Audit rows may leave only when a note says that they were moved; a note without the key's seal is found.
DROP TRIGGER audit_no_delete;
--> statement-breakpoint
CREATE TRIGGER audit_no_delete BEFORE DELETE ON audit WHEN OLD.sequence > coalesce((SELECT max(last_sequence) FROM audit_segment WHERE clinic_id = OLD.clinic_id), 0) BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
