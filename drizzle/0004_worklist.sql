CREATE TABLE `matter` (
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
	CONSTRAINT "matter_kind" CHECK("matter"."kind" IN ('red-flag', 'pause', 'same-day-contact', 'eased-twice', 'floor-reached', 'entry-conflict', 'ease-back', 'awaiting-signature', 'clock-doubtful', 'missing-answers', 'routine-contact', 'screening-due', 'override-ended', 'pressure-due', 'baseline-due'))
);
--> statement-breakpoint
CREATE INDEX `matter_by_clinic` ON `matter` (`clinic_id`,`rank`,`since`,`shows_from`,`patient_id`);--> statement-breakpoint
CREATE TABLE `matter_action` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`matter_key` text NOT NULL,
	`matter_since` integer NOT NULL,
	`act` text NOT NULL,
	`until` text,
	`assignee` text,
	`assignee_name` text,
	`reason` text NOT NULL,
	`done_at` integer NOT NULL,
	`done_by` text NOT NULL,
	`done_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "matter_action_act" CHECK("matter_action"."act" IN ('acknowledge', 'assign', 'snooze')),
	CONSTRAINT "matter_action_snooze" CHECK(("matter_action"."act" = 'snooze') = ("matter_action"."until" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `matter_action_by_patient` ON `matter_action` (`patient_id`,`done_at`);