-- Without recursive_triggers, SQLite's own default, a REPLACE deletes the old row past its guard: it is refused before it begins.
CREATE TRIGGER `revision_no_replace` BEFORE INSERT ON `revision` WHEN EXISTS (SELECT 1 FROM `revision` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id` OR `hash` = NEW.`hash` OR (`proposal_id` = NEW.`proposal_id` AND `number` = NEW.`number`)) BEGIN SELECT RAISE(ABORT, 'revision: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `answer_no_replace` BEFORE INSERT ON `answer` WHEN EXISTS (SELECT 1 FROM `answer` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id` OR `reference` = NEW.`reference` OR `revision_id` = NEW.`revision_id`) BEGIN SELECT RAISE(ABORT, 'answer: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `event_no_replace` BEFORE INSERT ON `event` WHEN EXISTS (SELECT 1 FROM `event` WHERE `hash` = NEW.`hash` OR `prev` = NEW.`prev`) BEGIN SELECT RAISE(ABORT, 'event: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `erasure_no_replace` BEFORE INSERT ON `erasure` WHEN EXISTS (SELECT 1 FROM `erasure` WHERE `rowid` = NEW.`rowid` OR `id` = NEW.`id`) BEGIN SELECT RAISE(ABORT, 'erasure: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `rates_no_replace` BEFORE INSERT ON `rates` WHEN EXISTS (SELECT 1 FROM `rates` WHERE `version` = NEW.`version`) BEGIN SELECT RAISE(ABORT, 'rates: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `sealed_text_no_replace` BEFORE INSERT ON `sealed_text` WHEN EXISTS (SELECT 1 FROM `sealed_text` WHERE `rowid` = NEW.`rowid` OR `hash` = NEW.`hash`) BEGIN SELECT RAISE(ABORT, 'sealed_text: evidence is never altered'); END;
