PRAGMA foreign_keys=OFF;--> statement-breakpoint
CREATE TABLE `__new_home_check` (
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
	CONSTRAINT "home_check_limb" CHECK("__new_home_check"."limb" IN ('arm', 'leg')),
	CONSTRAINT "home_check_side" CHECK("__new_home_check"."side" IN ('left', 'right')),
	CONSTRAINT "home_check_wrap" CHECK("__new_home_check"."wrap_opened" = 0 OR ("__new_home_check"."reason" IS NOT NULL AND length(trim("__new_home_check"."reason")) > 0))
);
--> statement-breakpoint
INSERT INTO `__new_home_check`("id", "clinic_id", "patient_id", "recorded_at", "recorded_by", "by_name", "limb", "side", "day", "releases_with_left_hand", "releases_with_right_hand", "feeling_intact", "knows_to_release", "wrap_opened", "reason") SELECT "id", "clinic_id", "patient_id", "recorded_at", "recorded_by", "by_name", "limb", "side", "day", "releases_with_left_hand", "releases_with_right_hand", "feeling_intact", "knows_to_release", "wrap_opened", "reason" FROM `home_check`;--> statement-breakpoint
DROP TABLE `home_check`;--> statement-breakpoint
ALTER TABLE `__new_home_check` RENAME TO `home_check`;--> statement-breakpoint
PRAGMA foreign_keys=ON;--> statement-breakpoint
CREATE INDEX `home_check_by_patient` ON `home_check` (`patient_id`,`limb`,`side`,`recorded_at`);