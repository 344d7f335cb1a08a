-- What was recorded stays as it was recorded: a correction is a new row. These triggers refuse
-- every other way. Hand-written, because the migration tool does not write triggers.
CREATE TRIGGER care_profile_no_update BEFORE UPDATE ON care_profile BEGIN SELECT RAISE(ABORT, 'care_profile is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_profile_no_delete BEFORE DELETE ON care_profile BEGIN SELECT RAISE(ABORT, 'care_profile is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER screening_no_update BEFORE UPDATE ON screening BEGIN SELECT RAISE(ABORT, 'screening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER screening_no_delete BEFORE DELETE ON screening BEGIN SELECT RAISE(ABORT, 'screening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clearance_no_update BEFORE UPDATE ON clearance BEGIN SELECT RAISE(ABORT, 'clearance is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clearance_no_delete BEFORE DELETE ON clearance BEGIN SELECT RAISE(ABORT, 'clearance is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_no_update BEFORE UPDATE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_no_delete BEFORE DELETE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER effusion_test_no_update BEFORE UPDATE ON effusion_test BEGIN SELECT RAISE(ABORT, 'effusion_test is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER effusion_test_no_delete BEFORE DELETE ON effusion_test BEGIN SELECT RAISE(ABORT, 'effusion_test is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER baseline_no_update BEFORE UPDATE ON baseline BEGIN SELECT RAISE(ABORT, 'baseline is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER baseline_no_delete BEFORE DELETE ON baseline BEGIN SELECT RAISE(ABORT, 'baseline is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_no_update BEFORE UPDATE ON prescription BEGIN SELECT RAISE(ABORT, 'prescription is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_no_delete BEFORE DELETE ON prescription BEGIN SELECT RAISE(ABORT, 'prescription is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_no_update BEFORE UPDATE ON signature BEGIN SELECT RAISE(ABORT, 'signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_no_delete BEFORE DELETE ON signature BEGIN SELECT RAISE(ABORT, 'signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_end_no_update BEFORE UPDATE ON prescription_end BEGIN SELECT RAISE(ABORT, 'prescription_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_end_no_delete BEFORE DELETE ON prescription_end BEGIN SELECT RAISE(ABORT, 'prescription_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER training_session_no_update BEFORE UPDATE ON training_session BEGIN SELECT RAISE(ABORT, 'training_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER training_session_no_delete BEFORE DELETE ON training_session BEGIN SELECT RAISE(ABORT, 'training_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER set_log_no_update BEFORE UPDATE ON set_log BEGIN SELECT RAISE(ABORT, 'set_log is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER set_log_no_delete BEFORE DELETE ON set_log BEGIN SELECT RAISE(ABORT, 'set_log is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER session_joint_no_update BEFORE UPDATE ON session_joint BEGIN SELECT RAISE(ABORT, 'session_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER session_joint_no_delete BEFORE DELETE ON session_joint BEGIN SELECT RAISE(ABORT, 'session_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER two_hours_no_update BEFORE UPDATE ON two_hours BEGIN SELECT RAISE(ABORT, 'two_hours is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER two_hours_no_delete BEFORE DELETE ON two_hours BEGIN SELECT RAISE(ABORT, 'two_hours is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_no_update BEFORE UPDATE ON morning BEGIN SELECT RAISE(ABORT, 'morning is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_no_delete BEFORE DELETE ON morning BEGIN SELECT RAISE(ABORT, 'morning is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_joint_no_update BEFORE UPDATE ON morning_joint BEGIN SELECT RAISE(ABORT, 'morning_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_joint_no_delete BEFORE DELETE ON morning_joint BEGIN SELECT RAISE(ABORT, 'morning_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER entry_conflict_no_update BEFORE UPDATE ON entry_conflict BEGIN SELECT RAISE(ABORT, 'entry_conflict is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER entry_conflict_no_delete BEFORE DELETE ON entry_conflict BEGIN SELECT RAISE(ABORT, 'entry_conflict is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER proposal_no_update BEFORE UPDATE ON proposal BEGIN SELECT RAISE(ABORT, 'proposal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER proposal_no_delete BEFORE DELETE ON proposal BEGIN SELECT RAISE(ABORT, 'proposal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_response_no_update BEFORE UPDATE ON decision_response BEGIN SELECT RAISE(ABORT, 'decision_response is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_response_no_delete BEFORE DELETE ON decision_response BEGIN SELECT RAISE(ABORT, 'decision_response is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER message_no_update BEFORE UPDATE ON message BEGIN SELECT RAISE(ABORT, 'message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER message_no_delete BEFORE DELETE ON message BEGIN SELECT RAISE(ABORT, 'message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER choice_version_no_update BEFORE UPDATE ON choice_version BEGIN SELECT RAISE(ABORT, 'choice_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER choice_version_no_delete BEFORE DELETE ON choice_version BEGIN SELECT RAISE(ABORT, 'choice_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_no_update BEFORE UPDATE ON audit BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_no_delete BEFORE DELETE ON audit BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER programme_no_update BEFORE UPDATE ON programme BEGIN SELECT RAISE(ABORT, 'programme is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER programme_no_delete BEFORE DELETE ON programme BEGIN SELECT RAISE(ABORT, 'programme is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_no_update BEFORE UPDATE ON care_limit BEGIN SELECT RAISE(ABORT, 'care_limit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_no_delete BEFORE DELETE ON care_limit BEGIN SELECT RAISE(ABORT, 'care_limit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_lift_no_update BEFORE UPDATE ON care_limit_lift BEGIN SELECT RAISE(ABORT, 'care_limit_lift is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_lift_no_delete BEFORE DELETE ON care_limit_lift BEGIN SELECT RAISE(ABORT, 'care_limit_lift is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_event_no_update BEFORE UPDATE ON care_event BEGIN SELECT RAISE(ABORT, 'care_event is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_event_no_delete BEFORE DELETE ON care_event BEGIN SELECT RAISE(ABORT, 'care_event is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_no_update BEFORE UPDATE ON pre_approval BEGIN SELECT RAISE(ABORT, 'pre_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_no_delete BEFORE DELETE ON pre_approval BEGIN SELECT RAISE(ABORT, 'pre_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_end_no_update BEFORE UPDATE ON pre_approval_end BEGIN SELECT RAISE(ABORT, 'pre_approval_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_end_no_delete BEFORE DELETE ON pre_approval_end BEGIN SELECT RAISE(ABORT, 'pre_approval_end is append-only'); END;
