CREATE TABLE `sign_in_try` (
	`kind` text NOT NULL,
	`key_seal` text NOT NULL,
	`wrong` integer NOT NULL,
	`last_at` integer NOT NULL,
	PRIMARY KEY(`kind`, `key_seal`),
	CONSTRAINT "sign_in_try_wrong" CHECK("sign_in_try"."wrong" > 0)
);
--> statement-breakpoint
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
