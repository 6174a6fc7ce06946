CREATE TABLE `known_device` (
	`person_id` text NOT NULL,
	`hash` text NOT NULL,
	`words` text NOT NULL,
	`first_at` text NOT NULL,
	PRIMARY KEY(`person_id`, `hash`),
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `collection` (
	`season_id` text PRIMARY KEY NOT NULL,
	`version` integer NOT NULL,
	`document` text NOT NULL,
	`updated_at` text NOT NULL,
	`updated_by` text NOT NULL,
	FOREIGN KEY (`season_id`) REFERENCES `season`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`updated_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "collection_version" CHECK("collection"."version" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `photo` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`visit_id` text,
	`place_id` text,
	`side` text NOT NULL,
	`width` integer NOT NULL,
	`height` integer NOT NULL,
	`sha256` text NOT NULL,
	`position` integer NOT NULL,
	`added_at` text NOT NULL,
	`added_by` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`visit_id`) REFERENCES `visit`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`added_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "photo_side" CHECK("photo"."side" IN ('before', 'after', 'wrong', 'front')),
	CONSTRAINT "photo_of" CHECK(("photo"."visit_id" IS NULL) <> ("photo"."place_id" IS NULL)),
	CONSTRAINT "photo_front" CHECK(("photo"."side" = 'front') = ("photo"."place_id" IS NOT NULL)),
	CONSTRAINT "photo_width" CHECK("photo"."width" BETWEEN 1 AND 20000),
	CONSTRAINT "photo_height" CHECK("photo"."height" BETWEEN 1 AND 20000)
) STRICT;
--> statement-breakpoint
CREATE INDEX `photo_visit` ON `photo` (`visit_id`);--> statement-breakpoint
CREATE INDEX `photo_place` ON `photo` (`place_id`);--> statement-breakpoint
CREATE INDEX `photo_client` ON `photo` (`client_id`);--> statement-breakpoint
CREATE TABLE `visit` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`season_id` text NOT NULL,
	`proposal_id` text,
	`place_id` text,
	`kind` text NOT NULL,
	`state` text NOT NULL,
	`day` text,
	`came` text NOT NULL,
	`client_note` text NOT NULL,
	`studio_note` text NOT NULL,
	`reported_by` text,
	`reported_at` text,
	`reported` text NOT NULL,
	`created_at` text NOT NULL,
	`done_at` text,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`season_id`) REFERENCES `season`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`proposal_id`) REFERENCES `proposal`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`reported_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "visit_kind" CHECK("visit"."kind" IN ('install', 'refresh', 'watering', 'check', 'take-down')),
	CONSTRAINT "visit_state" CHECK("visit"."state" IN ('to plan', 'planned', 'done', 'dropped')),
	CONSTRAINT "visit_day" CHECK("visit"."state" NOT IN ('planned', 'done') OR "visit"."day" IS NOT NULL),
	CONSTRAINT "visit_done" CHECK(("visit"."state" = 'done') = ("visit"."done_at" IS NOT NULL)),
	CONSTRAINT "visit_reported" CHECK(("visit"."reported_by" IS NULL) = ("visit"."reported_at" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE INDEX `visit_client` ON `visit` (`client_id`,`day`);--> statement-breakpoint
CREATE INDEX `visit_season` ON `visit` (`season_id`,`state`);--> statement-breakpoint
-- Four messages more. SQLite alters no check, so the table is built anew.
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
	CONSTRAINT "outbox_message" CHECK("__new_outbox"."message" IN ('sign-in link', 'proposal published', 'reminder', 'change asked for', 'skipped', 'approved', 'approval received', 'opened again', 'taken back', 'cancelled', 'something is wrong', 'visit made', 'new device', 'address changed')),
	CONSTRAINT "outbox_one_end" CHECK("__new_outbox"."sent_at" IS NULL OR "__new_outbox"."dropped_at" IS NULL)
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_outbox`("id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at") SELECT "id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at" FROM `outbox`;--> statement-breakpoint
DROP TABLE `outbox`;--> statement-breakpoint
ALTER TABLE `__new_outbox` RENAME TO `outbox`;--> statement-breakpoint
CREATE INDEX `outbox_due` ON `outbox` (`not_before`) WHERE "outbox"."sent_at" IS NULL AND "outbox"."dropped_at" IS NULL;--> statement-breakpoint
-- Columns are added, no table is built anew.
ALTER TABLE `site_colour` ADD COLUMN `spot_x` real CHECK(`spot_x` BETWEEN 0 AND 1);
--> statement-breakpoint
ALTER TABLE `site_colour` ADD COLUMN `spot_y` real CHECK(`spot_y` BETWEEN 0 AND 1);
--> statement-breakpoint
ALTER TABLE `session` ADD `device` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `answer` ADD `places` text DEFAULT '{}' NOT NULL;--> statement-breakpoint
ALTER TABLE `proposal` ADD `card_key` text;--> statement-breakpoint
CREATE UNIQUE INDEX `proposal_card_key_unique` ON `proposal` (`card_key`);