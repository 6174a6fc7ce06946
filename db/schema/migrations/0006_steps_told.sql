-- Three messages more. SQLite alters no check, so the table is built anew.
CREATE TABLE `__new_outbox` (
	`id` text PRIMARY KEY NOT NULL,
	`message` text NOT NULL,
	`person_id` text,
	`facts` text NOT NULL,
	`created_at` text NOT NULL,
	`leased_until` text,
	`not_before` text NOT NULL,
	`tries` integer NOT NULL,
	`sent_at` text,
	`dropped_at` text,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "outbox_message" CHECK("__new_outbox"."message" IN ('sign-in link', 'proposal published', 'reminder', 'change asked for', 'skipped', 'approved', 'approval received', 'opened again', 'taken back', 'cancelled')),
	CONSTRAINT "outbox_one_end" CHECK("__new_outbox"."sent_at" IS NULL OR "__new_outbox"."dropped_at" IS NULL)
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_outbox`("id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at") SELECT "id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at" FROM `outbox`;
--> statement-breakpoint
DROP TABLE `outbox`;
--> statement-breakpoint
ALTER TABLE `__new_outbox` RENAME TO `outbox`;
--> statement-breakpoint
CREATE INDEX `outbox_due` ON `outbox` (`not_before`) WHERE "outbox"."sent_at" IS NULL AND "outbox"."dropped_at" IS NULL;
