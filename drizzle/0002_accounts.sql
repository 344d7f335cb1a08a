CREATE TABLE `auth_two_factor` (
	`id` text PRIMARY KEY NOT NULL,
	`user_id` text NOT NULL,
	`secret` text NOT NULL,
	`backup_codes` text NOT NULL,
	`verified` integer DEFAULT true NOT NULL,
	`failed_verification_count` integer DEFAULT 0 NOT NULL,
	`locked_until` integer,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE UNIQUE INDEX `auth_two_factor_user` ON `auth_two_factor` (`user_id`);--> statement-breakpoint
CREATE TABLE `care_team` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`user_id` text NOT NULL,
	`belongs` integer NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `care_team_by_patient` ON `care_team` (`patient_id`,`user_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `care_team_by_user` ON `care_team` (`clinic_id`,`user_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `device` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`user_id` text NOT NULL,
	`secret_seal` text NOT NULL,
	`pin_hash` text,
	`wrong_tries` integer DEFAULT 0 NOT NULL,
	`enrolled_at` integer NOT NULL,
	`last_used_at` integer,
	`ended_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "device_tries" CHECK("device"."wrong_tries" BETWEEN 0 AND 5)
);
--> statement-breakpoint
CREATE INDEX `device_by_patient` ON `device` (`patient_id`,`enrolled_at`);--> statement-breakpoint
CREATE TABLE `emergency_opening` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`user_id` text NOT NULL,
	`user_name` text NOT NULL,
	`reason` text NOT NULL,
	`opened_at` integer NOT NULL,
	`until` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "emergency_opening_reason" CHECK(length(trim("emergency_opening"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `emergency_opening_by_patient` ON `emergency_opening` (`patient_id`,`user_id`,`until`);--> statement-breakpoint
CREATE INDEX `emergency_opening_by_clinic` ON `emergency_opening` (`clinic_id`,`opened_at`);--> statement-breakpoint
CREATE TABLE `invitation` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`code_seal` text NOT NULL,
	`made_at` integer NOT NULL,
	`made_by` text NOT NULL,
	`expires_at` integer NOT NULL,
	`used_at` integer,
	`withdrawn_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `invitation_code` ON `invitation` (`code_seal`);--> statement-breakpoint
CREATE INDEX `invitation_by_patient` ON `invitation` (`patient_id`,`made_at`);--> statement-breakpoint
CREATE TABLE `site` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`name` text NOT NULL,
	`address` text,
	`opened_at` integer NOT NULL,
	`closed_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `site_by_clinic` ON `site` (`clinic_id`,`name`);--> statement-breakpoint
ALTER TABLE `auth_session` ADD `proved_at` integer;--> statement-breakpoint
ALTER TABLE `auth_session` ADD `device_id` text;--> statement-breakpoint
ALTER TABLE `auth_user` ADD `administers` integer DEFAULT false NOT NULL;--> statement-breakpoint
ALTER TABLE `auth_user` ADD `two_factor_enabled` integer DEFAULT false NOT NULL;--> statement-breakpoint
ALTER TABLE `auth_user` ADD `deactivated_at` integer;--> statement-breakpoint
ALTER TABLE `auth_user` ADD `starting_until` integer;