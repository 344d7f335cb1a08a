DROP INDEX `morning_by_patient`;--> statement-breakpoint
CREATE INDEX `morning_of_patient` ON `morning` (`patient_id`,`day`,`clinic_id`,`id`,`entry_id`,`amends`,`zone`,`answered_at`,`arrived_at`,`red_flags`,`extra_pain_relief`,`fatigue_0_10`,`fatigue_state`,`clock_doubtful`,`late`);--> statement-breakpoint
DROP INDEX `morning_joint_by_patient`;--> statement-breakpoint
CREATE INDEX `morning_joint_of_morning` ON `morning_joint` (`patient_id`,`morning_id`,`joint`,`pain_0_10`,`stiffness_minutes`,`stiffness_state`,`swelling`,`swelling_state`,`flare`);--> statement-breakpoint
DROP INDEX `session_joint_by_patient`;--> statement-breakpoint
CREATE INDEX `session_joint_of_session` ON `session_joint` (`patient_id`,`session_id`,`joint`,`pain_before_0_10`,`pain_during_0_10`,`pain_after_0_10`,`pain_two_hours_state`,`gave_way`,`gave_way_unanswered`);--> statement-breakpoint
DROP INDEX `set_log_by_session`;--> statement-breakpoint
DROP INDEX `set_log_by_patient`;--> statement-breakpoint
CREATE INDEX `set_log_of_session` ON `set_log` (`patient_id`,`session_id`,`line_id`,`set_number`,`prescription_id`,`repetitions`,`load_kg`,`reserve`,`stop_reason`,`easier`);--> statement-breakpoint
DROP INDEX `training_session_by_patient_day`;--> statement-breakpoint
CREATE INDEX `training_session_of_patient` ON `training_session` (`patient_id`,`day`,`clinic_id`,`id`,`entry_id`,`amends`,`began_at`,`arrived_at`,`kind`,`red_flags`,`extra_pain_relief`,`did_extra`,`did_extra_unanswered`,`told_new`,`clock_doubtful`);--> statement-breakpoint
DROP INDEX `two_hours_by_session`;--> statement-breakpoint
CREATE INDEX `two_hours_of_session` ON `two_hours` (`patient_id`,`session_id`,`clock_doubtful`,`joint`,`pain_0_10`,`arrived_at`);