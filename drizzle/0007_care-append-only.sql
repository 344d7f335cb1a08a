-- What was agreed, watched, answered and decided about care stays as it was recorded. A draft is no record.
CREATE TRIGGER episode_no_update BEFORE UPDATE ON episode BEGIN SELECT RAISE(ABORT, 'episode is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_no_delete BEFORE DELETE ON episode BEGIN SELECT RAISE(ABORT, 'episode is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_change_no_update BEFORE UPDATE ON episode_change BEGIN SELECT RAISE(ABORT, 'episode_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_change_no_delete BEFORE DELETE ON episode_change BEGIN SELECT RAISE(ABORT, 'episode_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_wording_no_update BEFORE UPDATE ON consent_wording BEGIN SELECT RAISE(ABORT, 'consent_wording is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_wording_no_delete BEFORE DELETE ON consent_wording BEGIN SELECT RAISE(ABORT, 'consent_wording is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_no_update BEFORE UPDATE ON consent BEGIN SELECT RAISE(ABORT, 'consent is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_no_delete BEFORE DELETE ON consent BEGIN SELECT RAISE(ABORT, 'consent is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_visit_no_update BEFORE UPDATE ON pre_visit BEGIN SELECT RAISE(ABORT, 'pre_visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_visit_no_delete BEFORE DELETE ON pre_visit BEGIN SELECT RAISE(ABORT, 'pre_visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER observed_session_no_update BEFORE UPDATE ON observed_session BEGIN SELECT RAISE(ABORT, 'observed_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER observed_session_no_delete BEFORE DELETE ON observed_session BEGIN SELECT RAISE(ABORT, 'observed_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_update BEFORE UPDATE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_delete BEFORE DELETE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER deputy_no_update BEFORE UPDATE ON deputy BEGIN SELECT RAISE(ABORT, 'deputy is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER deputy_no_delete BEFORE DELETE ON deputy BEGIN SELECT RAISE(ABORT, 'deputy is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_owner_no_update BEFORE UPDATE ON pause_owner BEGIN SELECT RAISE(ABORT, 'pause_owner is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_owner_no_delete BEFORE DELETE ON pause_owner BEGIN SELECT RAISE(ABORT, 'pause_owner is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_no_update BEFORE UPDATE ON visit BEGIN SELECT RAISE(ABORT, 'visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_no_delete BEFORE DELETE ON visit BEGIN SELECT RAISE(ABORT, 'visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER medicine_change_no_update BEFORE UPDATE ON medicine_change BEGIN SELECT RAISE(ABORT, 'medicine_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER medicine_change_no_delete BEFORE DELETE ON medicine_change BEGIN SELECT RAISE(ABORT, 'medicine_change is append-only'); END;
--> statement-breakpoint
-- New kinds of matter stand between the old ones, so the places move.
UPDATE matter SET rank = CASE kind WHEN 'red-flag' THEN 0 WHEN 'pause' THEN 1 WHEN 'same-day-contact' THEN 2 WHEN 'danger-passed' THEN 3 WHEN 'eased-twice' THEN 4 WHEN 'floor-reached' THEN 5 WHEN 'entry-conflict' THEN 6 WHEN 'ease-back' THEN 7 WHEN 'awaiting-signature' THEN 8 WHEN 'clock-doubtful' THEN 9 WHEN 'missing-answers' THEN 10 WHEN 'event-review' THEN 11 WHEN 'before-visit-answers' THEN 12 WHEN 'limit-ended' THEN 13 WHEN 'routine-contact' THEN 14 WHEN 'break-over' THEN 15 WHEN 'screening-due' THEN 16 WHEN 'override-ended' THEN 17 WHEN 'pressure-due' THEN 18 WHEN 'baseline-due' THEN 19 END;
