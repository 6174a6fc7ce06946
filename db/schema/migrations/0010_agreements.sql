CREATE TABLE `agreement` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`renews` text,
	`state` text NOT NULL,
	`number` integer NOT NULL,
	`issued` text,
	`in_force` text,
	`from_day` text,
	`to_day` text,
	`total_cents` integer,
	`sign_by` text,
	`issued_at` text,
	`seen_at` text,
	`reminded_at` text,
	`answered_at` text,
	`undelivered_at` text,
	`holds_until` text,
	`ending` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_kept" CHECK("agreement"."state" IN ('drafting', 'to be signed', 'signed', 'declined', 'ended')),
	CONSTRAINT "agreement_issued" CHECK(("agreement"."number" = 0) = ("agreement"."issued" IS NULL)),
	CONSTRAINT "agreement_unissued" CHECK("agreement"."number" > 0 OR "agreement"."state" = 'drafting'),
	CONSTRAINT "agreement_in_force" CHECK(("agreement"."in_force" IS NULL) = ("agreement"."holds_until" IS NULL)),
	CONSTRAINT "agreement_signed" CHECK("agreement"."state" <> 'signed' OR "agreement"."in_force" IS NOT NULL),
	CONSTRAINT "agreement_sign_by" CHECK(("agreement"."issued" IS NULL) = ("agreement"."sign_by" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_renews_unique` ON `agreement` (`renews`);--> statement-breakpoint
CREATE INDEX `agreement_client` ON `agreement` (`client_id`);--> statement-breakpoint
CREATE INDEX `agreement_state` ON `agreement` (`state`,`sign_by`);--> statement-breakpoint
CREATE TABLE `agreement_consent` (
	`id` text PRIMARY KEY NOT NULL,
	`document` text NOT NULL,
	`person_id` text NOT NULL,
	`version` integer NOT NULL,
	`words` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`document`) REFERENCES `agreement_document`(`hash`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_consent_once` ON `agreement_consent` (`document`,`person_id`);--> statement-breakpoint
CREATE TABLE `agreement_document` (
	`hash` text PRIMARY KEY NOT NULL,
	`agreement_id` text NOT NULL,
	`number` integer NOT NULL,
	`supersedes` text,
	`template_version` integer NOT NULL,
	`from_day` text NOT NULL,
	`to_day` text NOT NULL,
	`total_cents` integer NOT NULL,
	`issued_at` text NOT NULL,
	`issued_by` text NOT NULL,
	FOREIGN KEY (`agreement_id`) REFERENCES `agreement`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`issued_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_document_from_one" CHECK("agreement_document"."number" >= 1),
	CONSTRAINT "agreement_document_first" CHECK(("agreement_document"."number" = 1) = ("agreement_document"."supersedes" IS NULL)),
	CONSTRAINT "agreement_document_days" CHECK("agreement_document"."from_day" <= "agreement_document"."to_day")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_document_number` ON `agreement_document` (`agreement_id`,`number`);--> statement-breakpoint
CREATE TABLE `agreement_draft` (
	`agreement_id` text PRIMARY KEY NOT NULL,
	`version` integer NOT NULL,
	`terms` text NOT NULL,
	`updated_at` text NOT NULL,
	`updated_by` text NOT NULL,
	FOREIGN KEY (`agreement_id`) REFERENCES `agreement`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`updated_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_draft_version" CHECK("agreement_draft"."version" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `agreement_opening` (
	`id` text PRIMARY KEY NOT NULL,
	`document` text NOT NULL,
	`person_id` text NOT NULL,
	`opened_as` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`document`) REFERENCES `agreement_document`(`hash`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_opening_as" CHECK("agreement_opening"."opened_as" IN ('page', 'PDF'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_opening_once` ON `agreement_opening` (`document`,`person_id`,`opened_as`);--> statement-breakpoint
CREATE TABLE `agreement_paper` (
	`document` text PRIMARY KEY NOT NULL,
	`sha256` text NOT NULL,
	`bytes` integer NOT NULL,
	`head_seq` integer NOT NULL,
	`head` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`document`) REFERENCES `agreement_document`(`hash`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_paper_bytes" CHECK("agreement_paper"."bytes" > 0)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_paper_sha256_unique` ON `agreement_paper` (`sha256`);--> statement-breakpoint
CREATE TABLE `agreement_signature` (
	`id` text PRIMARY KEY NOT NULL,
	`document` text NOT NULL,
	`side` text NOT NULL,
	`words` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`document`) REFERENCES `agreement_document`(`hash`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_signature_sides" CHECK("agreement_signature"."side" IN ('studio', 'client'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `agreement_signature_side` ON `agreement_signature` (`document`,`side`);--> statement-breakpoint
CREATE TABLE `agreement_template` (
	`version` integer PRIMARY KEY NOT NULL,
	`document` text NOT NULL,
	`made_at` text NOT NULL,
	`made_by` text NOT NULL,
	FOREIGN KEY (`made_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "agreement_template_version" CHECK("agreement_template"."version" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `credit_note` (
	`number` text PRIMARY KEY NOT NULL,
	`invoice` text NOT NULL,
	`client_id` text NOT NULL,
	`on_day` text NOT NULL,
	`total_cents` integer NOT NULL,
	`words` text NOT NULL,
	`at` text NOT NULL,
	`by` text,
	FOREIGN KEY (`invoice`) REFERENCES `invoice`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "credit_note_total" CHECK("credit_note"."total_cents" > 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `credit_note_invoice` ON `credit_note` (`invoice`);--> statement-breakpoint
CREATE TABLE `entry` (
	`seq` integer PRIMARY KEY NOT NULL,
	`id` text NOT NULL,
	`client_id` text NOT NULL,
	`is_a` text NOT NULL,
	`on_day` text NOT NULL,
	`cents` integer NOT NULL,
	`invoice` text,
	`credit_note` text,
	`means` text,
	`undoes` text,
	`words` text,
	`at` text NOT NULL,
	`by` text,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`invoice`) REFERENCES `invoice`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`credit_note`) REFERENCES `credit_note`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "entry_is" CHECK("entry"."is_a" IN ('invoice', 'credit note', 'payment', 'refund', 'write-off', 'counter-entry')),
	CONSTRAINT "entry_means" CHECK("entry"."means" IN ('check', 'bank transfer', 'card', 'cash', 'other')),
	CONSTRAINT "entry_cents" CHECK("entry"."cents" > 0),
	CONSTRAINT "entry_paid" CHECK(("entry"."is_a" IN ('payment', 'refund')) = ("entry"."means" IS NOT NULL)),
	CONSTRAINT "entry_undoes" CHECK(("entry"."is_a" = 'counter-entry') = ("entry"."undoes" IS NOT NULL)),
	CONSTRAINT "entry_credit" CHECK(("entry"."is_a" = 'credit note') = ("entry"."credit_note" IS NOT NULL)),
	CONSTRAINT "entry_invoice" CHECK("entry"."is_a" NOT IN ('invoice', 'credit note', 'write-off') OR "entry"."invoice" IS NOT NULL)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `entry_id_unique` ON `entry` (`id`);--> statement-breakpoint
CREATE UNIQUE INDEX `entry_credit_note_unique` ON `entry` (`credit_note`);--> statement-breakpoint
CREATE UNIQUE INDEX `entry_undoes_unique` ON `entry` (`undoes`);--> statement-breakpoint
CREATE INDEX `entry_client` ON `entry` (`client_id`,`on_day`);--> statement-breakpoint
CREATE TABLE `invoice` (
	`number` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`bill` text,
	`on_day` text NOT NULL,
	`due_on` text NOT NULL,
	`total_cents` integer NOT NULL,
	`words` text NOT NULL,
	`at` text NOT NULL,
	`by` text,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "invoice_total" CHECK("invoice"."total_cents" > 0),
	CONSTRAINT "invoice_days" CHECK("invoice"."on_day" <= "invoice"."due_on")
) STRICT;
--> statement-breakpoint
CREATE INDEX `invoice_client` ON `invoice` (`client_id`,`on_day`);--> statement-breakpoint
CREATE INDEX `invoice_bill` ON `invoice` (`bill`);--> statement-breakpoint
CREATE TABLE `invoice_asked` (
	`number` text PRIMARY KEY NOT NULL,
	`reminded_at` text,
	`undelivered_at` text,
	FOREIGN KEY (`number`) REFERENCES `invoice`(`number`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
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
	CONSTRAINT "outbox_message" CHECK("__new_outbox"."message" IN ('sign-in link', 'proposal published', 'reminder', 'change asked for', 'skipped', 'approved', 'approval received', 'opened again', 'taken back', 'cancelled', 'something is wrong', 'visit made', 'new device', 'address changed', 'agreement issued', 'agreement reminder', 'agreement signed', 'agreement declined', 'agreement taken back', 'agreement ended', 'invoice sent', 'payment reminder', 'payment received')),
	CONSTRAINT "outbox_one_end" CHECK("__new_outbox"."sent_at" IS NULL OR "__new_outbox"."dropped_at" IS NULL)
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_outbox`("id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at") SELECT "id", "message", "person_id", "facts", "created_at", "leased_until", "not_before", "tries", "sent_at", "dropped_at" FROM `outbox`;--> statement-breakpoint
DROP TABLE `outbox`;--> statement-breakpoint
ALTER TABLE `__new_outbox` RENAME TO `outbox`;--> statement-breakpoint
CREATE INDEX `outbox_due` ON `outbox` (`not_before`) WHERE "outbox"."sent_at" IS NULL AND "outbox"."dropped_at" IS NULL;--> statement-breakpoint
ALTER TABLE `session` ADD `proven_by` text CONSTRAINT "session_proven" CHECK("proven_by" IN ('link', 'code'));--> statement-breakpoint
ALTER TABLE `studio` ADD `pay_words` text DEFAULT '' NOT NULL;--> statement-breakpoint
CREATE TRIGGER `agreement_template_no_update` BEFORE UPDATE ON `agreement_template` BEGIN SELECT RAISE(ABORT, 'agreement_template: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_template_no_delete` BEFORE DELETE ON `agreement_template` BEGIN SELECT RAISE(ABORT, 'agreement_template: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_template_no_replace` BEFORE INSERT ON `agreement_template` WHEN EXISTS (SELECT 1 FROM `agreement_template` WHERE `version` = NEW.`version`) BEGIN SELECT RAISE(ABORT, 'agreement_template: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_document_no_update` BEFORE UPDATE ON `agreement_document` BEGIN SELECT RAISE(ABORT, 'agreement_document: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_document_no_delete` BEFORE DELETE ON `agreement_document` BEGIN SELECT RAISE(ABORT, 'agreement_document: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_document_no_replace` BEFORE INSERT ON `agreement_document` WHEN EXISTS (SELECT 1 FROM `agreement_document` WHERE `rowid` = NEW.`rowid` OR `hash` = NEW.`hash` OR (`agreement_id` = NEW.`agreement_id` AND `number` = NEW.`number`)) BEGIN SELECT RAISE(ABORT, 'agreement_document: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_opening_no_update` BEFORE UPDATE ON `agreement_opening` BEGIN SELECT RAISE(ABORT, 'agreement_opening: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_opening_no_delete` BEFORE DELETE ON `agreement_opening` BEGIN SELECT RAISE(ABORT, 'agreement_opening: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_opening_no_replace` BEFORE INSERT ON `agreement_opening` WHEN EXISTS (SELECT 1 FROM `agreement_opening` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id` OR (`document` = NEW.`document` AND `person_id` = NEW.`person_id` AND `opened_as` = NEW.`opened_as`)) BEGIN SELECT RAISE(ABORT, 'agreement_opening: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_consent_no_update` BEFORE UPDATE ON `agreement_consent` BEGIN SELECT RAISE(ABORT, 'agreement_consent: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_consent_no_delete` BEFORE DELETE ON `agreement_consent` BEGIN SELECT RAISE(ABORT, 'agreement_consent: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_consent_no_replace` BEFORE INSERT ON `agreement_consent` WHEN EXISTS (SELECT 1 FROM `agreement_consent` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id` OR (`document` = NEW.`document` AND `person_id` = NEW.`person_id`)) BEGIN SELECT RAISE(ABORT, 'agreement_consent: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_signature_no_update` BEFORE UPDATE ON `agreement_signature` BEGIN SELECT RAISE(ABORT, 'agreement_signature: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_signature_no_delete` BEFORE DELETE ON `agreement_signature` BEGIN SELECT RAISE(ABORT, 'agreement_signature: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_signature_no_replace` BEFORE INSERT ON `agreement_signature` WHEN EXISTS (SELECT 1 FROM `agreement_signature` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id` OR (`document` = NEW.`document` AND `side` = NEW.`side`)) BEGIN SELECT RAISE(ABORT, 'agreement_signature: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_paper_no_update` BEFORE UPDATE ON `agreement_paper` BEGIN SELECT RAISE(ABORT, 'agreement_paper: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_paper_no_delete` BEFORE DELETE ON `agreement_paper` BEGIN SELECT RAISE(ABORT, 'agreement_paper: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `agreement_paper_no_replace` BEFORE INSERT ON `agreement_paper` WHEN EXISTS (SELECT 1 FROM `agreement_paper` WHERE `rowid` = NEW.`rowid` OR `document` = NEW.`document` OR `sha256` = NEW.`sha256`) BEGIN SELECT RAISE(ABORT, 'agreement_paper: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `invoice_no_update` BEFORE UPDATE ON `invoice` BEGIN SELECT RAISE(ABORT, 'invoice: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `invoice_no_delete` BEFORE DELETE ON `invoice` BEGIN SELECT RAISE(ABORT, 'invoice: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `invoice_no_replace` BEFORE INSERT ON `invoice` WHEN EXISTS (SELECT 1 FROM `invoice` WHERE `rowid` = NEW.`rowid` OR `number` = NEW.`number`) BEGIN SELECT RAISE(ABORT, 'invoice: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `credit_note_no_update` BEFORE UPDATE ON `credit_note` BEGIN SELECT RAISE(ABORT, 'credit_note: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `credit_note_no_delete` BEFORE DELETE ON `credit_note` BEGIN SELECT RAISE(ABORT, 'credit_note: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `credit_note_no_replace` BEFORE INSERT ON `credit_note` WHEN EXISTS (SELECT 1 FROM `credit_note` WHERE `rowid` = NEW.`rowid` OR `number` = NEW.`number`) BEGIN SELECT RAISE(ABORT, 'credit_note: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `entry_no_update` BEFORE UPDATE ON `entry` BEGIN SELECT RAISE(ABORT, 'entry: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `entry_no_delete` BEFORE DELETE ON `entry` BEGIN SELECT RAISE(ABORT, 'entry: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `entry_no_replace` BEFORE INSERT ON `entry` WHEN EXISTS (SELECT 1 FROM `entry` WHERE `seq` = NEW.`seq` OR `id` = NEW.`id` OR `credit_note` = NEW.`credit_note` OR `undoes` = NEW.`undoes`) BEGIN SELECT RAISE(ABORT, 'entry: evidence is never altered'); END;
