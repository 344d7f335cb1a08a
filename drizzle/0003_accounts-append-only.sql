-- Who belonged to a care team and who opened a record from outside it stays as it was recorded.
CREATE TRIGGER care_team_no_update BEFORE UPDATE ON care_team BEGIN SELECT RAISE(ABORT, 'care_team is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_team_no_delete BEFORE DELETE ON care_team BEGIN SELECT RAISE(ABORT, 'care_team is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER emergency_opening_no_update BEFORE UPDATE ON emergency_opening BEGIN SELECT RAISE(ABORT, 'emergency_opening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER emergency_opening_no_delete BEFORE DELETE ON emergency_opening BEGIN SELECT RAISE(ABORT, 'emergency_opening is append-only'); END;
