CREATE TABLE `record_file` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`handed_to` text NOT NULL,
	`rows` integer NOT NULL,
	`digest` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "record_file_handed_to" CHECK(length(trim("record_file"."handed_to")) > 0)
);
--> statement-breakpoint
CREATE INDEX `record_file_by_patient` ON `record_file` (`patient_id`,`recorded_at`);