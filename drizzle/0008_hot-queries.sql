DROP INDEX `decision_by_clinic`;--> statement-breakpoint
CREATE INDEX `decision_by_patient_time` ON `decision` (`clinic_id`,`patient_id`,`evaluated_at`);--> statement-breakpoint
DROP INDEX `training_session_by_patient`;--> statement-breakpoint
CREATE INDEX `training_session_by_patient_day` ON `training_session` (`patient_id`,`day`);--> statement-breakpoint
CREATE INDEX `training_session_doubtful` ON `training_session` (`patient_id`,`arrived_at`) WHERE "training_session"."clock_doubtful" = 1;--> statement-breakpoint
DROP INDEX `matter_by_clinic`;--> statement-breakpoint
CREATE INDEX `matter_by_danger` ON `matter` (`clinic_id`,`rank`,`since`,`patient_id`,`shows_from`,`snoozed_until`);--> statement-breakpoint
CREATE INDEX `matter_due` ON `matter` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`kind`,`assigned_to`);--> statement-breakpoint
CREATE INDEX `morning_doubtful` ON `morning` (`patient_id`,`arrived_at`) WHERE "morning"."clock_doubtful" = 1;