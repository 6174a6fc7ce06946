CREATE TABLE `trait` (
	`material_id` text PRIMARY KEY NOT NULL,
	`form` text NOT NULL,
	`second_hex` text,
	`length_cm` real,
	`across_cm` real,
	`had_from` integer NOT NULL,
	`had_to` integer NOT NULL,
	`lasts_from` integer NOT NULL,
	`lasts_to` integer NOT NULL,
	`zone` real,
	`needs` text NOT NULL,
	`spacing_cm` real,
	`root_ball_litres` real,
	`kg_each` real,
	`watts` real,
	`most_end_to_end` integer,
	`regulated` text NOT NULL,
	FOREIGN KEY (`material_id`) REFERENCES `material`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "trait_form" CHECK("trait"."form" IN ('straight stems', 'twisting stems', 'arching stems', 'logs', 'evergreen top', 'grass', 'sword leaves', 'flower spike', 'flat fan', 'long needle', 'short needle', 'scale leaf', 'broad leaf', 'small leaf', 'trailing', 'berries', 'cone', 'pod', 'seed head', 'plume', 'globe', 'cluster', 'ribbon', 'pumpkin', 'round flowers', 'daisy flowers', 'bulb flowers', 'rosette', 'foliage', 'fern', 'lights', 'unseen')),
	CONSTRAINT "trait_needs" CHECK("trait"."needs" IN ('any', 'sun', 'sun or part', 'part', 'part or shade', 'shade')),
	CONSTRAINT "trait_length" CHECK("trait"."length_cm" BETWEEN 0.1 AND 1000),
	CONSTRAINT "trait_across" CHECK("trait"."across_cm" BETWEEN 0.1 AND 1000),
	CONSTRAINT "trait_had_from" CHECK("trait"."had_from" BETWEEN 1 AND 12),
	CONSTRAINT "trait_had_to" CHECK("trait"."had_to" BETWEEN 1 AND 12),
	CONSTRAINT "trait_lasts_from" CHECK("trait"."lasts_from" BETWEEN 1 AND 12),
	CONSTRAINT "trait_lasts_to" CHECK("trait"."lasts_to" BETWEEN 1 AND 12),
	CONSTRAINT "trait_zone" CHECK("trait"."zone" BETWEEN 1 AND 13.5),
	CONSTRAINT "trait_spacing" CHECK("trait"."spacing_cm" BETWEEN 1 AND 500),
	CONSTRAINT "trait_root_ball" CHECK("trait"."root_ball_litres" BETWEEN 0.01 AND 500),
	CONSTRAINT "trait_weight" CHECK("trait"."kg_each" BETWEEN 0 AND 500),
	CONSTRAINT "trait_watts" CHECK("trait"."watts" BETWEEN 0 AND 5000),
	CONSTRAINT "trait_end_to_end" CHECK("trait"."most_end_to_end" BETWEEN 1 AND 200)
) STRICT;
--> statement-breakpoint
-- Columns are added, no table is built anew: a rebuilt one would lose STRICT, and what refers to it.
ALTER TABLE `recipe_line` ADD COLUMN `way` text NOT NULL DEFAULT 'fixed' CHECK(`way` IN ('fixed', 'stems', 'greens', 'rim', 'faces', 'spacing', 'held'));
--> statement-breakpoint
ALTER TABLE `recipe_line` ADD COLUMN `holds_id` text REFERENCES `material`(`id`);
--> statement-breakpoint
UPDATE `recipe_line` SET `way` = CASE `role` WHEN 'thriller' THEN 'stems' WHEN 'filler' THEN 'greens' WHEN 'spiller' THEN 'rim' ELSE 'fixed' END;
--> statement-breakpoint
ALTER TABLE `place` ADD COLUMN `hardiness_zone` real CHECK(`hardiness_zone` BETWEEN 1 AND 13.5);
