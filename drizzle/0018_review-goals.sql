CREATE TABLE `goal_step` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`goal` text NOT NULL,
	`state` text NOT NULL,
	`by_day` text,
	`note` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "goal_step_goal" CHECK(length(trim("goal_step"."goal")) BETWEEN 1 AND 300),
	CONSTRAINT "goal_step_state" CHECK("goal_step"."state" IN ('open', 'partly-reached', 'reached', 'set-aside')),
	CONSTRAINT "goal_step_day" CHECK("goal_step"."by_day" IS NULL OR "goal_step"."by_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `goal_step_by_patient` ON `goal_step` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `patient_message` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`text` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "patient_message_text" CHECK(length(trim("patient_message"."text")) BETWEEN 1 AND 1000)
);
--> statement-breakpoint
CREATE INDEX `patient_message_by_patient` ON `patient_message` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `patient_site` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`site_id` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`site_id`) REFERENCES `site`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `patient_site_by_patient` ON `patient_site` (`clinic_id`,`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `review_booking` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`day` text,
	`time` text,
	`place` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "review_booking_day" CHECK("review_booking"."day" IS NULL OR "review_booking"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "review_booking_time" CHECK("review_booking"."time" IS NULL OR "review_booking"."time" GLOB '[0-2][0-9]:[0-5][0-9]')
);
--> statement-breakpoint
CREATE INDEX `review_booking_by_patient` ON `review_booking` (`patient_id`,`recorded_at`);--> statement-breakpoint
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
	CONSTRAINT "matter_kind" CHECK("__new_matter"."kind" IN ('red-flag', 'pause', 'same-day-contact', 'danger-passed', 'eased-twice', 'floor-reached', 'entry-conflict', 'ease-back', 'awaiting-signature', 'clock-doubtful', 'missing-answers', 'message', 'told-new', 'event-review', 'before-visit-answers', 'limit-ended', 'routine-contact', 'review-day', 'break-over', 'screening-due', 'override-ended', 'pressure-due', 'baseline-due'))
);
--> statement-breakpoint
INSERT INTO `__new_matter`("clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until") SELECT "clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until" FROM `matter`;--> statement-breakpoint
DROP TABLE `matter`;--> statement-breakpoint
ALTER TABLE `__new_matter` RENAME TO `matter`;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE INDEX `matter_by_danger` ON `matter` (`clinic_id`,`rank`,`since`,`patient_id`,`shows_from`,`snoozed_until`);--> statement-breakpoint
CREATE INDEX `matter_due` ON `matter` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`kind`,`assigned_to`);