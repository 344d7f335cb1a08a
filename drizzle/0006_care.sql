CREATE TABLE `consent` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`kind` text NOT NULL,
	`act` text NOT NULL,
	`wording_version` integer NOT NULL,
	`said_to` text NOT NULL,
	`reason` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "consent_kind" CHECK("consent"."kind" IN ('occlusion-supervised', 'occlusion-unsupervised', 'remote-monitoring', 'sharing', 'export')),
	CONSTRAINT "consent_act" CHECK("consent"."act" IN ('given', 'withdrawn')),
	CONSTRAINT "consent_said_to" CHECK("consent"."said_to" IN ('own-page', 'clinician')),
	CONSTRAINT "consent_wording_number" CHECK("consent"."wording_version" >= 0)
);
--> statement-breakpoint
CREATE INDEX `consent_by_patient` ON `consent` (`patient_id`,`kind`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `consent_wording` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`kind` text NOT NULL,
	`version` integer NOT NULL,
	`text` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "consent_wording_kind" CHECK("consent_wording"."kind" IN ('occlusion-supervised', 'occlusion-unsupervised', 'remote-monitoring', 'sharing', 'export')),
	CONSTRAINT "consent_wording_text" CHECK(length(trim("consent_wording"."text")) BETWEEN 1 AND 4000)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `consent_wording_version` ON `consent_wording` (`clinic_id`,`kind`,`version`);--> statement-breakpoint
CREATE TABLE `deputy` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`user_id` text,
	`user_name` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "deputy_name" CHECK(("deputy"."user_id" IS NULL) = ("deputy"."user_name" IS NULL))
);
--> statement-breakpoint
CREATE INDEX `deputy_by_clinic` ON `deputy` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `draft` (
	`clinic_id` text NOT NULL,
	`user_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`form` text NOT NULL,
	`typed` text NOT NULL,
	`saved_at` integer NOT NULL,
	PRIMARY KEY(`clinic_id`, `user_id`, `patient_id`, `form`),
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "draft_size" CHECK(length("draft"."typed") <= 32768)
);
--> statement-breakpoint
CREATE TABLE `episode` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`diagnoses` text NOT NULL,
	`joints` text NOT NULL,
	`followed_joints` text NOT NULL,
	`goals` text NOT NULL,
	`referrer` text,
	`contacts` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "episode_followed" CHECK(json_array_length("episode"."followed_joints") BETWEEN 1 AND 2),
	CONSTRAINT "episode_diagnoses" CHECK(json_array_length("episode"."diagnoses") > 0)
);
--> statement-breakpoint
CREATE INDEX `episode_by_patient` ON `episode` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `episode_change` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`episode_id` text NOT NULL,
	`state` text NOT NULL,
	`on_day` text NOT NULL,
	`reason` text NOT NULL,
	`break_kind` text,
	`expected_back` text,
	`closed_matters` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`episode_id`) REFERENCES `episode`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "episode_change_state" CHECK("episode_change"."state" IN ('open', 'active', 'on-break', 'discharged', 'transferred', 'died')),
	CONSTRAINT "episode_change_reason" CHECK(length(trim("episode_change"."reason")) > 0),
	CONSTRAINT "episode_change_day" CHECK("episode_change"."on_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "episode_change_break" CHECK(("episode_change"."state" = 'on-break') = ("episode_change"."break_kind" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `episode_change_by_patient` ON `episode_change` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `home_check` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`limb` text NOT NULL,
	`side` text NOT NULL,
	`day` text NOT NULL,
	`releases_with_left_hand` integer NOT NULL,
	`releases_with_right_hand` integer NOT NULL,
	`feeling_intact` integer NOT NULL,
	`knows_to_release` integer NOT NULL,
	`wrap_opened` integer NOT NULL,
	`reason` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "home_check_limb" CHECK("home_check"."limb" IN ('arm', 'leg')),
	CONSTRAINT "home_check_side" CHECK("home_check"."side" IN ('left', 'right')),
	CONSTRAINT "home_check_wrap" CHECK("home_check"."wrap_opened" = 0 OR length(trim("home_check"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `home_check_by_patient` ON `home_check` (`patient_id`,`limb`,`side`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `medicine_change` (
	`event_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`act` text NOT NULL,
	`medicine_class` text NOT NULL,
	FOREIGN KEY (`event_id`) REFERENCES `care_event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "medicine_change_act" CHECK("medicine_change"."act" IN ('start', 'stop', 'change'))
);
--> statement-breakpoint
CREATE INDEX `medicine_change_by_patient` ON `medicine_change` (`patient_id`);--> statement-breakpoint
CREATE TABLE `observed_session` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`limb` text NOT NULL,
	`side` text NOT NULL,
	`day` text NOT NULL,
	`watched_whole` integer NOT NULL,
	`remote_reason` text,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "observed_session_limb" CHECK("observed_session"."limb" IN ('arm', 'leg')),
	CONSTRAINT "observed_session_side" CHECK("observed_session"."side" IN ('left', 'right')),
	CONSTRAINT "observed_session_day" CHECK("observed_session"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `observed_session_by_patient` ON `observed_session` (`patient_id`,`limb`,`side`,`day`);--> statement-breakpoint
CREATE TABLE `pause_owner` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`decision_id` text NOT NULL,
	`owner_id` text NOT NULL,
	`owner_name` text NOT NULL,
	`until` text NOT NULL,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`decision_id`) REFERENCES `decision`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pause_owner_day" CHECK("pause_owner"."until" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `pause_owner_by_patient` ON `pause_owner` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `pre_visit` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`day` text NOT NULL,
	`sheet_version` text NOT NULL,
	`answers` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pre_visit_day" CHECK("pre_visit"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `pre_visit_by_patient` ON `pre_visit` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `visit` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`day` text NOT NULL,
	`place` text NOT NULL,
	`whereabouts` text,
	`call_back_phone` text,
	`present` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "visit_place" CHECK("visit"."place" IN ('clinic', 'home-visit', 'video', 'telephone')),
	CONSTRAINT "visit_remote" CHECK("visit"."place" NOT IN ('video', 'telephone') OR ("visit"."whereabouts" IS NOT NULL AND "visit"."call_back_phone" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `visit_by_patient` ON `visit` (`patient_id`,`recorded_at`);--> statement-breakpoint
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
	CONSTRAINT "matter_kind" CHECK("__new_matter"."kind" IN ('red-flag', 'pause', 'same-day-contact', 'danger-passed', 'eased-twice', 'floor-reached', 'entry-conflict', 'ease-back', 'awaiting-signature', 'clock-doubtful', 'missing-answers', 'event-review', 'before-visit-answers', 'limit-ended', 'routine-contact', 'break-over', 'screening-due', 'override-ended', 'pressure-due', 'baseline-due'))
);
--> statement-breakpoint
INSERT INTO `__new_matter`("clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until") SELECT "clinic_id", "patient_id", "key", "kind", "rank", "since", "shows_from", "joint", "decision_id", "facts", "acknowledged_by", "assigned_to", "assigned_name", "snoozed_until" FROM `matter`;--> statement-breakpoint
DROP TABLE `matter`;--> statement-breakpoint
ALTER TABLE `__new_matter` RENAME TO `matter`;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE INDEX `matter_by_clinic` ON `matter` (`clinic_id`,`rank`,`since`,`shows_from`,`patient_id`);