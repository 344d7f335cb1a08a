-- Goals, bookings, messages and sites stay as they were recorded; a later row counts.
CREATE TRIGGER goal_step_no_update BEFORE UPDATE ON goal_step BEGIN SELECT RAISE(ABORT, 'goal_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER goal_step_no_delete BEFORE DELETE ON goal_step BEGIN SELECT RAISE(ABORT, 'goal_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER review_booking_no_update BEFORE UPDATE ON review_booking BEGIN SELECT RAISE(ABORT, 'review_booking is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER review_booking_no_delete BEFORE DELETE ON review_booking BEGIN SELECT RAISE(ABORT, 'review_booking is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_message_no_update BEFORE UPDATE ON patient_message BEGIN SELECT RAISE(ABORT, 'patient_message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_message_no_delete BEFORE DELETE ON patient_message BEGIN SELECT RAISE(ABORT, 'patient_message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_site_no_update BEFORE UPDATE ON patient_site BEGIN SELECT RAISE(ABORT, 'patient_site is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_site_no_delete BEFORE DELETE ON patient_site BEGIN SELECT RAISE(ABORT, 'patient_site is append-only'); END;
--> statement-breakpoint
-- Two kinds of matter came in between; those after them moved down.
UPDATE matter SET rank = rank + CASE WHEN rank >= 16 THEN 2 WHEN rank >= 11 THEN 1 ELSE 0 END;
