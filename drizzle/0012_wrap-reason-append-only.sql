-- The table was made anew with a stricter check, and its triggers went with the old one.
CREATE TRIGGER home_check_no_update BEFORE UPDATE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_delete BEFORE DELETE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
