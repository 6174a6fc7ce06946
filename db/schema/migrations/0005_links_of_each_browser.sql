ALTER TABLE `sign_in_token` RENAME TO `old_sign_in_token`;--> statement-breakpoint
CREATE TABLE `sign_in_token` (
	`token` text PRIMARY KEY NOT NULL,
	`identifier` text NOT NULL,
	`code_hash` text NOT NULL,
	`ask_hash` text NOT NULL,
	`tries_left` integer NOT NULL,
	`expires` integer NOT NULL
) STRICT;
--> statement-breakpoint
INSERT INTO `sign_in_token` (`token`, `identifier`, `code_hash`, `ask_hash`, `tries_left`, `expires`) SELECT `token`, `identifier`, `code_hash`, `ask_hash`, `tries_left`, `expires` FROM `old_sign_in_token`;--> statement-breakpoint
DROP TABLE `old_sign_in_token`;--> statement-breakpoint
CREATE UNIQUE INDEX `sign_in_token_asked` ON `sign_in_token` (`identifier`,`ask_hash`);
