PRAGMA foreign_keys=OFF;--> statement-breakpoint
CREATE TABLE `__new_matter` (
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`key` text NOT NULL,
	`kind` text NOT NULL,
	`rank` integer NOT NULL,
	`since` integer NOT NULL,
	`shows_from` text NOT NULL,
	`joint` text,
	`decision_id` text,
	`facts` text NOT NULL,
	`acknowledged_by` text,
	`assigned_to` text,
	`assigned_name` text,
	`snoozed_until` text,
	PRIMARY KEY(`clinic_id`, `patient_id`, `key`),
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "matter_kind" CHECK("__new_matter"."kind" IN ('red-flag', 'pause', 'same-day-contact', 'danger-passed', 'eased-twice', 'floor-reached', 'entry-conflict', 'ease-back', 'awaiting-signature', 'clock-doubtful', 'missing-answers', 'told-new', 'event-review', 'before-visit-answers', 'limit-ended', 'routine-contact', 'break-over', 'screening-due', 'override-ended', 'pressure-due', 'baseline-due'))
);
--> statement-breakpoint
INSERT INTO `__new_matter`("clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until") SELECT "clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until" FROM `matter`;--> statement-breakpoint
DROP TABLE `matter`;--> statement-breakpoint
ALTER TABLE `__new_matter` RENAME TO `matter`;--> statement-breakpoint
UPDATE `matter` SET `rank` = `rank` + 1 WHERE `rank` >= 11;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE INDEX `matter_by_danger` ON `matter` (`clinic_id`,`rank`,`since`,`patient_id`,`shows_from`,`snoozed_until`);--> statement-breakpoint
CREATE INDEX `matter_due` ON `matter` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`kind`,`assigned_to`);--> statement-breakpoint
ALTER TABLE `morning` ADD `entered_as` text;--> statement-breakpoint
ALTER TABLE `session_joint` ADD `gave_way_unanswered` integer;--> statement-breakpoint
ALTER TABLE `set_log` ADD `easier` integer;--> statement-breakpoint
ALTER TABLE `training_session` ADD `entered_as` text;--> statement-breakpoint
ALTER TABLE `training_session` ADD `did_extra_unanswered` integer;--> statement-breakpoint
ALTER TABLE `training_session` ADD `news` text;--> statement-breakpoint
ALTER TABLE `training_session` ADD `other_joint_worse` integer;--> statement-breakpoint
ALTER TABLE `training_session` ADD `told_new` integer;--> statement-breakpoint
CREATE INDEX `training_session_told` ON `training_session` (`patient_id`,`arrived_at`) WHERE "training_session"."told_new" = 1;--> statement-breakpoint
ALTER TABLE `two_hours` ADD `entered_as` text;