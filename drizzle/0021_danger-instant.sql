DROP INDEX `matter_by_danger`;--> statement-breakpoint
DROP INDEX `matter_due`;--> statement-breakpoint
ALTER TABLE `matter` ADD `shows_at` integer;--> statement-breakpoint
CREATE INDEX `matter_by_danger` ON `matter` (`clinic_id`,`rank`,`since`,`patient_id`,`shows_from`,`snoozed_until`,`shows_at`);--> statement-breakpoint
CREATE INDEX `matter_due` ON `matter` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`kind`,`assigned_to`,`shows_at`);