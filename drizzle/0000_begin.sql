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
CREATE TABLE `baseline` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`joint` text NOT NULL,
	`usual_pain` integer,
	`usual_pain_top` integer,
	`pain_ceiling` integer NOT NULL,
	`usual_stiffness_minutes` integer NOT NULL,
	`usual_swelling` text NOT NULL,
	`usual_effusion` text NOT NULL,
	`usual_fatigue` integer,
	`frozen_on` text NOT NULL,
	`latched` integer NOT NULL,
	`by_name` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "baseline_usual_pain" CHECK("baseline"."usual_pain" IS NULL OR (typeof("baseline"."usual_pain") = 'integer' AND "baseline"."usual_pain" BETWEEN 0 AND 10)),
	CONSTRAINT "baseline_top" CHECK("baseline"."usual_pain_top" IS NULL OR ("baseline"."usual_pain" IS NOT NULL AND typeof("baseline"."usual_pain_top") = 'integer' AND "baseline"."usual_pain_top" BETWEEN "baseline"."usual_pain" AND min(10, "baseline"."usual_pain" + 2))),
	CONSTRAINT "baseline_ceiling" CHECK("baseline"."pain_ceiling" BETWEEN 5 AND 7),
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
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "care_event_kind" CHECK("care_event"."kind" IN ('medicine-change', 'joint-injection', 'surgery', 'fall', 'illness'))
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
	`ceiling_kg` real,
	`from_day` text NOT NULL,
	`to_day` text,
	`author` text NOT NULL,
	`remark` text,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "care_limit_kind" CHECK("care_limit"."kind" IN ('weight-bearing', 'range', 'load-ceiling', 'no-impact', 'none')),
	CONSTRAINT "care_limit_ceiling" CHECK(("care_limit"."kind" = 'load-ceiling') = ("care_limit"."ceiling_kg" IS NOT NULL)),
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
	`closings` text NOT NULL,
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
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "measurement_figure" CHECK("measurement"."figure" >= 0),
	CONSTRAINT "measurement_day" CHECK("measurement"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "measurement_limb" CHECK(json_extract("measurement"."value", '$.limb') IS NULL OR json_extract("measurement"."value", '$.limb') IN ('arm', 'leg')),
	CONSTRAINT "measurement_pressure_pair" CHECK("measurement"."kind" <> 'blood-pressure' OR json_extract("measurement"."value", '$.diastolicMmhg') < json_extract("measurement"."value", '$.systolicMmhg'))
);
--> statement-breakpoint
CREATE INDEX `measurement_by_patient_kind` ON `measurement` (`patient_id`,`kind`,`day`);--> statement-breakpoint
CREATE TABLE `prescription` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`line_id` text NOT NULL,
	`version` integer NOT NULL,
	`method` text NOT NULL,
	`exercise_id` text NOT NULL,
	`dose` text NOT NULL,
	`bad_day` text NOT NULL,
	`joints` text NOT NULL,
	`cautions` text NOT NULL,
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
CREATE UNIQUE INDEX `prescription_version` ON `prescription` (`line_id`,`version`);--> statement-breakpoint
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
	`lines` text NOT NULL,
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
CREATE TABLE `choice_version` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`version` integer NOT NULL,
	`choices` text NOT NULL,
	`changed_at` integer NOT NULL,
	`changed_by` text NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `choice_version_number` ON `choice_version` (`clinic_id`,`version`);--> statement-breakpoint
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
	`choices` text NOT NULL,
	`engine_version` text NOT NULL,
	`decision` text NOT NULL,
	`largest_step` text,
	`today` text NOT NULL,
	`contact` text NOT NULL,
	`reasons` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "decision_word" CHECK("decision"."decision" IN ('pause', 'ease-back', 'hold', 'progress')),
	CONSTRAINT "decision_today" CHECK("decision"."today" IN ('none', 'rest-this-joint', 'bad-day', 'as-planned')),
	CONSTRAINT "decision_contact" CHECK("decision"."contact" IN ('emergency', 'same-day', 'routine', 'none')),
	CONSTRAINT "decision_step" CHECK(("decision"."decision" = 'progress') = ("decision"."largest_step" IS NOT NULL)),
	CONSTRAINT "decision_day" CHECK("decision"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `decision_by_patient` ON `decision` (`patient_id`,`joint`,`evaluated_at`);--> statement-breakpoint
CREATE INDEX `decision_by_clinic` ON `decision` (`clinic_id`,`evaluated_at`);--> statement-breakpoint
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
CREATE TABLE `pre_approval` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`line_id` text NOT NULL,
	`steps` integer NOT NULL,
	`days` integer NOT NULL,
	`signed_at` integer NOT NULL,
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
CREATE TABLE `proposal` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`line_id` text NOT NULL,
	`prescription_id` text NOT NULL,
	`decision_id` text NOT NULL,
	`made_at` integer NOT NULL,
	`session_id` text,
	`word` text NOT NULL,
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
	`patient_text` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`prescription_id`) REFERENCES `prescription`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`decision_id`) REFERENCES `decision`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "proposal_effect" CHECK("proposal"."effect" IN ('acts-at-once', 'awaits-signature', 'repeat')),
	CONSTRAINT "proposal_kind" CHECK("proposal"."kind" IN ('same', 'step', 'ease-back', 'return', 'stop')),
	CONSTRAINT "proposal_word" CHECK("proposal"."word" IN ('pause', 'ease-back', 'hold', 'progress'))
);
--> statement-breakpoint
CREATE INDEX `proposal_by_patient` ON `proposal` (`patient_id`,`made_at`);--> statement-breakpoint
CREATE INDEX `proposal_by_line` ON `proposal` (`line_id`,`made_at`);--> statement-breakpoint
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
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
	`answered_at` integer NOT NULL,
	`fatigue_0_10` integer,
	`fatigue_state` text NOT NULL,
	`late` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "morning_day" CHECK("morning"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "morning_fatigue" CHECK("morning"."fatigue_0_10" IS NULL OR (typeof("morning"."fatigue_0_10") = 'integer' AND "morning"."fatigue_0_10" BETWEEN 0 AND 10))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `morning_entry` ON `morning` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `morning_by_patient` ON `morning` (`patient_id`,`day`);--> statement-breakpoint
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
	`flare` integer,
	PRIMARY KEY(`morning_id`, `joint`),
	FOREIGN KEY (`morning_id`) REFERENCES `morning`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "morning_joint_pain" CHECK("morning_joint"."pain_0_10" IS NULL OR (typeof("morning_joint"."pain_0_10") = 'integer' AND "morning_joint"."pain_0_10" BETWEEN 0 AND 10)),
	CONSTRAINT "morning_joint_stiffness" CHECK("morning_joint"."stiffness_minutes" IS NULL OR (typeof("morning_joint"."stiffness_minutes") = 'integer' AND "morning_joint"."stiffness_minutes" BETWEEN 0 AND 1440)),
	CONSTRAINT "morning_joint_swelling" CHECK("morning_joint"."swelling" IS NULL OR "morning_joint"."swelling" IN ('none', 'slight', 'clear', 'severe'))
);
--> statement-breakpoint
CREATE INDEX `morning_joint_by_patient` ON `morning_joint` (`patient_id`,`morning_id`);--> statement-breakpoint
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
CREATE INDEX `session_joint_by_patient` ON `session_joint` (`patient_id`,`session_id`);--> statement-breakpoint
CREATE TABLE `set_log` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`patient_id` text NOT NULL,
	`session_id` text NOT NULL,
	`prescription_id` text NOT NULL,
	`line_id` text NOT NULL,
	`set_number` integer NOT NULL,
	`repetitions` integer,
	`load_kg` real,
	`reserve` integer,
	`stop_reason` text NOT NULL,
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
CREATE INDEX `set_log_by_session` ON `set_log` (`session_id`,`line_id`,`set_number`);--> statement-breakpoint
CREATE INDEX `set_log_by_patient` ON `set_log` (`patient_id`,`session_id`);--> statement-breakpoint
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
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
	`began_at` integer NOT NULL,
	`ended_at` integer NOT NULL,
	`kind` text NOT NULL,
	`did_extra` integer NOT NULL,
	`stopped_by_flag` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "training_session_kind" CHECK("training_session"."kind" IN ('full', 'bad-day', 'test')),
	CONSTRAINT "training_session_day" CHECK("training_session"."day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
	CONSTRAINT "training_session_order" CHECK("training_session"."ended_at" >= "training_session"."began_at")
);
--> statement-breakpoint
CREATE UNIQUE INDEX `training_session_entry` ON `training_session` (`patient_id`,`entry_id`);--> statement-breakpoint
CREATE INDEX `training_session_by_patient` ON `training_session` (`patient_id`,`began_at`);--> statement-breakpoint
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
	`amends` text,
	`red_flags` text,
	`extra_pain_relief` integer,
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
CREATE INDEX `two_hours_by_session` ON `two_hours` (`session_id`);--> statement-breakpoint
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
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "auth_user_role" CHECK("auth_user"."role" IN ('clinician', 'administrator', 'patient')),
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
	`owned_loads_kg` text NOT NULL,
	`owned_equipment` text NOT NULL,
	`formula_sex` text,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
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
	`cover_hours` text NOT NULL,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `patient` (
	`id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `patient_by_clinic` ON `patient` (`clinic_id`,`id`);--> statement-breakpoint
CREATE TABLE `patient_identity` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`clinic_id` text NOT NULL,
	`given_name` text NOT NULL,
	`family_name` text NOT NULL,
	`birth_day` text NOT NULL,
	`phone` text,
	FOREIGN KEY (`patient_id`) REFERENCES `patient`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`clinic_id`) REFERENCES `clinic`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "identity_birth_day" CHECK("patient_identity"."birth_day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
);
--> statement-breakpoint
CREATE INDEX `identity_by_clinic_name` ON `patient_identity` (`clinic_id`,`family_name`,`given_name`);