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
CREATE TABLE `clinic_machine` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`machine_id` text NOT NULL,
	`version` integer NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`loading` text NOT NULL,
	`place` text NOT NULL,
	`first_kg` real NOT NULL,
	`step_kg` real NOT NULL,
	`last_kg` real NOT NULL,
	`has_half_step` integer NOT NULL,
	`is_retired` integer NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`machine_id`) REFERENCES `clinic_machine`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "clinic_machine_kind" CHECK("clinic_machine"."kind" IN ('leg-press', 'knee-extension', 'leg-curl', 'chest-press', 'cable')),
	CONSTRAINT "clinic_machine_loading" CHECK("clinic_machine"."loading" IN ('stack', 'lever')),
	CONSTRAINT "clinic_machine_loads" CHECK("clinic_machine"."step_kg" > 0 AND "clinic_machine"."first_kg" > 0 AND "clinic_machine"."first_kg" <= "clinic_machine"."last_kg"),
	CONSTRAINT "clinic_machine_first" CHECK("clinic_machine"."version" > 0 AND ("clinic_machine"."version" = 1) = ("clinic_machine"."machine_id" = "clinic_machine"."id"))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `clinic_machine_version` ON `clinic_machine` (`machine_id`,`version`);--> statement-breakpoint
CREATE INDEX `clinic_machine_by_clinic` ON `clinic_machine` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `device` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`user_id` text NOT NULL,
	`secret_digest` text NOT NULL,
	`pin_hash` text,
	`wrong_attempts` integer DEFAULT 0 NOT NULL,
	`enrolled_at` integer NOT NULL,
	`last_used_at` integer,
	`ended_at` integer,
	`ended_by` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "device_attempts" CHECK("device"."wrong_attempts" BETWEEN 0 AND 5),
	CONSTRAINT "device_ended" CHECK(("device"."ended_at" IS NULL) = ("device"."ended_by" IS NULL))
);
--> statement-breakpoint
CREATE INDEX `device_by_patient` ON `device` (`patient_id`,`enrolled_at`);--> statement-breakpoint
CREATE TABLE `emergency_access` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`user_id` text NOT NULL,
	`user_name` text NOT NULL,
	`reason` text NOT NULL,
	`began_at` integer NOT NULL,
	`until` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "emergency_access_reason" CHECK(length(trim("emergency_access"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `emergency_access_by_patient` ON `emergency_access` (`patient_id`,`user_id`,`until`);--> statement-breakpoint
CREATE INDEX `emergency_access_by_clinic` ON `emergency_access` (`clinic_id`,`began_at`);--> statement-breakpoint
CREATE TABLE `invitation` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`code_digest` text NOT NULL,
	`made_at` integer NOT NULL,
	`made_by` text NOT NULL,
	`expires_at` integer NOT NULL,
	`used_at` integer,
	`withdrawn_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `invitation_code` ON `invitation` (`code_digest`);--> statement-breakpoint
CREATE INDEX `invitation_by_patient` ON `invitation` (`patient_id`,`made_at`);--> statement-breakpoint
CREATE TABLE `key_fingerprint` (
	`name` text PRIMARY KEY NOT NULL,
	`fingerprint` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `passkey` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`user_id` text NOT NULL,
	`name` text NOT NULL,
	`public_key` text NOT NULL,
	`counter` integer NOT NULL,
	`made_at` integer NOT NULL,
	`last_used_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE INDEX `passkey_by_user` ON `passkey` (`user_id`);--> statement-breakpoint
CREATE TABLE `sign_in_attempt` (
	`kind` text NOT NULL,
	`key_digest` text NOT NULL,
	`wrong` integer NOT NULL,
	`last_at` integer NOT NULL,
	PRIMARY KEY(`kind`, `key_digest`),
	CONSTRAINT "sign_in_attempt_wrong" CHECK("sign_in_attempt"."wrong" > 0)
);
--> statement-breakpoint
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
CREATE TABLE `audit` (
	`clinic_id` text NOT NULL,
	`sequence` integer NOT NULL,
	`at` integer NOT NULL,
	`actor_id` text NOT NULL,
	`act` text NOT NULL,
	`subject` text NOT NULL,
	`subject_id` text,
	`patient_id` text,
	`detail` text NOT NULL,
	`previous` text NOT NULL,
	`seal` text NOT NULL,
	PRIMARY KEY(`clinic_id`, `sequence`),
	CONSTRAINT "audit_sequence" CHECK("audit"."sequence" > 0)
);
--> statement-breakpoint
CREATE INDEX `audit_by_patient` ON `audit` (`patient_id`,`at`);--> statement-breakpoint
CREATE TABLE `audit_segment` (
	`clinic_id` text NOT NULL,
	`last_sequence` integer NOT NULL,
	`last_seal` text NOT NULL,
	`last_at` integer NOT NULL,
	`archived_at` integer NOT NULL,
	`seal` text NOT NULL,
	PRIMARY KEY(`clinic_id`, `last_sequence`),
	CONSTRAINT "audit_segment_sequence" CHECK("audit_segment"."last_sequence" > 0)
);
--> statement-breakpoint
CREATE TABLE `consent` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`kind` text NOT NULL,
	`act` text NOT NULL,
	`wording_source` text NOT NULL,
	`wording_version` integer NOT NULL,
	`recorded_via` text NOT NULL,
	`reason` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "consent_kind" CHECK("consent"."kind" IN ('treatment', 'record-keeping', 'occlusion-supervised', 'occlusion-unsupervised', 'remote-monitoring', 'sharing', 'export')),
	CONSTRAINT "consent_act" CHECK("consent"."act" IN ('given', 'refused', 'withdrawn')),
	CONSTRAINT "consent_recorded_via" CHECK("consent"."recorded_via" IN ('own-page', 'clinician')),
	CONSTRAINT "consent_wording_source" CHECK("consent"."wording_source" IN ('proposed', 'clinic')),
	CONSTRAINT "consent_wording_number" CHECK("consent"."wording_version" >= 1)
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
	CONSTRAINT "consent_wording_kind" CHECK("consent_wording"."kind" IN ('treatment', 'record-keeping', 'occlusion-supervised', 'occlusion-unsupervised', 'remote-monitoring', 'sharing', 'export')),
	CONSTRAINT "consent_wording_text" CHECK(length(trim("consent_wording"."text")) BETWEEN 1 AND 4000)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `consent_wording_version` ON `consent_wording` (`clinic_id`,`kind`,`version`);--> statement-breakpoint
CREATE TABLE `covering_clinician` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`user_id` text,
	`user_name` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "covering_clinician_name" CHECK(("covering_clinician"."user_id" IS NULL) = ("covering_clinician"."user_name" IS NULL))
);
--> statement-breakpoint
CREATE INDEX `covering_clinician_by_clinic` ON `covering_clinician` (`clinic_id`,`recorded_at`);--> statement-breakpoint
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
	CONSTRAINT "episode_followed" CHECK(json_array_length("episode"."followed_joints") BETWEEN 1 AND 6),
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
	`closed_items` text NOT NULL,
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
CREATE INDEX `episode_change_of_episode` ON `episode_change` (`episode_id`);--> statement-breakpoint
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
	CONSTRAINT "home_check_wrap" CHECK("home_check"."wrap_opened" = 0 OR ("home_check"."reason" IS NOT NULL AND length(trim("home_check"."reason")) > 0))
);
--> statement-breakpoint
CREATE INDEX `home_check_by_patient` ON `home_check` (`patient_id`,`limb`,`side`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `medicine_change` (
	`event_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`act` text,
	`medicine_class` text NOT NULL,
	FOREIGN KEY (`event_id`) REFERENCES `care_event`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "medicine_change_act" CHECK("medicine_change"."act" IN ('start', 'stop', 'change'))
);
--> statement-breakpoint
CREATE INDEX `medicine_change_by_patient` ON `medicine_change` (`patient_id`);--> statement-breakpoint
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
CREATE INDEX `pause_owner_of_decision` ON `pause_owner` (`decision_id`);--> statement-breakpoint
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
CREATE INDEX `record_file_by_patient` ON `record_file` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `short_signs_approval` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`act` text NOT NULL,
	`wording` integer NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "short_signs_approval_act" CHECK("short_signs_approval"."act" IN ('approved', 'withdrawn')),
	CONSTRAINT "short_signs_approval_wording" CHECK("short_signs_approval"."wording" >= 1)
);
--> statement-breakpoint
CREATE INDEX `short_signs_approval_by_clinic` ON `short_signs_approval` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `supervised_session` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`limb` text NOT NULL,
	`side` text NOT NULL,
	`day` text NOT NULL,
	`supervised_throughout` integer NOT NULL,
	`remote_reason` text,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "supervised_session_limb" CHECK("supervised_session"."limb" IN ('arm', 'leg')),
	CONSTRAINT "supervised_session_side" CHECK("supervised_session"."side" IN ('left', 'right')),
	CONSTRAINT "supervised_session_day" CHECK("supervised_session"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `supervised_session_by_patient` ON `supervised_session` (`patient_id`,`limb`,`side`,`day`);--> statement-breakpoint
CREATE TABLE `baseline` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`joint` text NOT NULL,
	`usual_pain` integer,
	`usual_pain_top` integer,
	`acceptable_pain_limit` integer NOT NULL,
	`usual_stiffness_minutes` integer NOT NULL,
	`usual_swelling` text NOT NULL,
	`usual_effusion` text NOT NULL,
	`usual_fatigue` integer,
	`morning_spread` text,
	`set_on` text NOT NULL,
	`due_for_review` integer NOT NULL,
	`provisional` integer DEFAULT false NOT NULL,
	`tightened_from` text,
	`rise_acknowledged` integer DEFAULT false NOT NULL,
	`by_name` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "baseline_usual_pain" CHECK("baseline"."usual_pain" IS NULL OR (typeof("baseline"."usual_pain") = 'integer' AND "baseline"."usual_pain" BETWEEN 0 AND 10)),
	CONSTRAINT "baseline_top" CHECK("baseline"."usual_pain_top" IS NULL OR ("baseline"."usual_pain" IS NOT NULL AND typeof("baseline"."usual_pain_top") = 'integer' AND "baseline"."usual_pain_top" BETWEEN "baseline"."usual_pain" AND min(10, "baseline"."usual_pain" + 2))),
	CONSTRAINT "baseline_pain_limit" CHECK("baseline"."acceptable_pain_limit" BETWEEN 5 AND 7),
	CONSTRAINT "baseline_stiffness" CHECK("baseline"."usual_stiffness_minutes" BETWEEN 0 AND 1440),
	CONSTRAINT "baseline_effusion" CHECK("baseline"."usual_effusion" IN ('zero', 'trace', '1+')),
	CONSTRAINT "baseline_swelling" CHECK("baseline"."usual_swelling" IN ('none', 'slight'))
);
--> statement-breakpoint
CREATE INDEX `baseline_by_patient` ON `baseline` (`patient_id`,`joint`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `care_event` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`day` text NOT NULL,
	`kind` text NOT NULL,
	`joint` text,
	`last_day` text,
	`course_form` text,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "care_event_kind" CHECK("care_event"."kind" IN ('medicine-change', 'missed-dose', 'steroid-course', 'joint-injection', 'surgery', 'fall', 'illness')),
	CONSTRAINT "care_event_course" CHECK(("care_event"."kind" = 'steroid-course') = ("care_event"."last_day" IS NOT NULL) AND ("care_event"."last_day" IS NULL) = ("care_event"."course_form" IS NULL))
);
--> statement-breakpoint
CREATE INDEX `care_event_by_patient` ON `care_event` (`patient_id`,`day`);--> statement-breakpoint
CREATE TABLE `care_limit` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`joint` text NOT NULL,
	`kind` text NOT NULL,
	`limit_kg` real,
	`movement` text,
	`from_degrees` real,
	`to_degrees` real,
	`from_day` text NOT NULL,
	`to_day` text,
	`author` text NOT NULL,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "care_limit_kind" CHECK("care_limit"."kind" IN ('weight-bearing', 'range', 'load-limit', 'no-impact', 'none')),
	CONSTRAINT "care_limit_load" CHECK(("care_limit"."kind" = 'load-limit') = ("care_limit"."limit_kg" IS NOT NULL)),
	CONSTRAINT "care_limit_movement" CHECK("care_limit"."movement" IS NULL OR "care_limit"."movement" IN ('flexion', 'extension', 'abduction', 'adduction', 'outward-rotation', 'inward-rotation', 'dorsiflexion', 'plantarflexion', 'pronation', 'supination', 'radial-deviation', 'ulnar-deviation', 'inversion', 'eversion', 'side-bend', 'rotation')),
	CONSTRAINT "care_limit_degrees" CHECK(("care_limit"."movement" IS NULL AND "care_limit"."from_degrees" IS NULL AND "care_limit"."to_degrees" IS NULL) OR ("care_limit"."kind" = 'range' AND "care_limit"."movement" IS NOT NULL AND "care_limit"."from_degrees" IS NOT NULL AND "care_limit"."to_degrees" IS NOT NULL AND "care_limit"."from_degrees" <= "care_limit"."to_degrees")),
	CONSTRAINT "care_limit_days" CHECK("care_limit"."to_day" IS NULL OR "care_limit"."to_day" >= "care_limit"."from_day")
);
--> statement-breakpoint
CREATE INDEX `care_limit_by_patient` ON `care_limit` (`patient_id`,`from_day`);--> statement-breakpoint
CREATE TABLE `care_limit_lift` (
	`limit_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`lifted_on` text NOT NULL,
	`lifted_at` integer NOT NULL,
	`lifted_by` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`limit_id`) REFERENCES `care_limit`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `clearance` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`day` text NOT NULL,
	`method` text NOT NULL,
	`limb` text,
	`side` text,
	`findings` text NOT NULL,
	`reason` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "clearance_method" CHECK("clearance"."method" IN ('variation', 'low-load', 'occlusion')),
	CONSTRAINT "clearance_limb" CHECK("clearance"."limb" IS NULL OR "clearance"."limb" IN ('arm', 'leg')),
	CONSTRAINT "clearance_side" CHECK("clearance"."side" IS NULL OR "clearance"."side" IN ('left', 'right')),
	CONSTRAINT "clearance_reason" CHECK(length(trim("clearance"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `clearance_by_patient` ON `clearance` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `effusion_test` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`joint` text NOT NULL,
	`day` text NOT NULL,
	`grade` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "effusion_grade" CHECK("effusion_test"."grade" IN ('zero', 'trace', '1+', '2+', '3+'))
);
--> statement-breakpoint
CREATE INDEX `effusion_by_patient` ON `effusion_test` (`patient_id`,`day`);--> statement-breakpoint
CREATE TABLE `measurement` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`day` text NOT NULL,
	`kind` text NOT NULL,
	`value` text NOT NULL,
	`figure` real NOT NULL,
	`confirmed` integer NOT NULL,
	`home_answers_id` text,
	`visit_id` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`home_answers_id`) REFERENCES `home_answers`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`visit_id`) REFERENCES `visit`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "measurement_figure" CHECK("measurement"."figure" >= 0),
	CONSTRAINT "measurement_day" CHECK("measurement"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "measurement_limb" CHECK(json_extract("measurement"."value", '$.limb') IS NULL OR json_extract("measurement"."value", '$.limb') IN ('arm', 'leg')),
	CONSTRAINT "measurement_pressure_pair" CHECK("measurement"."kind" <> 'blood-pressure' OR json_extract("measurement"."value", '$.diastolicMmhg') < json_extract("measurement"."value", '$.systolicMmhg'))
);
--> statement-breakpoint
CREATE INDEX `measurement_by_patient_kind` ON `measurement` (`patient_id`,`kind`,`day`);--> statement-breakpoint
CREATE INDEX `measurement_of_home_answers` ON `measurement` (`home_answers_id`) WHERE "measurement"."home_answers_id" IS NOT NULL;--> statement-breakpoint
CREATE INDEX `measurement_of_visit` ON `measurement` (`visit_id`) WHERE "measurement"."visit_id" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `prescription` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`item_id` text NOT NULL,
	`version` integer NOT NULL,
	`method` text NOT NULL,
	`exercise_id` text NOT NULL,
	`dose` text NOT NULL,
	`bad_day` text NOT NULL,
	`joints` text NOT NULL,
	`cautions` text NOT NULL,
	`caution_wording` integer NOT NULL,
	`working` text NOT NULL,
	`origin` text NOT NULL,
	`decision_id` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "prescription_method" CHECK("prescription"."method" IN ('variation', 'low-load', 'occlusion')),
	CONSTRAINT "prescription_origin" CHECK("prescription"."origin" IN ('clinician', 'progress', 'ease-back', 'return')),
	CONSTRAINT "prescription_sets" CHECK(json_extract("prescription"."dose", '$.sets') BETWEEN 1 AND 10),
	CONSTRAINT "prescription_cautions" CHECK(json_array_length("prescription"."cautions") > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `prescription_version` ON `prescription` (`item_id`,`version`);--> statement-breakpoint
CREATE INDEX `prescription_by_patient` ON `prescription` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `prescription_end` (
	`prescription_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`ended_at` integer NOT NULL,
	`ended_by` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `programme` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`version` integer NOT NULL,
	`from_day` text NOT NULL,
	`items` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "programme_day" CHECK("programme"."from_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE UNIQUE INDEX `programme_version` ON `programme` (`patient_id`,`version`);--> statement-breakpoint
CREATE TABLE `screening` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`version` integer NOT NULL,
	`sheet_version` text NOT NULL,
	`day` text NOT NULL,
	`answers` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "screening_day" CHECK("screening"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE UNIQUE INDEX `screening_version` ON `screening` (`patient_id`,`version`);--> statement-breakpoint
CREATE TABLE `signature` (
	`prescription_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`signed_at` integer NOT NULL,
	`signed_by` text NOT NULL,
	`signed_name` text NOT NULL,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `correction` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`subject` text NOT NULL,
	`subject_id` text NOT NULL,
	`joint` text,
	`entered_at` integer NOT NULL,
	`first_said_at` integer NOT NULL,
	`reason` text NOT NULL,
	`replaced_by_id` text,
	`waits` integer NOT NULL,
	`corrected_at` integer NOT NULL,
	`corrected_by` text NOT NULL,
	`corrected_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "correction_subject" CHECK("correction"."subject" IN ('measurement', 'screening', 'event', 'limit', 'goal', 'baseline', 'effusion-test', 'clearance', 'supervised-session', 'home-answers', 'contact', 'note', 'visit')),
	CONSTRAINT "correction_reason" CHECK(length(trim("correction"."reason")) BETWEEN 1 AND 300),
	CONSTRAINT "correction_other" CHECK("correction"."replaced_by_id" IS NULL OR "correction"."replaced_by_id" <> "correction"."subject_id")
);
--> statement-breakpoint
CREATE UNIQUE INDEX `correction_of` ON `correction` (`subject_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `correction_by` ON `correction` (`replaced_by_id`);--> statement-breakpoint
CREATE INDEX `correction_by_patient` ON `correction` (`clinic_id`,`patient_id`,`corrected_at`);--> statement-breakpoint
CREATE TABLE `plan_seen` (
	`correction_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`seen_at` integer NOT NULL,
	`seen_by` text NOT NULL,
	`seen_name` text NOT NULL,
	FOREIGN KEY (`correction_id`) REFERENCES `correction`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `contact_attempt` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`sign_ids` text NOT NULL,
	`decision_ids` text NOT NULL,
	`reached` text NOT NULL,
	`found` text,
	`advised` text,
	`referred_to` text,
	`next_at` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "contact_attempt_reached" CHECK("contact_attempt"."reached" IN ('patient', 'carer', 'nobody')),
	CONSTRAINT "contact_attempt_next" CHECK(("contact_attempt"."reached" = 'nobody') = ("contact_attempt"."next_at" IS NOT NULL)),
	CONSTRAINT "contact_attempt_said" CHECK("contact_attempt"."reached" = 'nobody' OR (length(trim("contact_attempt"."found")) > 0 AND length(trim("contact_attempt"."advised")) > 0))
);
--> statement-breakpoint
CREATE INDEX `contact_attempt_by_patient` ON `contact_attempt` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `pause` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`cause` text NOT NULL,
	`sign_id` text,
	`joint` text,
	`reason` text NOT NULL,
	`until` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`sign_id`) REFERENCES `warning_sign`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pause_cause" CHECK("pause"."cause" IN ('warning-sign', 'holiday', 'operation', 'other')),
	CONSTRAINT "pause_sign" CHECK(("pause"."cause" = 'warning-sign') = ("pause"."sign_id" IS NOT NULL)),
	CONSTRAINT "pause_reason" CHECK(length(trim("pause"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `pause_by_patient` ON `pause` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `pause_of_sign` ON `pause` (`sign_id`) WHERE "pause"."sign_id" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `pause_resumption` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`pause_id` text NOT NULL,
	`item_id` text,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`pause_id`) REFERENCES `pause`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pause_resumption_reason" CHECK(length(trim("pause_resumption"."reason")) > 0)
);
--> statement-breakpoint
CREATE INDEX `pause_resumption_by_patient` ON `pause_resumption` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `pause_resumption_of_pause` ON `pause_resumption` (`pause_id`);--> statement-breakpoint
CREATE TABLE `warning_sign` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`source` text NOT NULL,
	`flags` text NOT NULL,
	`joint` text,
	`urgency` text NOT NULL,
	`entry_id` text,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "warning_sign_source" CHECK("warning_sign"."source" IN ('patient', 'telephone', 'clinician', 'record')),
	CONSTRAINT "warning_sign_urgency" CHECK("warning_sign"."urgency" IN ('emergency', 'same-day', 'routine')),
	CONSTRAINT "warning_sign_flags" CHECK(json_array_length("warning_sign"."flags") > 0 OR "warning_sign"."source" = 'clinician')
);
--> statement-breakpoint
CREATE INDEX `warning_sign_by_patient` ON `warning_sign` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `clinic_settings_version` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`version` integer NOT NULL,
	`settings` text NOT NULL,
	`changed_at` integer NOT NULL,
	`changed_by` text NOT NULL,
	`by_name` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `clinic_settings_version_number` ON `clinic_settings_version` (`clinic_id`,`version`);--> statement-breakpoint
CREATE TABLE `decision` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`joint` text NOT NULL,
	`session_id` text,
	`morning_id` text,
	`cause` text NOT NULL,
	`evaluated_at` integer NOT NULL,
	`day` text NOT NULL,
	`facts` text NOT NULL,
	`settings_id` text NOT NULL,
	`engine_version` text NOT NULL,
	`decision` text NOT NULL,
	`largest_step` text,
	`today` text NOT NULL,
	`contact` text NOT NULL,
	`reasons` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`settings_id`) REFERENCES `decision_settings`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "decision_word" CHECK("decision"."decision" IN ('pause', 'ease-back', 'hold', 'progress')),
	CONSTRAINT "decision_today" CHECK("decision"."today" IN ('none', 'rest-this-joint', 'bad-day', 'as-planned')),
	CONSTRAINT "decision_contact" CHECK("decision"."contact" IN ('emergency', 'same-day', 'routine', 'none')),
	CONSTRAINT "decision_step" CHECK(("decision"."decision" = 'progress') = ("decision"."largest_step" IS NOT NULL)),
	CONSTRAINT "decision_day" CHECK("decision"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `decision_by_patient` ON `decision` (`patient_id`,`joint`,`evaluated_at`);--> statement-breakpoint
CREATE INDEX `decision_by_settings` ON `decision` (`settings_id`);--> statement-breakpoint
CREATE INDEX `decision_by_patient_time` ON `decision` (`clinic_id`,`patient_id`,`evaluated_at`);--> statement-breakpoint
CREATE INDEX `decision_amended` ON `decision` (`patient_id`,`joint`,`evaluated_at`) WHERE "decision"."cause" = 'amendment';--> statement-breakpoint
CREATE TABLE `decision_response` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`decision_id` text NOT NULL,
	`kind` text NOT NULL,
	`decision` text,
	`reason` text NOT NULL,
	`until` text,
	`answered_at` integer NOT NULL,
	`answered_by` text NOT NULL,
	`answered_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`decision_id`) REFERENCES `decision`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "decision_response_kind" CHECK("decision_response"."kind" IN ('accept', 'override')),
	CONSTRAINT "decision_response_override" CHECK("decision_response"."kind" = 'accept' OR ("decision_response"."decision" IN ('pause', 'ease-back', 'hold', 'progress') AND length(trim("decision_response"."reason")) > 0 AND "decision_response"."until" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `decision_response_by_decision` ON `decision_response` (`decision_id`,`answered_at`);--> statement-breakpoint
CREATE INDEX `decision_response_by_patient` ON `decision_response` (`patient_id`,`answered_at`);--> statement-breakpoint
CREATE TABLE `decision_settings` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`settings` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `decision_settings_by_clinic` ON `decision_settings` (`clinic_id`);--> statement-breakpoint
CREATE TABLE `message` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`text` text NOT NULL,
	`sent_at` integer NOT NULL,
	`sent_by` text NOT NULL,
	`sent_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "message_text" CHECK(length(trim("message"."text")) BETWEEN 1 AND 2000)
);
--> statement-breakpoint
CREATE INDEX `message_by_patient` ON `message` (`patient_id`,`sent_at`);--> statement-breakpoint
CREATE TABLE `proposal` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`item_id` text NOT NULL,
	`prescription_id` text NOT NULL,
	`decision_id` text NOT NULL,
	`made_at` integer NOT NULL,
	`session_id` text,
	`decision` text NOT NULL,
	`kind` text NOT NULL,
	`effect` text NOT NULL,
	`contact` text NOT NULL,
	`worklist` text NOT NULL,
	`pre_approval_id` text,
	`became_id` text,
	`dose` text NOT NULL,
	`bad_day` text NOT NULL,
	`cautions` text NOT NULL,
	`changes` text NOT NULL,
	`change_for_patient` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`decision_id`) REFERENCES `decision`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "proposal_effect" CHECK("proposal"."effect" IN ('acts-at-once', 'awaits-signature', 'repeat')),
	CONSTRAINT "proposal_kind" CHECK("proposal"."kind" IN ('same', 'step', 'ease-back', 'return', 'stop')),
	CONSTRAINT "proposal_decision" CHECK("proposal"."decision" IN ('pause', 'ease-back', 'hold', 'progress'))
);
--> statement-breakpoint
CREATE INDEX `proposal_by_patient` ON `proposal` (`patient_id`,`made_at`);--> statement-breakpoint
CREATE INDEX `proposal_by_item` ON `proposal` (`item_id`,`made_at`);--> statement-breakpoint
CREATE INDEX `proposal_of_prescription` ON `proposal` (`prescription_id`);--> statement-breakpoint
CREATE INDEX `proposal_of_decision` ON `proposal` (`decision_id`);--> statement-breakpoint
CREATE TABLE `calendar_feed` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`token_digest` text NOT NULL,
	`language` text NOT NULL,
	`made_at` integer NOT NULL,
	`made_by` text NOT NULL,
	`last_read_at` integer,
	`ended_at` integer,
	`ended_by` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "calendar_feed_ended" CHECK(("calendar_feed"."ended_at" IS NULL) = ("calendar_feed"."ended_by" IS NULL))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `calendar_feed_token` ON `calendar_feed` (`token_digest`);--> statement-breakpoint
CREATE INDEX `calendar_feed_by_patient` ON `calendar_feed` (`patient_id`,`made_at`);--> statement-breakpoint
CREATE UNIQUE INDEX `calendar_feed_in_use` ON `calendar_feed` (`patient_id`) WHERE "calendar_feed"."ended_at" IS NULL;--> statement-breakpoint
CREATE TABLE `import_batch` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`format` text NOT NULL,
	`source` text NOT NULL,
	`file_digest` text NOT NULL,
	`how` text NOT NULL,
	`rows` integer NOT NULL,
	`left_out` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "import_batch_format" CHECK("import_batch"."format" IN ('csv', 'fhir')),
	CONSTRAINT "import_batch_rows" CHECK("import_batch"."rows" > 0 AND "import_batch"."left_out" >= 0)
);
--> statement-breakpoint
CREATE INDEX `import_batch_by_patient` ON `import_batch` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `import_undo` (
	`batch_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`batch_id`) REFERENCES `import_batch`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `imported_row` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`batch_id` text NOT NULL,
	`place` integer NOT NULL,
	`kind` text NOT NULL,
	`day` text,
	`value` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`batch_id`) REFERENCES `import_batch`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "imported_row_kind" CHECK("imported_row"."kind" IN ('session', 'morning', 'measurement', 'condition')),
	CONSTRAINT "imported_row_day" CHECK("imported_row"."day" IS NULL OR "imported_row"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `imported_row_by_patient` ON `imported_row` (`patient_id`,`kind`,`day`);--> statement-breakpoint
CREATE INDEX `imported_row_of_batch` ON `imported_row` (`batch_id`,`place`);--> statement-breakpoint
CREATE TABLE `letter_draft` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`letter_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`version` integer NOT NULL,
	`name` text NOT NULL,
	`role` text,
	`organisation` text,
	`address` text,
	`copies` text,
	`to_patient` integer NOT NULL,
	`language` text NOT NULL,
	`note_ids` text NOT NULL,
	`own` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "letter_draft_from_one" CHECK("letter_draft"."version" >= 1)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `letter_draft_version` ON `letter_draft` (`clinic_id`,`letter_id`,`version`);--> statement-breakpoint
CREATE INDEX `letter_draft_by_patient` ON `letter_draft` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `letter_draft_by_clinic` ON `letter_draft` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `letter_signature` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`letter_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`version` integer NOT NULL,
	`day` text NOT NULL,
	`role` text NOT NULL,
	`registration` text,
	`words` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "letter_signature_day" CHECK("letter_signature"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE UNIQUE INDEX `letter_signed_once` ON `letter_signature` (`clinic_id`,`letter_id`);--> statement-breakpoint
CREATE INDEX `letter_signature_by_patient` ON `letter_signature` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `letter_signature_by_signer` ON `letter_signature` (`recorded_by`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `letter_void` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`letter_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`day` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "letter_void_day" CHECK("letter_void"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "letter_void_reason" CHECK(length("letter_void"."reason") > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `letter_void_once` ON `letter_void` (`clinic_id`,`letter_id`);--> statement-breakpoint
CREATE INDEX `letter_void_by_patient` ON `letter_void` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `entry_conflict` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`entry_id` text NOT NULL,
	`digest` text NOT NULL,
	`payload` text NOT NULL,
	`arrived_at` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `entry_conflict_of_entry` ON `entry_conflict` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE TABLE `morning` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`entry_id` text NOT NULL,
	`digest` text NOT NULL,
	`format` integer NOT NULL,
	`day` text NOT NULL,
	`zone` text NOT NULL,
	`sent_at` integer NOT NULL,
	`arrived_at` integer NOT NULL,
	`clock_doubtful` integer NOT NULL,
	`entered_by` text NOT NULL,
	`entered_as` text,
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
	`signs_asked` text,
	`sign_slips` text,
	`answered_at` integer NOT NULL,
	`fatigue_0_10` integer,
	`fatigue_state` text NOT NULL,
	`other_joint` text,
	`late` integer NOT NULL,
	`via` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "morning_day" CHECK("morning"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "morning_fatigue" CHECK("morning"."fatigue_0_10" IS NULL OR (typeof("morning"."fatigue_0_10") = 'integer' AND "morning"."fatigue_0_10" BETWEEN 0 AND 10))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `morning_entry` ON `morning` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `morning_of_patient` ON `morning` (`patient_id`,`day`,`clinic_id`,`id`,`entry_id`,`amends`,`zone`,`answered_at`,`arrived_at`,`red_flags`,`extra_pain_relief`,`fatigue_0_10`,`fatigue_state`,`other_joint`,`clock_doubtful`,`late`,`via`);--> statement-breakpoint
CREATE INDEX `morning_doubtful` ON `morning` (`patient_id`,`arrived_at`) WHERE "morning"."clock_doubtful" = 1;--> statement-breakpoint
CREATE INDEX `morning_other_joint` ON `morning` (`patient_id`,`arrived_at`) WHERE "morning"."other_joint" = 'worse';--> statement-breakpoint
CREATE TABLE `morning_joint` (
	`morning_id` text NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`joint` text NOT NULL,
	`pain_0_10` integer,
	`stiffness_minutes` integer,
	`stiffness_state` text NOT NULL,
	`swelling` text,
	`swelling_state` text NOT NULL,
	`swelling_question` text NOT NULL,
	`flare` integer,
	PRIMARY KEY(`morning_id`, `joint`),
	FOREIGN KEY (`morning_id`) REFERENCES `morning`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "morning_joint_pain" CHECK("morning_joint"."pain_0_10" IS NULL OR (typeof("morning_joint"."pain_0_10") = 'integer' AND "morning_joint"."pain_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "morning_joint_stiffness" CHECK("morning_joint"."stiffness_minutes" IS NULL OR (typeof("morning_joint"."stiffness_minutes") = 'integer' AND "morning_joint"."stiffness_minutes" BETWEEN 0 AND 1440)),
	CONSTRAINT "morning_joint_swelling" CHECK("morning_joint"."swelling" IS NULL OR "morning_joint"."swelling" IN ('none', 'slight', 'clear', 'severe')),
	CONSTRAINT "morning_joint_swelling_question" CHECK("morning_joint"."swelling_question" IN ('absolute', 'more-than-usual'))
);
--> statement-breakpoint
CREATE INDEX `morning_joint_of_morning` ON `morning_joint` (`patient_id`,`morning_id`,`joint`,`pain_0_10`,`stiffness_minutes`,`stiffness_state`,`swelling`,`swelling_state`,`swelling_question`,`flare`);--> statement-breakpoint
CREATE TABLE `session_joint` (
	`session_id` text NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`joint` text NOT NULL,
	`pain_before_0_10` integer,
	`pain_during_0_10` integer,
	`pain_after_0_10` integer,
	`pain_two_hours_state` text NOT NULL,
	`muscle_burn_0_10` integer,
	`cuff_discomfort_0_10` integer,
	`gave_way` integer NOT NULL,
	`gave_way_unanswered` integer,
	PRIMARY KEY(`session_id`, `joint`),
	FOREIGN KEY (`session_id`) REFERENCES `training_session`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_joint_before" CHECK("session_joint"."pain_before_0_10" IS NULL OR (typeof("session_joint"."pain_before_0_10") = 'integer' AND "session_joint"."pain_before_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "session_joint_during" CHECK("session_joint"."pain_during_0_10" IS NULL OR (typeof("session_joint"."pain_during_0_10") = 'integer' AND "session_joint"."pain_during_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "session_joint_after" CHECK("session_joint"."pain_after_0_10" IS NULL OR (typeof("session_joint"."pain_after_0_10") = 'integer' AND "session_joint"."pain_after_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "session_joint_burn" CHECK("session_joint"."muscle_burn_0_10" IS NULL OR (typeof("session_joint"."muscle_burn_0_10") = 'integer' AND "session_joint"."muscle_burn_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "session_joint_cuff" CHECK("session_joint"."cuff_discomfort_0_10" IS NULL OR (typeof("session_joint"."cuff_discomfort_0_10") = 'integer' AND "session_joint"."cuff_discomfort_0_10" BETWEEN 0 AND 10))
);
--> statement-breakpoint
CREATE INDEX `session_joint_of_session` ON `session_joint` (`patient_id`,`session_id`,`joint`,`pain_before_0_10`,`pain_during_0_10`,`pain_after_0_10`,`pain_two_hours_state`,`gave_way`,`gave_way_unanswered`);--> statement-breakpoint
CREATE TABLE `set_log` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`session_id` text NOT NULL,
	`prescription_id` text NOT NULL,
	`item_id` text NOT NULL,
	`set_number` integer NOT NULL,
	`repetitions` integer,
	`load_kg` real,
	`reserve` integer,
	`stop_reason` text NOT NULL,
	`easier` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`session_id`) REFERENCES `training_session`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "set_log_repetitions" CHECK("set_log"."repetitions" IS NULL OR (typeof("set_log"."repetitions") = 'integer' AND "set_log"."repetitions" BETWEEN 0 AND 500)),
	CONSTRAINT "set_log_load" CHECK("set_log"."load_kg" IS NULL OR "set_log"."load_kg" BETWEEN 0 AND 500),
	CONSTRAINT "set_log_reserve" CHECK("set_log"."reserve" IS NULL OR (typeof("set_log"."reserve") = 'integer' AND "set_log"."reserve" BETWEEN 0 AND 10)),
	CONSTRAINT "set_log_number" CHECK("set_log"."set_number" BETWEEN 1 AND 30),
	CONSTRAINT "set_log_stop" CHECK("set_log"."stop_reason" IN ('none', 'tired', 'time', 'equipment', 'joint-pain', 'symptom', 'unknown'))
);
--> statement-breakpoint
CREATE INDEX `set_log_of_session` ON `set_log` (`patient_id`,`session_id`,`item_id`,`set_number`,`prescription_id`,`repetitions`,`load_kg`,`reserve`,`stop_reason`,`easier`);--> statement-breakpoint
CREATE INDEX `set_log_by_session` ON `set_log` (`session_id`);--> statement-breakpoint
CREATE INDEX `set_log_by_prescription` ON `set_log` (`prescription_id`);--> statement-breakpoint
CREATE TABLE `training_session` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`entry_id` text NOT NULL,
	`digest` text NOT NULL,
	`format` integer NOT NULL,
	`day` text NOT NULL,
	`zone` text NOT NULL,
	`sent_at` integer NOT NULL,
	`arrived_at` integer NOT NULL,
	`clock_doubtful` integer NOT NULL,
	`entered_by` text NOT NULL,
	`entered_as` text,
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
	`signs_asked` text,
	`sign_slips` text,
	`began_at` integer NOT NULL,
	`ended_at` integer NOT NULL,
	`kind` text NOT NULL,
	`did_extra` integer NOT NULL,
	`did_extra_unanswered` integer,
	`news` text,
	`other_joint_worse` integer,
	`reported_new` integer,
	`stopped_by_flag` integer NOT NULL,
	`limb_checks` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "training_session_kind" CHECK("training_session"."kind" IN ('full', 'bad-day', 'test')),
	CONSTRAINT "training_session_day" CHECK("training_session"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "training_session_order" CHECK("training_session"."ended_at" >= "training_session"."began_at")
);
--> statement-breakpoint
CREATE UNIQUE INDEX `training_session_entry` ON `training_session` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `training_session_of_patient` ON `training_session` (`patient_id`,`day`,`clinic_id`,`id`,`entry_id`,`amends`,`began_at`,`arrived_at`,`kind`,`red_flags`,`extra_pain_relief`,`did_extra`,`did_extra_unanswered`,`reported_new`,`clock_doubtful`);--> statement-breakpoint
CREATE INDEX `training_session_doubtful` ON `training_session` (`patient_id`,`arrived_at`) WHERE "training_session"."clock_doubtful" = 1;--> statement-breakpoint
CREATE INDEX `training_session_reported_new` ON `training_session` (`patient_id`,`arrived_at`) WHERE "training_session"."reported_new" = 1;--> statement-breakpoint
CREATE INDEX `training_session_limb` ON `training_session` (`patient_id`,`day`) WHERE "training_session"."limb_checks" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `two_hours` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`entry_id` text NOT NULL,
	`digest` text NOT NULL,
	`format` integer NOT NULL,
	`day` text NOT NULL,
	`zone` text NOT NULL,
	`sent_at` integer NOT NULL,
	`arrived_at` integer NOT NULL,
	`clock_doubtful` integer NOT NULL,
	`entered_by` text NOT NULL,
	`entered_as` text,
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
	`signs_asked` text,
	`sign_slips` text,
	`session_id` text NOT NULL,
	`joint` text NOT NULL,
	`pain_0_10` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`session_id`) REFERENCES `training_session`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "two_hours_pain" CHECK("two_hours"."pain_0_10" IS NULL OR (typeof("two_hours"."pain_0_10") = 'integer' AND "two_hours"."pain_0_10" BETWEEN 0 AND 10))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `two_hours_entry` ON `two_hours` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `two_hours_of_session` ON `two_hours` (`patient_id`,`session_id`,`clock_doubtful`,`joint`,`pain_0_10`,`arrived_at`);--> statement-breakpoint
CREATE INDEX `two_hours_by_session` ON `two_hours` (`session_id`);--> statement-breakpoint
CREATE TABLE `distance_finding` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`visit_id` text NOT NULL,
	`joint` text NOT NULL,
	`part` text NOT NULL,
	`judged_by` text NOT NULL,
	`found` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`visit_id`) REFERENCES `visit`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "distance_finding_part" CHECK("distance_finding"."part" IN ('look', 'press', 'move', 'task')),
	CONSTRAINT "distance_finding_by" CHECK("distance_finding"."judged_by" IN ('seen', 'told', 'not-done')),
	CONSTRAINT "distance_finding_says" CHECK("distance_finding"."judged_by" = 'not-done' OR "distance_finding"."found" IS NOT NULL)
);
--> statement-breakpoint
CREATE INDEX `distance_finding_by_patient` ON `distance_finding` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `distance_finding_of` ON `distance_finding` (`visit_id`);--> statement-breakpoint
CREATE TABLE `group_hour` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`hour_id` text NOT NULL,
	`version` integer NOT NULL,
	`name` text NOT NULL,
	`place` text NOT NULL,
	`day` text NOT NULL,
	`time` text NOT NULL,
	`minutes` integer NOT NULL,
	`clinician_id` text NOT NULL,
	`clinician_name` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`hour_id`) REFERENCES `group_hour`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "group_hour_day" CHECK("group_hour"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "group_hour_time" CHECK("group_hour"."time" GLOB '[0-2][0-9]:[0-5][0-9]'),
	CONSTRAINT "group_hour_minutes" CHECK("group_hour"."minutes" BETWEEN 15 AND 180),
	CONSTRAINT "group_hour_first" CHECK("group_hour"."version" > 0 AND ("group_hour"."version" = 1) = ("group_hour"."hour_id" = "group_hour"."id"))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `group_hour_version` ON `group_hour` (`hour_id`,`version`);--> statement-breakpoint
CREATE INDEX `group_hour_by_clinic` ON `group_hour` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `group_hour_change` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`hour_id` text NOT NULL,
	`version` integer NOT NULL,
	`state` text NOT NULL,
	`reason` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`hour_id`) REFERENCES `group_hour`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "group_hour_change_state" CHECK("group_hour_change"."state" IN ('cancelled', 'entered-in-error', 'planned-again')),
	CONSTRAINT "group_hour_change_reason" CHECK(length(trim("group_hour_change"."reason")) > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `group_hour_change_version` ON `group_hour_change` (`hour_id`,`version`);--> statement-breakpoint
CREATE INDEX `group_hour_change_by_clinic` ON `group_hour_change` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `group_member` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`hour_id` text NOT NULL,
	`belongs` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`hour_id`) REFERENCES `group_hour`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `group_member_of` ON `group_member` (`hour_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `group_member_by_patient` ON `group_member` (`patient_id`);--> statement-breakpoint
CREATE INDEX `group_member_by_clinic` ON `group_member` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `incident` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text,
	`incident_id` text NOT NULL,
	`version` integer NOT NULL,
	`day` text NOT NULL,
	`time` text,
	`kind` text NOT NULL,
	`happened` text NOT NULL,
	`done_at_once` text,
	`would_prevent` text,
	`told` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`incident_id`) REFERENCES `incident`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "incident_kind" CHECK("incident"."kind" IN ('harm', 'no-harm', 'near-miss', 'software-fault')),
	CONSTRAINT "incident_day" CHECK("incident"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "incident_time" CHECK("incident"."time" IS NULL OR "incident"."time" GLOB '[0-2][0-9]:[0-5][0-9]'),
	CONSTRAINT "incident_happened" CHECK(length(trim("incident"."happened")) > 0),
	CONSTRAINT "incident_first" CHECK("incident"."version" > 0 AND ("incident"."version" = 1) = ("incident"."incident_id" = "incident"."id"))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `incident_version` ON `incident` (`incident_id`,`version`);--> statement-breakpoint
CREATE INDEX `incident_by_clinic` ON `incident` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `incident_by_patient` ON `incident` (`patient_id`) WHERE "incident"."patient_id" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `incident_change` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text,
	`incident_id` text NOT NULL,
	`version` integer NOT NULL,
	`state` text NOT NULL,
	`reason` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`incident_id`) REFERENCES `incident`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "incident_change_state" CHECK("incident_change"."state" IN ('closed', 'reopened')),
	CONSTRAINT "incident_change_reason" CHECK(length(trim("incident_change"."reason")) > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `incident_change_version` ON `incident_change` (`incident_id`,`version`);--> statement-breakpoint
CREATE INDEX `incident_change_by_clinic` ON `incident_change` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `incident_change_by_patient` ON `incident_change` (`patient_id`) WHERE "incident_change"."patient_id" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `visit_note` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`episode_id` text,
	`day` text NOT NULL,
	`contact` text NOT NULL,
	`subjective` text,
	`objective` text,
	`assessment` text,
	`plan` text,
	`text` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`episode_id`) REFERENCES `episode`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "visit_note_contact" CHECK("visit_note"."contact" IN ('clinic', 'home-visit', 'video', 'telephone', 'without-the-patient')),
	CONSTRAINT "visit_note_day" CHECK("visit_note"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "visit_note_says_something" CHECK(coalesce("visit_note"."subjective", "visit_note"."objective", "visit_note"."assessment", "visit_note"."plan", "visit_note"."text") IS NOT NULL)
);
--> statement-breakpoint
CREATE INDEX `visit_note_by_patient` ON `visit_note` (`patient_id`,`day`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `visit_note_of_episode` ON `visit_note` (`episode_id`) WHERE "visit_note"."episode_id" IS NOT NULL;--> statement-breakpoint
CREATE TABLE `nutrition_advice` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`act` text NOT NULL,
	`protein_low_g` integer,
	`protein_high_g` integer,
	`meals` integer,
	`surplus_kcal` integer,
	`words` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "nutrition_advice_act" CHECK("nutrition_advice"."act" IN ('shown', 'withdrawn')),
	CONSTRAINT "nutrition_advice_figures" CHECK(("nutrition_advice"."act" = 'withdrawn') = ("nutrition_advice"."protein_low_g" IS NULL) AND ("nutrition_advice"."protein_low_g" IS NULL) = ("nutrition_advice"."protein_high_g" IS NULL) AND ("nutrition_advice"."protein_low_g" IS NULL) = ("nutrition_advice"."meals" IS NULL)),
	CONSTRAINT "nutrition_advice_order" CHECK("nutrition_advice"."protein_low_g" IS NULL OR "nutrition_advice"."protein_low_g" <= "nutrition_advice"."protein_high_g")
);
--> statement-breakpoint
CREATE INDEX `nutrition_advice_by_patient` ON `nutrition_advice` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `auth_account` (
	`id` text PRIMARY KEY NOT NULL,
	`account_id` text NOT NULL,
	`provider_id` text NOT NULL,
	`user_id` text NOT NULL,
	`access_token` text,
	`refresh_token` text,
	`id_token` text,
	`access_token_expires_at` integer,
	`refresh_token_expires_at` integer,
	`scope` text,
	`password` text,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE INDEX `auth_account_user` ON `auth_account` (`user_id`);--> statement-breakpoint
CREATE TABLE `auth_session` (
	`id` text PRIMARY KEY NOT NULL,
	`token` text NOT NULL,
	`user_id` text NOT NULL,
	`expires_at` integer NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	`ip_address` text,
	`user_agent` text,
	`proved_at` integer,
	`device_id` text,
	`passkey_id` text,
	FOREIGN KEY (`user_id`) REFERENCES `auth_user`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE UNIQUE INDEX `auth_session_token` ON `auth_session` (`token`);--> statement-breakpoint
CREATE INDEX `auth_session_user` ON `auth_session` (`user_id`);--> statement-breakpoint
CREATE TABLE `auth_user` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`email` text NOT NULL,
	`email_verified` integer DEFAULT false NOT NULL,
	`image` text,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	`clinic_id` text NOT NULL,
	`role` text NOT NULL,
	`patient_id` text,
	`administers` integer DEFAULT false NOT NULL,
	`two_factor_enabled` integer DEFAULT false NOT NULL,
	`deactivated_at` integer,
	`starting_until` integer,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "auth_user_role" CHECK("auth_user"."role" IN ('clinician', 'administrator', 'reception', 'patient')),
	CONSTRAINT "auth_user_patient" CHECK(("auth_user"."role" = 'patient') = ("auth_user"."patient_id" IS NOT NULL))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `auth_user_email` ON `auth_user` (`email`);--> statement-breakpoint
CREATE TABLE `auth_verification` (
	`id` text PRIMARY KEY NOT NULL,
	`identifier` text NOT NULL,
	`value` text NOT NULL,
	`expires_at` integer NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `care_profile` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`version` integer NOT NULL,
	`diagnosis` text NOT NULL,
	`inflammatory_arthritis` integer NOT NULL,
	`followed_joints` text NOT NULL,
	`swelling_not_asked` text NOT NULL,
	`asks_fatigue` integer DEFAULT false NOT NULL,
	`error_group` text,
	`owned_loads_kg` text NOT NULL,
	`owned_equipment` text NOT NULL,
	`formula_sex` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "care_profile_error_group" CHECK("care_profile"."error_group" IS NULL OR "care_profile"."error_group" IN ('knee-osteoarthritis-mild', 'knee-arthroplasty-awaited', 'hip-arthroplasty-awaited', 'none-of-these')),
	CONSTRAINT "care_profile_sex" CHECK("care_profile"."formula_sex" IS NULL OR "care_profile"."formula_sex" IN ('female', 'male'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `care_profile_version` ON `care_profile` (`patient_id`,`version`);--> statement-breakpoint
CREATE TABLE `clinic` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`zone` text NOT NULL,
	`phone` text NOT NULL,
	`emergency_number` text NOT NULL,
	`urgent_number` text,
	`monitoring_hours` text NOT NULL,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `clinic_detail_change` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`detail` text NOT NULL,
	`before` text,
	`after` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "clinic_detail_change_detail" CHECK("clinic_detail_change"."detail" IN ('name', 'phone', 'urgent-number', 'emergency-number', 'monitoring-hours'))
);
--> statement-breakpoint
CREATE INDEX `clinic_detail_change_by_clinic` ON `clinic_detail_change` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `patient` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `patient_by_clinic` ON `patient` (`clinic_id`,`id`);--> statement-breakpoint
CREATE TABLE `patient_detail` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`detail` text NOT NULL,
	`version` integer NOT NULL,
	`value` text,
	`because` text NOT NULL,
	`reason` text,
	`strikes` integer,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "patient_detail_detail" CHECK("patient_detail"."detail" IN ('givenName', 'familyName', 'birthDay', 'phone', 'email', 'address', 'patientNumber', 'generalPractitioner', 'emergencyName', 'emergencyPhone', 'emergencyRelation')),
	CONSTRAINT "patient_detail_because" CHECK("patient_detail"."because" IN ('first', 'changed-since', 'entered-in-error')),
	CONSTRAINT "patient_detail_error" CHECK(("patient_detail"."because" = 'entered-in-error') = ("patient_detail"."strikes" IS NOT NULL) AND ("patient_detail"."strikes" IS NULL OR ("patient_detail"."strikes" < "patient_detail"."version" AND "patient_detail"."reason" IS NOT NULL)))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `patient_detail_version` ON `patient_detail` (`patient_id`,`detail`,`version`);--> statement-breakpoint
CREATE TABLE `patient_identity` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`given_name` text NOT NULL,
	`family_name` text NOT NULL,
	`birth_day` text NOT NULL,
	`phone` text,
	`email` text,
	`patient_number` text,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "identity_birth_day" CHECK("patient_identity"."birth_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `identity_by_clinic_name` ON `patient_identity` (`clinic_id`,`family_name`,`given_name`);--> statement-breakpoint
CREATE TABLE `patient_merge` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`into_id` text NOT NULL,
	`version` integer NOT NULL,
	`act` text NOT NULL,
	`kept_id` text,
	`reason` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`into_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`kept_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "patient_merge_act" CHECK("patient_merge"."act" IN ('merged', 'undone', 'plan-chosen')),
	CONSTRAINT "patient_merge_two" CHECK("patient_merge"."patient_id" <> "patient_merge"."into_id"),
	CONSTRAINT "patient_merge_kept" CHECK(("patient_merge"."act" = 'plan-chosen') = ("patient_merge"."kept_id" IS NOT NULL)),
	CONSTRAINT "patient_merge_reason" CHECK(length(trim("patient_merge"."reason")) > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `patient_merge_version` ON `patient_merge` (`patient_id`,`version`);--> statement-breakpoint
CREATE INDEX `patient_merge_by_clinic` ON `patient_merge` (`clinic_id`,`patient_id`);--> statement-breakpoint
CREATE INDEX `patient_merge_by_shown` ON `patient_merge` (`clinic_id`,`into_id`,`patient_id`,`version`);--> statement-breakpoint
CREATE TABLE `program_token` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`name` text NOT NULL,
	`digest` text NOT NULL,
	`scopes` text NOT NULL,
	`expires_at` integer NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "program_token_name" CHECK(length(trim("program_token"."name")) BETWEEN 1 AND 100),
	CONSTRAINT "program_token_scopes" CHECK(json_array_length("program_token"."scopes") > 0)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `program_token_digest` ON `program_token` (`digest`);--> statement-breakpoint
CREATE INDEX `program_token_by_clinic` ON `program_token` (`clinic_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `program_token_end` (
	`token_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`ended_at` integer NOT NULL,
	`ended_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`token_id`) REFERENCES `program_token`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `program_token_end_by_clinic` ON `program_token_end` (`clinic_id`);--> statement-breakpoint
CREATE TABLE `protocol` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`joint` text NOT NULL,
	`procedure` text NOT NULL,
	`on_day` text NOT NULL,
	`author` text NOT NULL,
	`letter` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "protocol_day" CHECK("protocol"."on_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `protocol_by_patient` ON `protocol` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `protocol_phase` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`protocol_id` text NOT NULL,
	`place` integer NOT NULL,
	`name` text NOT NULL,
	`from_day` text NOT NULL,
	`weight_bearing` text NOT NULL,
	`bear_kg` real,
	`movement` text,
	`from_degrees` real,
	`to_degrees` real,
	`limit_kg` real,
	`low_load` integer NOT NULL,
	`variation` integer NOT NULL,
	`occlusion` integer NOT NULL,
	`recorded_on` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`protocol_id`) REFERENCES `protocol`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "protocol_phase_place" CHECK("protocol_phase"."place" BETWEEN 1 AND 8),
	CONSTRAINT "protocol_phase_bearing" CHECK("protocol_phase"."weight_bearing" IN ('none', 'touch', 'partial', 'as-tolerated', 'full')),
	CONSTRAINT "protocol_phase_bear_kg" CHECK(("protocol_phase"."weight_bearing" = 'partial') = ("protocol_phase"."bear_kg" IS NOT NULL)),
	CONSTRAINT "protocol_phase_degrees" CHECK(("protocol_phase"."movement" IS NULL AND "protocol_phase"."from_degrees" IS NULL AND "protocol_phase"."to_degrees" IS NULL) OR ("protocol_phase"."movement" IS NOT NULL AND "protocol_phase"."from_degrees" IS NOT NULL AND "protocol_phase"."to_degrees" IS NOT NULL AND "protocol_phase"."from_degrees" <= "protocol_phase"."to_degrees")),
	CONSTRAINT "protocol_phase_movement" CHECK("protocol_phase"."movement" IS NULL OR "protocol_phase"."movement" IN ('flexion', 'extension', 'abduction', 'adduction', 'outward-rotation', 'inward-rotation', 'dorsiflexion', 'plantarflexion', 'pronation', 'supination', 'radial-deviation', 'ulnar-deviation', 'inversion', 'eversion', 'side-bend', 'rotation')),
	CONSTRAINT "protocol_phase_day" CHECK("protocol_phase"."from_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `protocol_phase_by_patient` ON `protocol_phase` (`patient_id`,`protocol_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `protocol_phase_of` ON `protocol_phase` (`protocol_id`);--> statement-breakpoint
CREATE TABLE `protocol_step` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`protocol_id` text NOT NULL,
	`place` integer NOT NULL,
	`on_day` text NOT NULL,
	`seen` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`protocol_id`) REFERENCES `protocol`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "protocol_step_place" CHECK("protocol_step"."place" BETWEEN 0 AND 8),
	CONSTRAINT "protocol_step_seen" CHECK(length(trim("protocol_step"."seen")) > 0)
);
--> statement-breakpoint
CREATE INDEX `protocol_step_by_patient` ON `protocol_step` (`patient_id`,`protocol_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `protocol_step_of` ON `protocol_step` (`protocol_id`);--> statement-breakpoint
CREATE TABLE `home_answers` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`patient_id` text NOT NULL,
	`home_questions_id` text NOT NULL,
	`entry_id` text NOT NULL,
	`digest` text NOT NULL,
	`version` integer,
	`day` text NOT NULL,
	`answers` text NOT NULL,
	`entered_as` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`home_questions_id`) REFERENCES `home_questions`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "home_answers_day" CHECK("home_answers"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "home_answers_entered_as" CHECK("home_answers"."entered_as" IS NULL OR "home_answers"."entered_as" IN ('relative', 'friend', 'paid-carer', 'clinic-from-paper', 'clinic-by-phone', 'clinic-supervised'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `home_answers_entry` ON `home_answers` (`clinic_id`,`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `home_answers_by_patient` ON `home_answers` (`clinic_id`,`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE INDEX `home_answers_of_questions` ON `home_answers` (`home_questions_id`);--> statement-breakpoint
CREATE TABLE `home_questions` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`patient_id` text NOT NULL,
	`questionnaire_id` text,
	`from_day` text NOT NULL,
	`every_days` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "home_questions_day" CHECK("home_questions"."from_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "home_questions_every" CHECK("home_questions"."every_days" BETWEEN 7 AND 84)
);
--> statement-breakpoint
CREATE INDEX `home_questions_by_patient` ON `home_questions` (`clinic_id`,`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `home_questions_end` (
	`home_questions_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`patient_id` text NOT NULL,
	FOREIGN KEY (`home_questions_id`) REFERENCES `home_questions`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `questionnaire_retirement` (
	`questionnaire_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `questionnaire_version` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`questionnaire_id` text NOT NULL,
	`version` integer NOT NULL,
	`title` text NOT NULL,
	`questions` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "questionnaire_version_title" CHECK(length(trim("questionnaire_version"."title")) BETWEEN 1 AND 80),
	CONSTRAINT "questionnaire_version_questions" CHECK(json_array_length("questionnaire_version"."questions") BETWEEN 1 AND 12)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `questionnaire_version_number` ON `questionnaire_version` (`clinic_id`,`questionnaire_id`,`version`);--> statement-breakpoint
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
CREATE TABLE `retest_plan` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	`version` integer NOT NULL,
	`measure` text NOT NULL,
	`set_on` text NOT NULL,
	`due_on` text,
	`every_days` integer,
	`reason` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "retest_plan_measure" CHECK("retest_plan"."measure" IN ('body-mass', 'stature', 'body-fat', 'blood-pressure', 'limb-circumference', 'ankle-brachial-index', 'repetitions-to-failure', 'chair-stand-30s', 'five-times-sit-to-stand', 'timed-up-and-go', 'usual-pace-walk', 'fast-walk-40m', 'six-minute-walk', 'stair-climb', 'grip', 'pinch', 'hand-span', 'isometric-force', 'range-of-movement', 'joint-counts', 'disease-activity-score', 'pain-function-global', 'knee-hip-score', 'patient-chosen-activity')),
	CONSTRAINT "retest_plan_set" CHECK("retest_plan"."set_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "retest_plan_due" CHECK("retest_plan"."due_on" IS NULL OR "retest_plan"."due_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "retest_plan_every" CHECK("retest_plan"."every_days" IS NULL OR "retest_plan"."every_days" BETWEEN 14 AND 365),
	CONSTRAINT "retest_plan_stopped" CHECK(("retest_plan"."due_on" IS NULL) = ("retest_plan"."reason" IS NOT NULL))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `retest_plan_version` ON `retest_plan` (`patient_id`,`version`);--> statement-breakpoint
CREATE INDEX `retest_plan_by_patient` ON `retest_plan` (`clinic_id`,`patient_id`,`version`);--> statement-breakpoint
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
CREATE TABLE `dose_handed_over` (
	`prescription_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`handed_at` integer NOT NULL,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `pre_approval` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`item_id` text NOT NULL,
	`steps` integer NOT NULL,
	`days` integer NOT NULL,
	`signed_at` integer NOT NULL,
	`signed_day` text NOT NULL,
	`signed_by` text NOT NULL,
	`signed_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pre_approval_steps" CHECK("pre_approval"."steps" BETWEEN 1 AND 3),
	CONSTRAINT "pre_approval_days" CHECK("pre_approval"."days" BETWEEN 1 AND 28)
);
--> statement-breakpoint
CREATE INDEX `pre_approval_by_patient` ON `pre_approval` (`patient_id`,`signed_at`);--> statement-breakpoint
CREATE TABLE `pre_approval_end` (
	`pre_approval_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`ended_at` integer NOT NULL,
	`ended_by` text NOT NULL,
	FOREIGN KEY (`pre_approval_id`) REFERENCES `pre_approval`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `signature_withdrawal` (
	`prescription_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`withdrawn_at` integer NOT NULL,
	`withdrawn_by` text NOT NULL,
	`withdrawn_name` text NOT NULL,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `dose_template` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`name` text NOT NULL,
	`doses` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `dose_template_change` (
	`id` text PRIMARY KEY NOT NULL,
	`template_id` text NOT NULL,
	`clinic_id` text NOT NULL,
	`change` text NOT NULL,
	`name` text,
	`changed_at` integer NOT NULL,
	`changed_by` text NOT NULL,
	`by_name` text NOT NULL,
	FOREIGN KEY (`template_id`) REFERENCES `dose_template`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "dose_template_change_word" CHECK("dose_template_change"."change" IN ('renamed', 'withdrawn', 'brought-back')),
	CONSTRAINT "dose_template_change_name" CHECK(("dose_template_change"."change" = 'renamed') = ("dose_template_change"."name" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `dose_template_change_by_template` ON `dose_template_change` (`template_id`,`changed_at`);--> statement-breakpoint
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
	`held_by` text NOT NULL,
	`held_name` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "visit_place" CHECK("visit"."place" IN ('clinic', 'home-visit', 'video', 'telephone')),
	CONSTRAINT "visit_remote" CHECK("visit"."place" NOT IN ('video', 'telephone') OR ("visit"."whereabouts" IS NOT NULL AND "visit"."call_back_phone" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `visit_by_patient` ON `visit` (`patient_id`,`recorded_at`);--> statement-breakpoint
CREATE TABLE `worklist_item` (
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`key` text NOT NULL,
	`kind` text NOT NULL,
	`rank` integer NOT NULL,
	`since` integer NOT NULL,
	`shows_from` text NOT NULL,
	`shows_at` integer,
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
	CONSTRAINT "worklist_item_kind" CHECK("worklist_item"."kind" IN ('red-flag', 'pause', 'same-day-contact', 'danger-passed', 'eased-twice', 'dose-stopped', 'floor-reached', 'entry-conflict', 'ease-back', 'resume-due', 'awaiting-signature', 'clock-doubtful', 'missing-answers', 'message', 'reported-new', 'event-review', 'pre-visit-answers', 'phase-due', 'limit-ended', 'routine-contact', 'review-day', 'break-over', 'screening-due', 'override-ended', 'pressure-due', 'retest-due', 'baseline-due'))
);
--> statement-breakpoint
CREATE INDEX `worklist_item_by_danger` ON `worklist_item` (`clinic_id`,`rank`,`since`,`patient_id`,`shows_from`,`snoozed_until`,`shows_at`,`key`);--> statement-breakpoint
CREATE INDEX `worklist_item_of_patient` ON `worklist_item` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`shows_at`,`key`,`kind`,`rank`,`since`,`joint`,`decision_id`,`facts`,`acknowledged_by`,`assigned_to`,`assigned_name`);--> statement-breakpoint
CREATE INDEX `worklist_item_due` ON `worklist_item` (`clinic_id`,`patient_id`,`shows_from`,`snoozed_until`,`kind`,`assigned_to`,`shows_at`);--> statement-breakpoint
CREATE TABLE `worklist_item_action` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`item_key` text NOT NULL,
	`item_since` integer NOT NULL,
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
	CONSTRAINT "worklist_item_action_act" CHECK("worklist_item_action"."act" IN ('acknowledge', 'unacknowledge', 'assign', 'unassign', 'snooze', 'unsnooze')),
	CONSTRAINT "worklist_item_action_snooze" CHECK(("worklist_item_action"."act" = 'snooze') = ("worklist_item_action"."until" IS NOT NULL))
);
--> statement-breakpoint
CREATE INDEX `worklist_item_action_by_patient` ON `worklist_item_action` (`patient_id`,`done_at`);--> statement-breakpoint
CREATE TABLE `worklist_standing` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`stands` text NOT NULL,
	`until_day` text,
	`until_at` integer,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `worklist_standing_until_day` ON `worklist_standing` (`clinic_id`,`until_day`);--> statement-breakpoint
CREATE INDEX `worklist_standing_until_at` ON `worklist_standing` (`clinic_id`,`until_at`);--> statement-breakpoint
CREATE TABLE `worklist_strip` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`facts` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `worklist_tally` (
	`clinic_id` text NOT NULL,
	`stands` text NOT NULL,
	`patients` integer NOT NULL,
	PRIMARY KEY(`clinic_id`, `stands`),
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);

--> statement-breakpoint
CREATE TRIGGER audit_no_delete BEFORE DELETE ON audit WHEN OLD.sequence > coalesce((SELECT max(last_sequence) FROM audit_segment WHERE clinic_id = OLD.clinic_id), 0) BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_no_replace BEFORE INSERT ON audit WHEN EXISTS (SELECT 1 FROM audit WHERE (clinic_id = NEW.clinic_id AND sequence = NEW.sequence) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_no_update BEFORE UPDATE ON audit BEGIN SELECT RAISE(ABORT, 'audit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_segment_no_delete BEFORE DELETE ON audit_segment BEGIN SELECT RAISE(ABORT, 'audit_segment is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_segment_no_replace BEFORE INSERT ON audit_segment WHEN EXISTS (SELECT 1 FROM audit_segment WHERE (clinic_id = NEW.clinic_id AND last_sequence = NEW.last_sequence) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'audit_segment is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER audit_segment_no_update BEFORE UPDATE ON audit_segment BEGIN SELECT RAISE(ABORT, 'audit_segment is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER baseline_no_delete BEFORE DELETE ON baseline BEGIN SELECT RAISE(ABORT, 'baseline is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER baseline_no_replace BEFORE INSERT ON baseline WHEN EXISTS (SELECT 1 FROM baseline WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'baseline is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER baseline_no_update BEFORE UPDATE ON baseline BEGIN SELECT RAISE(ABORT, 'baseline is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_event_no_delete BEFORE DELETE ON care_event BEGIN SELECT RAISE(ABORT, 'care_event is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_event_no_replace BEFORE INSERT ON care_event WHEN EXISTS (SELECT 1 FROM care_event WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'care_event is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_event_no_update BEFORE UPDATE ON care_event BEGIN SELECT RAISE(ABORT, 'care_event is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_lift_no_delete BEFORE DELETE ON care_limit_lift BEGIN SELECT RAISE(ABORT, 'care_limit_lift is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_lift_no_replace BEFORE INSERT ON care_limit_lift WHEN EXISTS (SELECT 1 FROM care_limit_lift WHERE (limit_id = NEW.limit_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'care_limit_lift is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_lift_no_update BEFORE UPDATE ON care_limit_lift BEGIN SELECT RAISE(ABORT, 'care_limit_lift is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_no_delete BEFORE DELETE ON care_limit BEGIN SELECT RAISE(ABORT, 'care_limit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_no_replace BEFORE INSERT ON care_limit WHEN EXISTS (SELECT 1 FROM care_limit WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'care_limit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_limit_no_update BEFORE UPDATE ON care_limit BEGIN SELECT RAISE(ABORT, 'care_limit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_profile_no_delete BEFORE DELETE ON care_profile BEGIN SELECT RAISE(ABORT, 'care_profile is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_profile_no_replace BEFORE INSERT ON care_profile WHEN EXISTS (SELECT 1 FROM care_profile WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'care_profile is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_profile_no_update BEFORE UPDATE ON care_profile BEGIN SELECT RAISE(ABORT, 'care_profile is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_team_no_delete BEFORE DELETE ON care_team BEGIN SELECT RAISE(ABORT, 'care_team is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_team_no_replace BEFORE INSERT ON care_team WHEN EXISTS (SELECT 1 FROM care_team WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'care_team is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER care_team_no_update BEFORE UPDATE ON care_team BEGIN SELECT RAISE(ABORT, 'care_team is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clearance_no_delete BEFORE DELETE ON clearance BEGIN SELECT RAISE(ABORT, 'clearance is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clearance_no_replace BEFORE INSERT ON clearance WHEN EXISTS (SELECT 1 FROM clearance WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'clearance is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clearance_no_update BEFORE UPDATE ON clearance BEGIN SELECT RAISE(ABORT, 'clearance is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_detail_change_no_delete BEFORE DELETE ON clinic_detail_change BEGIN SELECT RAISE(ABORT, 'clinic_detail_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_detail_change_no_replace BEFORE INSERT ON clinic_detail_change WHEN EXISTS (SELECT 1 FROM clinic_detail_change WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'clinic_detail_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_detail_change_no_update BEFORE UPDATE ON clinic_detail_change BEGIN SELECT RAISE(ABORT, 'clinic_detail_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_machine_no_delete BEFORE DELETE ON clinic_machine BEGIN SELECT RAISE(ABORT, 'clinic_machine is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_machine_no_replace BEFORE INSERT ON clinic_machine WHEN EXISTS (SELECT 1 FROM clinic_machine WHERE (id = NEW.id) OR (machine_id = NEW.machine_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'clinic_machine is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_machine_no_update BEFORE UPDATE ON clinic_machine BEGIN SELECT RAISE(ABORT, 'clinic_machine is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_settings_version_no_delete BEFORE DELETE ON clinic_settings_version BEGIN SELECT RAISE(ABORT, 'clinic_settings_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_settings_version_no_replace BEFORE INSERT ON clinic_settings_version WHEN EXISTS (SELECT 1 FROM clinic_settings_version WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'clinic_settings_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER clinic_settings_version_no_update BEFORE UPDATE ON clinic_settings_version BEGIN SELECT RAISE(ABORT, 'clinic_settings_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_no_delete BEFORE DELETE ON consent BEGIN SELECT RAISE(ABORT, 'consent is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_no_replace BEFORE INSERT ON consent WHEN EXISTS (SELECT 1 FROM consent WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'consent is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_no_update BEFORE UPDATE ON consent BEGIN SELECT RAISE(ABORT, 'consent is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_wording_no_delete BEFORE DELETE ON consent_wording BEGIN SELECT RAISE(ABORT, 'consent_wording is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_wording_no_replace BEFORE INSERT ON consent_wording WHEN EXISTS (SELECT 1 FROM consent_wording WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND kind = NEW.kind AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'consent_wording is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER consent_wording_no_update BEFORE UPDATE ON consent_wording BEGIN SELECT RAISE(ABORT, 'consent_wording is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER contact_attempt_no_delete BEFORE DELETE ON contact_attempt BEGIN SELECT RAISE(ABORT, 'contact_attempt is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER contact_attempt_no_replace BEFORE INSERT ON contact_attempt WHEN EXISTS (SELECT 1 FROM contact_attempt WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'contact_attempt is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER contact_attempt_no_update BEFORE UPDATE ON contact_attempt BEGIN SELECT RAISE(ABORT, 'contact_attempt is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER correction_no_delete BEFORE DELETE ON correction BEGIN SELECT RAISE(ABORT, 'correction is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER correction_no_replace BEFORE INSERT ON correction WHEN EXISTS (SELECT 1 FROM correction WHERE (id = NEW.id) OR (subject_id = NEW.subject_id) OR (replaced_by_id = NEW.replaced_by_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'correction is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER correction_no_update BEFORE UPDATE ON correction BEGIN SELECT RAISE(ABORT, 'correction is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER covering_clinician_no_delete BEFORE DELETE ON covering_clinician BEGIN SELECT RAISE(ABORT, 'covering_clinician is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER covering_clinician_no_replace BEFORE INSERT ON covering_clinician WHEN EXISTS (SELECT 1 FROM covering_clinician WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'covering_clinician is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER covering_clinician_no_update BEFORE UPDATE ON covering_clinician BEGIN SELECT RAISE(ABORT, 'covering_clinician is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_replace BEFORE INSERT ON decision WHEN EXISTS (SELECT 1 FROM decision WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision BEGIN SELECT RAISE(ABORT, 'decision is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_response_no_delete BEFORE DELETE ON decision_response BEGIN SELECT RAISE(ABORT, 'decision_response is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_response_no_replace BEFORE INSERT ON decision_response WHEN EXISTS (SELECT 1 FROM decision_response WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'decision_response is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_response_no_update BEFORE UPDATE ON decision_response BEGIN SELECT RAISE(ABORT, 'decision_response is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_settings_no_delete BEFORE DELETE ON decision_settings BEGIN SELECT RAISE(ABORT, 'decision_settings is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_settings_no_replace BEFORE INSERT ON decision_settings WHEN EXISTS (SELECT 1 FROM decision_settings WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'decision_settings is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER decision_settings_no_update BEFORE UPDATE ON decision_settings BEGIN SELECT RAISE(ABORT, 'decision_settings is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER distance_finding_no_delete BEFORE DELETE ON distance_finding BEGIN SELECT RAISE(ABORT, 'distance_finding is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER distance_finding_no_replace BEFORE INSERT ON distance_finding WHEN EXISTS (SELECT 1 FROM distance_finding WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'distance_finding is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER distance_finding_no_update BEFORE UPDATE ON distance_finding BEGIN SELECT RAISE(ABORT, 'distance_finding is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_handed_over_no_delete BEFORE DELETE ON dose_handed_over BEGIN SELECT RAISE(ABORT, 'dose_handed_over is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_handed_over_no_replace BEFORE INSERT ON dose_handed_over WHEN EXISTS (SELECT 1 FROM dose_handed_over WHERE (prescription_id = NEW.prescription_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'dose_handed_over is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_handed_over_no_update BEFORE UPDATE ON dose_handed_over BEGIN SELECT RAISE(ABORT, 'dose_handed_over is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_change_no_delete BEFORE DELETE ON dose_template_change BEGIN SELECT RAISE(ABORT, 'dose_template_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_change_no_replace BEFORE INSERT ON dose_template_change WHEN EXISTS (SELECT 1 FROM dose_template_change WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'dose_template_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_change_no_update BEFORE UPDATE ON dose_template_change BEGIN SELECT RAISE(ABORT, 'dose_template_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_no_delete BEFORE DELETE ON dose_template BEGIN SELECT RAISE(ABORT, 'dose_template is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_no_replace BEFORE INSERT ON dose_template WHEN EXISTS (SELECT 1 FROM dose_template WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'dose_template is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER dose_template_no_update BEFORE UPDATE ON dose_template BEGIN SELECT RAISE(ABORT, 'dose_template is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER effusion_test_no_delete BEFORE DELETE ON effusion_test BEGIN SELECT RAISE(ABORT, 'effusion_test is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER effusion_test_no_replace BEFORE INSERT ON effusion_test WHEN EXISTS (SELECT 1 FROM effusion_test WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'effusion_test is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER effusion_test_no_update BEFORE UPDATE ON effusion_test BEGIN SELECT RAISE(ABORT, 'effusion_test is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER emergency_access_no_delete BEFORE DELETE ON emergency_access BEGIN SELECT RAISE(ABORT, 'emergency_access is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER emergency_access_no_replace BEFORE INSERT ON emergency_access WHEN EXISTS (SELECT 1 FROM emergency_access WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'emergency_access is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER emergency_access_no_update BEFORE UPDATE ON emergency_access BEGIN SELECT RAISE(ABORT, 'emergency_access is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER entry_conflict_no_delete BEFORE DELETE ON entry_conflict BEGIN SELECT RAISE(ABORT, 'entry_conflict is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER entry_conflict_no_replace BEFORE INSERT ON entry_conflict WHEN EXISTS (SELECT 1 FROM entry_conflict WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'entry_conflict is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER entry_conflict_no_update BEFORE UPDATE ON entry_conflict BEGIN SELECT RAISE(ABORT, 'entry_conflict is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_change_no_delete BEFORE DELETE ON episode_change BEGIN SELECT RAISE(ABORT, 'episode_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_change_no_replace BEFORE INSERT ON episode_change WHEN EXISTS (SELECT 1 FROM episode_change WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'episode_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_change_no_update BEFORE UPDATE ON episode_change BEGIN SELECT RAISE(ABORT, 'episode_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_no_delete BEFORE DELETE ON episode BEGIN SELECT RAISE(ABORT, 'episode is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_no_replace BEFORE INSERT ON episode WHEN EXISTS (SELECT 1 FROM episode WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'episode is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER episode_no_update BEFORE UPDATE ON episode BEGIN SELECT RAISE(ABORT, 'episode is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER goal_step_no_delete BEFORE DELETE ON goal_step BEGIN SELECT RAISE(ABORT, 'goal_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER goal_step_no_replace BEFORE INSERT ON goal_step WHEN EXISTS (SELECT 1 FROM goal_step WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'goal_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER goal_step_no_update BEFORE UPDATE ON goal_step BEGIN SELECT RAISE(ABORT, 'goal_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_change_no_delete BEFORE DELETE ON group_hour_change BEGIN SELECT RAISE(ABORT, 'group_hour_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_change_no_replace BEFORE INSERT ON group_hour_change WHEN EXISTS (SELECT 1 FROM group_hour_change WHERE (id = NEW.id) OR (hour_id = NEW.hour_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'group_hour_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_change_no_update BEFORE UPDATE ON group_hour_change BEGIN SELECT RAISE(ABORT, 'group_hour_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_no_delete BEFORE DELETE ON group_hour BEGIN SELECT RAISE(ABORT, 'group_hour is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_no_replace BEFORE INSERT ON group_hour WHEN EXISTS (SELECT 1 FROM group_hour WHERE (id = NEW.id) OR (hour_id = NEW.hour_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'group_hour is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_hour_no_update BEFORE UPDATE ON group_hour BEGIN SELECT RAISE(ABORT, 'group_hour is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_member_no_delete BEFORE DELETE ON group_member BEGIN SELECT RAISE(ABORT, 'group_member is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_member_no_replace BEFORE INSERT ON group_member WHEN EXISTS (SELECT 1 FROM group_member WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'group_member is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER group_member_no_update BEFORE UPDATE ON group_member BEGIN SELECT RAISE(ABORT, 'group_member is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_answers_no_delete BEFORE DELETE ON home_answers BEGIN SELECT RAISE(ABORT, 'home_answers is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_answers_no_replace BEFORE INSERT ON home_answers WHEN EXISTS (SELECT 1 FROM home_answers WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND patient_id = NEW.patient_id AND entry_id = NEW.entry_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'home_answers is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_answers_no_update BEFORE UPDATE ON home_answers BEGIN SELECT RAISE(ABORT, 'home_answers is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_delete BEFORE DELETE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_replace BEFORE INSERT ON home_check WHEN EXISTS (SELECT 1 FROM home_check WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_check_no_update BEFORE UPDATE ON home_check BEGIN SELECT RAISE(ABORT, 'home_check is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_end_no_delete BEFORE DELETE ON home_questions_end BEGIN SELECT RAISE(ABORT, 'home_questions_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_end_no_replace BEFORE INSERT ON home_questions_end WHEN EXISTS (SELECT 1 FROM home_questions_end WHERE (home_questions_id = NEW.home_questions_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'home_questions_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_end_no_update BEFORE UPDATE ON home_questions_end BEGIN SELECT RAISE(ABORT, 'home_questions_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_no_delete BEFORE DELETE ON home_questions BEGIN SELECT RAISE(ABORT, 'home_questions is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_no_replace BEFORE INSERT ON home_questions WHEN EXISTS (SELECT 1 FROM home_questions WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'home_questions is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER home_questions_no_update BEFORE UPDATE ON home_questions BEGIN SELECT RAISE(ABORT, 'home_questions is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_batch_no_delete BEFORE DELETE ON import_batch BEGIN SELECT RAISE(ABORT, 'import_batch is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_batch_no_replace BEFORE INSERT ON import_batch WHEN EXISTS (SELECT 1 FROM import_batch WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'import_batch is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_batch_no_update BEFORE UPDATE ON import_batch BEGIN SELECT RAISE(ABORT, 'import_batch is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_undo_no_delete BEFORE DELETE ON import_undo BEGIN SELECT RAISE(ABORT, 'import_undo is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_undo_no_replace BEFORE INSERT ON import_undo WHEN EXISTS (SELECT 1 FROM import_undo WHERE (batch_id = NEW.batch_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'import_undo is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER import_undo_no_update BEFORE UPDATE ON import_undo BEGIN SELECT RAISE(ABORT, 'import_undo is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER imported_row_no_delete BEFORE DELETE ON imported_row BEGIN SELECT RAISE(ABORT, 'imported_row is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER imported_row_no_replace BEFORE INSERT ON imported_row WHEN EXISTS (SELECT 1 FROM imported_row WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'imported_row is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER imported_row_no_update BEFORE UPDATE ON imported_row BEGIN SELECT RAISE(ABORT, 'imported_row is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_change_no_delete BEFORE DELETE ON incident_change BEGIN SELECT RAISE(ABORT, 'incident_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_change_no_replace BEFORE INSERT ON incident_change WHEN EXISTS (SELECT 1 FROM incident_change WHERE (id = NEW.id) OR (incident_id = NEW.incident_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'incident_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_change_no_update BEFORE UPDATE ON incident_change BEGIN SELECT RAISE(ABORT, 'incident_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_no_delete BEFORE DELETE ON incident BEGIN SELECT RAISE(ABORT, 'incident is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_no_replace BEFORE INSERT ON incident WHEN EXISTS (SELECT 1 FROM incident WHERE (id = NEW.id) OR (incident_id = NEW.incident_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'incident is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER incident_no_update BEFORE UPDATE ON incident BEGIN SELECT RAISE(ABORT, 'incident is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_draft_no_delete BEFORE DELETE ON letter_draft BEGIN SELECT RAISE(ABORT, 'letter_draft is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_draft_no_replace BEFORE INSERT ON letter_draft WHEN EXISTS (SELECT 1 FROM letter_draft WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND letter_id = NEW.letter_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'letter_draft is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_draft_no_update BEFORE UPDATE ON letter_draft BEGIN SELECT RAISE(ABORT, 'letter_draft is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_signature_no_delete BEFORE DELETE ON letter_signature BEGIN SELECT RAISE(ABORT, 'letter_signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_signature_no_replace BEFORE INSERT ON letter_signature WHEN EXISTS (SELECT 1 FROM letter_signature WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND letter_id = NEW.letter_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'letter_signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_signature_no_update BEFORE UPDATE ON letter_signature BEGIN SELECT RAISE(ABORT, 'letter_signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_void_no_delete BEFORE DELETE ON letter_void BEGIN SELECT RAISE(ABORT, 'letter_void is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_void_no_replace BEFORE INSERT ON letter_void WHEN EXISTS (SELECT 1 FROM letter_void WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND letter_id = NEW.letter_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'letter_void is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER letter_void_no_update BEFORE UPDATE ON letter_void BEGIN SELECT RAISE(ABORT, 'letter_void is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_no_delete BEFORE DELETE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_no_replace BEFORE INSERT ON measurement WHEN EXISTS (SELECT 1 FROM measurement WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'measurement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER measurement_no_update BEFORE UPDATE ON measurement BEGIN SELECT RAISE(ABORT, 'measurement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER medicine_change_no_delete BEFORE DELETE ON medicine_change BEGIN SELECT RAISE(ABORT, 'medicine_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER medicine_change_no_replace BEFORE INSERT ON medicine_change WHEN EXISTS (SELECT 1 FROM medicine_change WHERE (event_id = NEW.event_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'medicine_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER medicine_change_no_update BEFORE UPDATE ON medicine_change BEGIN SELECT RAISE(ABORT, 'medicine_change is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER message_no_delete BEFORE DELETE ON message BEGIN SELECT RAISE(ABORT, 'message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER message_no_replace BEFORE INSERT ON message WHEN EXISTS (SELECT 1 FROM message WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER message_no_update BEFORE UPDATE ON message BEGIN SELECT RAISE(ABORT, 'message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_joint_no_delete BEFORE DELETE ON morning_joint BEGIN SELECT RAISE(ABORT, 'morning_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_joint_no_replace BEFORE INSERT ON morning_joint WHEN EXISTS (SELECT 1 FROM morning_joint WHERE (morning_id = NEW.morning_id AND joint = NEW.joint) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'morning_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_joint_no_update BEFORE UPDATE ON morning_joint BEGIN SELECT RAISE(ABORT, 'morning_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_no_delete BEFORE DELETE ON morning BEGIN SELECT RAISE(ABORT, 'morning is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_no_replace BEFORE INSERT ON morning WHEN EXISTS (SELECT 1 FROM morning WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND entry_id = NEW.entry_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'morning is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER morning_no_update BEFORE UPDATE ON morning BEGIN SELECT RAISE(ABORT, 'morning is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER nutrition_advice_no_delete BEFORE DELETE ON nutrition_advice BEGIN SELECT RAISE(ABORT, 'nutrition_advice is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER nutrition_advice_no_replace BEFORE INSERT ON nutrition_advice WHEN EXISTS (SELECT 1 FROM nutrition_advice WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'nutrition_advice is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER nutrition_advice_no_update BEFORE UPDATE ON nutrition_advice BEGIN SELECT RAISE(ABORT, 'nutrition_advice is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_detail_no_delete BEFORE DELETE ON patient_detail WHEN EXISTS (SELECT 1 FROM patient_identity WHERE patient_identity.patient_id = OLD.patient_id) BEGIN SELECT RAISE(ABORT, 'patient_detail is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_detail_no_replace BEFORE INSERT ON patient_detail WHEN EXISTS (SELECT 1 FROM patient_detail WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND detail = NEW.detail AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'patient_detail is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_detail_no_update BEFORE UPDATE ON patient_detail BEGIN SELECT RAISE(ABORT, 'patient_detail is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_merge_no_delete BEFORE DELETE ON patient_merge BEGIN SELECT RAISE(ABORT, 'patient_merge is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_merge_no_replace BEFORE INSERT ON patient_merge WHEN EXISTS (SELECT 1 FROM patient_merge WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'patient_merge is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_merge_no_update BEFORE UPDATE ON patient_merge BEGIN SELECT RAISE(ABORT, 'patient_merge is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_message_no_delete BEFORE DELETE ON patient_message BEGIN SELECT RAISE(ABORT, 'patient_message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_message_no_replace BEFORE INSERT ON patient_message WHEN EXISTS (SELECT 1 FROM patient_message WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'patient_message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_message_no_update BEFORE UPDATE ON patient_message BEGIN SELECT RAISE(ABORT, 'patient_message is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_site_no_delete BEFORE DELETE ON patient_site BEGIN SELECT RAISE(ABORT, 'patient_site is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_site_no_replace BEFORE INSERT ON patient_site WHEN EXISTS (SELECT 1 FROM patient_site WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'patient_site is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER patient_site_no_update BEFORE UPDATE ON patient_site BEGIN SELECT RAISE(ABORT, 'patient_site is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_no_delete BEFORE DELETE ON pause BEGIN SELECT RAISE(ABORT, 'pause is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_no_replace BEFORE INSERT ON pause WHEN EXISTS (SELECT 1 FROM pause WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pause is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_no_update BEFORE UPDATE ON pause BEGIN SELECT RAISE(ABORT, 'pause is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_owner_no_delete BEFORE DELETE ON pause_owner BEGIN SELECT RAISE(ABORT, 'pause_owner is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_owner_no_replace BEFORE INSERT ON pause_owner WHEN EXISTS (SELECT 1 FROM pause_owner WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pause_owner is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_owner_no_update BEFORE UPDATE ON pause_owner BEGIN SELECT RAISE(ABORT, 'pause_owner is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_resumption_no_delete BEFORE DELETE ON pause_resumption BEGIN SELECT RAISE(ABORT, 'pause_resumption is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_resumption_no_replace BEFORE INSERT ON pause_resumption WHEN EXISTS (SELECT 1 FROM pause_resumption WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pause_resumption is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pause_resumption_no_update BEFORE UPDATE ON pause_resumption BEGIN SELECT RAISE(ABORT, 'pause_resumption is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER plan_seen_no_delete BEFORE DELETE ON plan_seen BEGIN SELECT RAISE(ABORT, 'plan_seen is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER plan_seen_no_replace BEFORE INSERT ON plan_seen WHEN EXISTS (SELECT 1 FROM plan_seen WHERE (correction_id = NEW.correction_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'plan_seen is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER plan_seen_no_update BEFORE UPDATE ON plan_seen BEGIN SELECT RAISE(ABORT, 'plan_seen is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_end_no_delete BEFORE DELETE ON pre_approval_end BEGIN SELECT RAISE(ABORT, 'pre_approval_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_end_no_replace BEFORE INSERT ON pre_approval_end WHEN EXISTS (SELECT 1 FROM pre_approval_end WHERE (pre_approval_id = NEW.pre_approval_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pre_approval_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_end_no_update BEFORE UPDATE ON pre_approval_end BEGIN SELECT RAISE(ABORT, 'pre_approval_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_no_delete BEFORE DELETE ON pre_approval BEGIN SELECT RAISE(ABORT, 'pre_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_no_replace BEFORE INSERT ON pre_approval WHEN EXISTS (SELECT 1 FROM pre_approval WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pre_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_approval_no_update BEFORE UPDATE ON pre_approval BEGIN SELECT RAISE(ABORT, 'pre_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_visit_no_delete BEFORE DELETE ON pre_visit BEGIN SELECT RAISE(ABORT, 'pre_visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_visit_no_replace BEFORE INSERT ON pre_visit WHEN EXISTS (SELECT 1 FROM pre_visit WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'pre_visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER pre_visit_no_update BEFORE UPDATE ON pre_visit BEGIN SELECT RAISE(ABORT, 'pre_visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_end_no_delete BEFORE DELETE ON prescription_end BEGIN SELECT RAISE(ABORT, 'prescription_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_end_no_replace BEFORE INSERT ON prescription_end WHEN EXISTS (SELECT 1 FROM prescription_end WHERE (prescription_id = NEW.prescription_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'prescription_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_end_no_update BEFORE UPDATE ON prescription_end BEGIN SELECT RAISE(ABORT, 'prescription_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_no_delete BEFORE DELETE ON prescription BEGIN SELECT RAISE(ABORT, 'prescription is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_no_replace BEFORE INSERT ON prescription WHEN EXISTS (SELECT 1 FROM prescription WHERE (id = NEW.id) OR (item_id = NEW.item_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'prescription is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER prescription_no_update BEFORE UPDATE ON prescription BEGIN SELECT RAISE(ABORT, 'prescription is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_end_no_delete BEFORE DELETE ON program_token_end BEGIN SELECT RAISE(ABORT, 'program_token_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_end_no_replace BEFORE INSERT ON program_token_end WHEN EXISTS (SELECT 1 FROM program_token_end WHERE (token_id = NEW.token_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'program_token_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_end_no_update BEFORE UPDATE ON program_token_end BEGIN SELECT RAISE(ABORT, 'program_token_end is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_no_delete BEFORE DELETE ON program_token BEGIN SELECT RAISE(ABORT, 'program_token is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_no_replace BEFORE INSERT ON program_token WHEN EXISTS (SELECT 1 FROM program_token WHERE (id = NEW.id) OR (digest = NEW.digest) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'program_token is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER program_token_no_update BEFORE UPDATE ON program_token BEGIN SELECT RAISE(ABORT, 'program_token is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER programme_no_delete BEFORE DELETE ON programme BEGIN SELECT RAISE(ABORT, 'programme is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER programme_no_replace BEFORE INSERT ON programme WHEN EXISTS (SELECT 1 FROM programme WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'programme is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER programme_no_update BEFORE UPDATE ON programme BEGIN SELECT RAISE(ABORT, 'programme is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER proposal_no_delete BEFORE DELETE ON proposal BEGIN SELECT RAISE(ABORT, 'proposal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER proposal_no_replace BEFORE INSERT ON proposal WHEN EXISTS (SELECT 1 FROM proposal WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'proposal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER proposal_no_update BEFORE UPDATE ON proposal BEGIN SELECT RAISE(ABORT, 'proposal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_no_delete BEFORE DELETE ON protocol BEGIN SELECT RAISE(ABORT, 'protocol is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_no_replace BEFORE INSERT ON protocol WHEN EXISTS (SELECT 1 FROM protocol WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'protocol is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_no_update BEFORE UPDATE ON protocol BEGIN SELECT RAISE(ABORT, 'protocol is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_phase_no_delete BEFORE DELETE ON protocol_phase BEGIN SELECT RAISE(ABORT, 'protocol_phase is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_phase_no_replace BEFORE INSERT ON protocol_phase WHEN EXISTS (SELECT 1 FROM protocol_phase WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'protocol_phase is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_phase_no_update BEFORE UPDATE ON protocol_phase BEGIN SELECT RAISE(ABORT, 'protocol_phase is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_step_no_delete BEFORE DELETE ON protocol_step BEGIN SELECT RAISE(ABORT, 'protocol_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_step_no_replace BEFORE INSERT ON protocol_step WHEN EXISTS (SELECT 1 FROM protocol_step WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'protocol_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER protocol_step_no_update BEFORE UPDATE ON protocol_step BEGIN SELECT RAISE(ABORT, 'protocol_step is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_retirement_no_delete BEFORE DELETE ON questionnaire_retirement BEGIN SELECT RAISE(ABORT, 'questionnaire_retirement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_retirement_no_replace BEFORE INSERT ON questionnaire_retirement WHEN EXISTS (SELECT 1 FROM questionnaire_retirement WHERE (questionnaire_id = NEW.questionnaire_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'questionnaire_retirement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_retirement_no_update BEFORE UPDATE ON questionnaire_retirement BEGIN SELECT RAISE(ABORT, 'questionnaire_retirement is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_version_no_delete BEFORE DELETE ON questionnaire_version BEGIN SELECT RAISE(ABORT, 'questionnaire_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_version_no_replace BEFORE INSERT ON questionnaire_version WHEN EXISTS (SELECT 1 FROM questionnaire_version WHERE (id = NEW.id) OR (clinic_id = NEW.clinic_id AND questionnaire_id = NEW.questionnaire_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'questionnaire_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER questionnaire_version_no_update BEFORE UPDATE ON questionnaire_version BEGIN SELECT RAISE(ABORT, 'questionnaire_version is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER record_file_no_delete BEFORE DELETE ON record_file BEGIN SELECT RAISE(ABORT, 'record_file is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER record_file_no_replace BEFORE INSERT ON record_file WHEN EXISTS (SELECT 1 FROM record_file WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'record_file is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER record_file_no_update BEFORE UPDATE ON record_file BEGIN SELECT RAISE(ABORT, 'record_file is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER retest_plan_no_delete BEFORE DELETE ON retest_plan BEGIN SELECT RAISE(ABORT, 'retest_plan is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER retest_plan_no_replace BEFORE INSERT ON retest_plan WHEN EXISTS (SELECT 1 FROM retest_plan WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'retest_plan is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER retest_plan_no_update BEFORE UPDATE ON retest_plan BEGIN SELECT RAISE(ABORT, 'retest_plan is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER review_booking_no_delete BEFORE DELETE ON review_booking BEGIN SELECT RAISE(ABORT, 'review_booking is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER review_booking_no_replace BEFORE INSERT ON review_booking WHEN EXISTS (SELECT 1 FROM review_booking WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'review_booking is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER review_booking_no_update BEFORE UPDATE ON review_booking BEGIN SELECT RAISE(ABORT, 'review_booking is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER screening_no_delete BEFORE DELETE ON screening BEGIN SELECT RAISE(ABORT, 'screening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER screening_no_replace BEFORE INSERT ON screening WHEN EXISTS (SELECT 1 FROM screening WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND version = NEW.version) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'screening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER screening_no_update BEFORE UPDATE ON screening BEGIN SELECT RAISE(ABORT, 'screening is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER session_joint_no_delete BEFORE DELETE ON session_joint BEGIN SELECT RAISE(ABORT, 'session_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER session_joint_no_replace BEFORE INSERT ON session_joint WHEN EXISTS (SELECT 1 FROM session_joint WHERE (session_id = NEW.session_id AND joint = NEW.joint) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'session_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER session_joint_no_update BEFORE UPDATE ON session_joint BEGIN SELECT RAISE(ABORT, 'session_joint is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER set_log_no_delete BEFORE DELETE ON set_log BEGIN SELECT RAISE(ABORT, 'set_log is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER set_log_no_replace BEFORE INSERT ON set_log WHEN EXISTS (SELECT 1 FROM set_log WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'set_log is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER set_log_no_update BEFORE UPDATE ON set_log BEGIN SELECT RAISE(ABORT, 'set_log is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER short_signs_approval_no_delete BEFORE DELETE ON short_signs_approval BEGIN SELECT RAISE(ABORT, 'short_signs_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER short_signs_approval_no_replace BEFORE INSERT ON short_signs_approval WHEN EXISTS (SELECT 1 FROM short_signs_approval WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'short_signs_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER short_signs_approval_no_update BEFORE UPDATE ON short_signs_approval BEGIN SELECT RAISE(ABORT, 'short_signs_approval is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_no_delete BEFORE DELETE ON signature BEGIN SELECT RAISE(ABORT, 'signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_no_replace BEFORE INSERT ON signature WHEN EXISTS (SELECT 1 FROM signature WHERE (prescription_id = NEW.prescription_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_no_update BEFORE UPDATE ON signature BEGIN SELECT RAISE(ABORT, 'signature is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_withdrawal_no_delete BEFORE DELETE ON signature_withdrawal BEGIN SELECT RAISE(ABORT, 'signature_withdrawal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_withdrawal_no_replace BEFORE INSERT ON signature_withdrawal WHEN EXISTS (SELECT 1 FROM signature_withdrawal WHERE (prescription_id = NEW.prescription_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'signature_withdrawal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER signature_withdrawal_no_update BEFORE UPDATE ON signature_withdrawal BEGIN SELECT RAISE(ABORT, 'signature_withdrawal is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER supervised_session_no_delete BEFORE DELETE ON supervised_session BEGIN SELECT RAISE(ABORT, 'supervised_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER supervised_session_no_replace BEFORE INSERT ON supervised_session WHEN EXISTS (SELECT 1 FROM supervised_session WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'supervised_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER supervised_session_no_update BEFORE UPDATE ON supervised_session BEGIN SELECT RAISE(ABORT, 'supervised_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER training_session_no_delete BEFORE DELETE ON training_session BEGIN SELECT RAISE(ABORT, 'training_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER training_session_no_replace BEFORE INSERT ON training_session WHEN EXISTS (SELECT 1 FROM training_session WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND entry_id = NEW.entry_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'training_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER training_session_no_update BEFORE UPDATE ON training_session BEGIN SELECT RAISE(ABORT, 'training_session is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER two_hours_no_delete BEFORE DELETE ON two_hours BEGIN SELECT RAISE(ABORT, 'two_hours is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER two_hours_no_replace BEFORE INSERT ON two_hours WHEN EXISTS (SELECT 1 FROM two_hours WHERE (id = NEW.id) OR (patient_id = NEW.patient_id AND entry_id = NEW.entry_id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'two_hours is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER two_hours_no_update BEFORE UPDATE ON two_hours BEGIN SELECT RAISE(ABORT, 'two_hours is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_no_delete BEFORE DELETE ON visit BEGIN SELECT RAISE(ABORT, 'visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_no_replace BEFORE INSERT ON visit WHEN EXISTS (SELECT 1 FROM visit WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_no_update BEFORE UPDATE ON visit BEGIN SELECT RAISE(ABORT, 'visit is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_note_no_delete BEFORE DELETE ON visit_note BEGIN SELECT RAISE(ABORT, 'visit_note is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_note_no_replace BEFORE INSERT ON visit_note WHEN EXISTS (SELECT 1 FROM visit_note WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'visit_note is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER visit_note_no_update BEFORE UPDATE ON visit_note BEGIN SELECT RAISE(ABORT, 'visit_note is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER warning_sign_no_delete BEFORE DELETE ON warning_sign BEGIN SELECT RAISE(ABORT, 'warning_sign is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER warning_sign_no_replace BEFORE INSERT ON warning_sign WHEN EXISTS (SELECT 1 FROM warning_sign WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'warning_sign is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER warning_sign_no_update BEFORE UPDATE ON warning_sign BEGIN SELECT RAISE(ABORT, 'warning_sign is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER worklist_item_action_no_delete BEFORE DELETE ON worklist_item_action BEGIN SELECT RAISE(ABORT, 'worklist_item_action is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER worklist_item_action_no_replace BEFORE INSERT ON worklist_item_action WHEN EXISTS (SELECT 1 FROM worklist_item_action WHERE (id = NEW.id) OR (rowid = NEW.rowid)) BEGIN SELECT RAISE(ABORT, 'worklist_item_action is append-only'); END;
--> statement-breakpoint
CREATE TRIGGER worklist_item_action_no_update BEFORE UPDATE ON worklist_item_action BEGIN SELECT RAISE(ABORT, 'worklist_item_action is append-only'); END;
