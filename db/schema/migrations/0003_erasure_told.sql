-- An erasure frees words only with the line of the record that tells of it, which the chain keeps from being made up later.
DROP TRIGGER `sealed_text_no_delete`;
--> statement-breakpoint
CREATE TRIGGER `sealed_text_no_delete` BEFORE DELETE ON `sealed_text` WHEN NOT EXISTS (SELECT 1 FROM `erasure` JOIN `event` ON `event`.`client_id` = `erasure`.`client_id` AND `event`.`act` = 'client erased' AND `event`.`at` = `erasure`.`at` AND `event`.`actor` = 'staff ' || `erasure`.`by` WHERE `erasure`.`client_id` = OLD.`client_id`) BEGIN SELECT RAISE(ABORT, 'sealed_text: only an erasure may delete'); END;
