-- Evidence is never altered: see the decision on evidence and erasure in DEVELOPERS.md.
CREATE TRIGGER `revision_no_update` BEFORE UPDATE ON `revision` BEGIN SELECT RAISE(ABORT, 'revision: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `revision_no_delete` BEFORE DELETE ON `revision` BEGIN SELECT RAISE(ABORT, 'revision: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `answer_no_update` BEFORE UPDATE ON `answer` BEGIN SELECT RAISE(ABORT, 'answer: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `answer_no_delete` BEFORE DELETE ON `answer` BEGIN SELECT RAISE(ABORT, 'answer: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `event_no_update` BEFORE UPDATE ON `event` BEGIN SELECT RAISE(ABORT, 'event: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `event_no_delete` BEFORE DELETE ON `event` BEGIN SELECT RAISE(ABORT, 'event: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `erasure_no_update` BEFORE UPDATE ON `erasure` BEGIN SELECT RAISE(ABORT, 'erasure: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `erasure_no_delete` BEFORE DELETE ON `erasure` BEGIN SELECT RAISE(ABORT, 'erasure: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `rates_no_update` BEFORE UPDATE ON `rates` BEGIN SELECT RAISE(ABORT, 'rates: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `rates_no_delete` BEFORE DELETE ON `rates` BEGIN SELECT RAISE(ABORT, 'rates: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `sealed_text_no_update` BEFORE UPDATE ON `sealed_text` BEGIN SELECT RAISE(ABORT, 'sealed_text: evidence is never altered'); END;
--> statement-breakpoint
CREATE TRIGGER `sealed_text_no_delete` BEFORE DELETE ON `sealed_text` WHEN NOT EXISTS (SELECT 1 FROM `erasure` WHERE `erasure`.`client_id` = OLD.`client_id`) BEGIN SELECT RAISE(ABORT, 'sealed_text: only an erasure may delete'); END;
--> statement-breakpoint
CREATE TRIGGER `event_in_order` BEFORE INSERT ON `event` WHEN NEW.`seq` <> (SELECT coalesce(max(`seq`), 0) + 1 FROM `event`) BEGIN SELECT RAISE(ABORT, 'event: out of order'); END;
