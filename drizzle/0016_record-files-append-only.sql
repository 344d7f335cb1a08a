-- To whom a record was handed on stays as it was written.
CREATE TRIGGER record_file_no_update BEFORE UPDATE ON record_file BEGIN SELECT RAISE(ABORT, 'record_file is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER record_file_no_delete BEFORE DELETE ON record_file BEGIN SELECT RAISE(ABORT, 'record_file is append-only'); END;
