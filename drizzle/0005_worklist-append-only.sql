-- What was done about a matter is a record; the matters themselves are derived and may change.
CREATE TRIGGER matter_action_no_update BEFORE UPDATE ON matter_action BEGIN SELECT RAISE(ABORT, 'matter_action is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER matter_action_no_delete BEFORE DELETE ON matter_action BEGIN SELECT RAISE(ABORT, 'matter_action is append-only'); END;
