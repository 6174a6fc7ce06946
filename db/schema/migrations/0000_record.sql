CREATE TABLE `material` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`piece` text NOT NULL,
	`role` text NOT NULL,
	`unit` text NOT NULL,
	`pieces_per_unit` real NOT NULL,
	`hex` text NOT NULL,
	`is_poisonous_to_people` integer NOT NULL,
	`is_poisonous_to_pets` integer NOT NULL,
	`has_small_parts` integer NOT NULL,
	`retired_at` text,
	CONSTRAINT "material_kind" CHECK("material"."kind" IN ('fresh', 'live', 'faux', 'ornament', 'light', 'mechanics')),
	CONSTRAINT "material_piece" CHECK("material"."piece" IN ('green', 'branch', 'accent', 'plant', 'string', 'cluster to make', 'cluster kept', 'none')),
	CONSTRAINT "material_role" CHECK("material"."role" IN ('thriller', 'filler', 'spiller', 'accent', 'mechanics')),
	CONSTRAINT "material_unit" CHECK("material"."unit" IN ('stem', 'kg', 'litre', 'string', 'piece')),
	CONSTRAINT "material_pieces" CHECK("material"."pieces_per_unit" BETWEEN 0.001 AND 10000)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `material_name_unique` ON `material` (`name`);--> statement-breakpoint
CREATE TABLE `pack` (
	`id` text PRIMARY KEY NOT NULL,
	`material_id` text NOT NULL,
	`supplier_id` text NOT NULL,
	`size` real NOT NULL,
	`price_cents` integer NOT NULL,
	`freight_percent` real NOT NULL,
	`retired_at` text,
	FOREIGN KEY (`material_id`) REFERENCES `material`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`supplier_id`) REFERENCES `supplier`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "pack_size" CHECK("pack"."size" BETWEEN 0.001 AND 100000),
	CONSTRAINT "pack_price" CHECK("pack"."price_cents" BETWEEN 0 AND 10000000),
	CONSTRAINT "pack_freight" CHECK("pack"."freight_percent" BETWEEN 0 AND 100)
) STRICT;
--> statement-breakpoint
CREATE INDEX `pack_material` ON `pack` (`material_id`);--> statement-breakpoint
CREATE TABLE `recipe` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`quarter` text NOT NULL,
	`note` text NOT NULL,
	CONSTRAINT "recipe_quarter" CHECK("recipe"."quarter" IN ('spring', 'summer', 'autumn', 'winter'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `recipe_name_unique` ON `recipe` (`name`);--> statement-breakpoint
CREATE TABLE `recipe_line` (
	`id` text PRIMARY KEY NOT NULL,
	`recipe_id` text NOT NULL,
	`position` integer NOT NULL,
	`material_id` text NOT NULL,
	`role` text NOT NULL,
	`holding` text NOT NULL,
	`count` real NOT NULL,
	FOREIGN KEY (`recipe_id`) REFERENCES `recipe`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`material_id`) REFERENCES `material`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "recipe_line_role" CHECK("recipe_line"."role" IN ('thriller', 'filler', 'spiller', 'accent', 'mechanics')),
	CONSTRAINT "recipe_line_holding" CHECK("recipe_line"."holding" IN ('sold', 'lent', 'own')),
	CONSTRAINT "recipe_line_count" CHECK("recipe_line"."count" BETWEEN 0.001 AND 9999)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `recipe_line_position` ON `recipe_line` (`recipe_id`,`position`);--> statement-breakpoint
CREATE TABLE `stock` (
	`id` text PRIMARY KEY NOT NULL,
	`material_id` text NOT NULL,
	`client_id` text,
	`quantity` real NOT NULL,
	`uses_before` integer NOT NULL,
	FOREIGN KEY (`material_id`) REFERENCES `material`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "stock_quantity" CHECK("stock"."quantity" >= 0),
	CONSTRAINT "stock_uses" CHECK("stock"."uses_before" BETWEEN 0 AND 100)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `stock_of_client` ON `stock` (`material_id`,`client_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `stock_of_studio` ON `stock` (`material_id`) WHERE "stock"."client_id" IS NULL;--> statement-breakpoint
CREATE TABLE `supplier` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`lead_days` integer NOT NULL,
	`note` text NOT NULL,
	CONSTRAINT "supplier_lead" CHECK("supplier"."lead_days" BETWEEN 0 AND 365)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `supplier_name_unique` ON `supplier` (`name`);--> statement-breakpoint
CREATE TABLE `client` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`name` text NOT NULL,
	`net_days` integer NOT NULL,
	`exempt_certificate` text,
	`exempt_expires` text,
	`studio_note` text NOT NULL,
	`created_at` text NOT NULL,
	`archived_at` text,
	CONSTRAINT "client_kind" CHECK("client"."kind" IN ('business', 'household')),
	CONSTRAINT "client_net_days" CHECK("client"."net_days" IN (15, 30)),
	CONSTRAINT "client_exempt" CHECK(("client"."exempt_certificate" IS NULL) = ("client"."exempt_expires" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `contact` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`person_id` text NOT NULL,
	`may` text NOT NULL,
	`since` text NOT NULL,
	`ended_at` text,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "contact_may" CHECK("contact"."may" IN ('approve', 'look'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `contact_person` ON `contact` (`person_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `contact_once` ON `contact` (`client_id`,`person_id`);--> statement-breakpoint
CREATE TABLE `container` (
	`id` text PRIMARY KEY NOT NULL,
	`place_id` text NOT NULL,
	`name` text NOT NULL,
	`shape` text NOT NULL,
	`top_cm` real NOT NULL,
	`top_depth_cm` real,
	`bottom_cm` real NOT NULL,
	`bottom_depth_cm` real,
	`height_cm` real NOT NULL,
	`wall` text NOT NULL,
	`wall_cm` real NOT NULL,
	`headspace_cm` real NOT NULL,
	`soil_depth_cm` real,
	`has_liner` integer NOT NULL,
	`has_drain_hole` integer NOT NULL,
	`vessel_kg` real,
	`colour` text NOT NULL,
	`owner` text NOT NULL,
	`light` text NOT NULL,
	`is_windy` integer NOT NULL,
	`is_under_eave` integer NOT NULL,
	`has_road_salt` integer NOT NULL,
	`sill_to_glass_cm` real,
	`outlet_near` integer NOT NULL,
	`hose_near` integer NOT NULL,
	`waterer` text NOT NULL,
	`stands` text NOT NULL,
	`limited_weight` text NOT NULL,
	`walk_left_cm` real,
	`position` integer NOT NULL,
	`retired_at` text,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "container_shape" CHECK("container"."shape" IN ('round', 'square', 'rectangular', 'bowl', 'trough', 'window box', 'urn', 'column')),
	CONSTRAINT "container_wall" CHECK("container"."wall" IN ('metal', 'resin', 'wood', 'terracotta', 'cast stone')),
	CONSTRAINT "container_owner" CHECK("container"."owner" IN ('client', 'studio')),
	CONSTRAINT "container_light" CHECK("container"."light" IN ('sun', 'part', 'shade')),
	CONSTRAINT "container_waterer" CHECK("container"."waterer" IN ('client', 'studio', 'nobody')),
	CONSTRAINT "container_stands" CHECK("container"."stands" IN ('all round', 'against a wall', 'in a corner')),
	CONSTRAINT "container_limits" CHECK("container"."limited_weight" IN ('none', 'deck', 'balcony', 'roof', 'bracket', 'railing')),
	CONSTRAINT "container_top" CHECK("container"."top_cm" BETWEEN 5 AND 1000),
	CONSTRAINT "container_bottom" CHECK("container"."bottom_cm" BETWEEN 3 AND 1000),
	CONSTRAINT "container_height" CHECK("container"."height_cm" BETWEEN 5 AND 500),
	CONSTRAINT "container_headspace" CHECK("container"."headspace_cm" BETWEEN 0 AND 50),
	CONSTRAINT "container_wall_thickness" CHECK("container"."wall_cm" >= 0 AND "container"."wall_cm" * 2 < min("container"."top_cm", "container"."bottom_cm")),
	CONSTRAINT "container_floor" CHECK("container"."wall_cm" + "container"."headspace_cm" < "container"."height_cm"),
	CONSTRAINT "container_depths" CHECK(("container"."top_depth_cm" IS NULL) = ("container"."shape" IN ('round', 'bowl', 'urn')))
) STRICT;
--> statement-breakpoint
CREATE INDEX `container_place` ON `container` (`place_id`);--> statement-breakpoint
CREATE TABLE `place` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`name` text NOT NULL,
	`address` text NOT NULL,
	`tax_milli_percent` integer NOT NULL,
	`drive_minutes` real NOT NULL,
	`zone_cents` integer,
	`wall_kind` text NOT NULL,
	`wall_hex` text NOT NULL,
	`door_hex` text,
	`access_note` text NOT NULL,
	`position` integer NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "place_wall" CHECK("place"."wall_kind" IN ('clapboard', 'fieldstone', 'stucco', 'brick', 'shop glass')),
	CONSTRAINT "place_tax" CHECK("place"."tax_milli_percent" BETWEEN 0 AND 30000),
	CONSTRAINT "place_drive" CHECK("place"."drive_minutes" BETWEEN 0 AND 600),
	CONSTRAINT "place_zone" CHECK("place"."zone_cents" >= 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `place_client` ON `place` (`client_id`);--> statement-breakpoint
CREATE TABLE `site_colour` (
	`id` text PRIMARY KEY NOT NULL,
	`place_id` text NOT NULL,
	`name` text NOT NULL,
	`hex` text NOT NULL,
	`side` text NOT NULL,
	`position` integer NOT NULL,
	FOREIGN KEY (`place_id`) REFERENCES `place`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "site_colour_side" CHECK("site_colour"."side" IN ('inside', 'outside'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `site_colour_place` ON `site_colour` (`place_id`);--> statement-breakpoint
CREATE TABLE `once` (
	`key` text PRIMARY KEY NOT NULL,
	`actor` text NOT NULL,
	`at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `once_at` ON `once` (`at`);--> statement-breakpoint
CREATE TABLE `outbox` (
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
	CONSTRAINT "outbox_message" CHECK("outbox"."message" IN ('sign-in link', 'proposal published', 'reminder', 'change asked for', 'skipped', 'approved', 'approval received')),
	CONSTRAINT "outbox_one_end" CHECK("outbox"."sent_at" IS NULL OR "outbox"."dropped_at" IS NULL)
) STRICT;
--> statement-breakpoint
CREATE INDEX `outbox_due` ON `outbox` (`not_before`) WHERE "outbox"."sent_at" IS NULL AND "outbox"."dropped_at" IS NULL;--> statement-breakpoint
CREATE TABLE `person` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`email` text NOT NULL,
	`email_verified` integer,
	`image` text,
	`handle` text NOT NULL,
	`created_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `person_email_unique` ON `person` (`email`);--> statement-breakpoint
CREATE UNIQUE INDEX `person_handle_unique` ON `person` (`handle`);--> statement-breakpoint
CREATE TABLE `session` (
	`session_token` text PRIMARY KEY NOT NULL,
	`user_id` text NOT NULL,
	`expires` integer NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`user_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `session_of_person` ON `session` (`user_id`);--> statement-breakpoint
CREATE INDEX `session_expires` ON `session` (`expires`);--> statement-breakpoint
CREATE TABLE `set_up` (
	`id` integer PRIMARY KEY NOT NULL,
	`token_hash` text NOT NULL,
	`made_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `sign_in_token` (
	`identifier` text PRIMARY KEY NOT NULL,
	`token` text NOT NULL,
	`code_hash` text NOT NULL,
	`ask_hash` text NOT NULL,
	`tries_left` integer NOT NULL,
	`expires` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `sign_in_token_token_unique` ON `sign_in_token` (`token`);--> statement-breakpoint
CREATE TABLE `staff` (
	`person_id` text PRIMARY KEY NOT NULL,
	`role` text NOT NULL,
	`since` text NOT NULL,
	`ended_at` text,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "staff_role" CHECK("staff"."role" IN ('designer', 'helper'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `answer` (
	`id` text PRIMARY KEY NOT NULL,
	`reference` text NOT NULL,
	`revision_id` text NOT NULL,
	`revision_hash` text NOT NULL,
	`kind` text NOT NULL,
	`option` text,
	`extras` text NOT NULL,
	`left_out` text NOT NULL,
	`total_cents` integer,
	`words_hash` text,
	`by` text NOT NULL,
	`word` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`revision_id`) REFERENCES `revision`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "answer_kind" CHECK("answer"."kind" IN ('approval', 'change asked for', 'skip')),
	CONSTRAINT "answer_word" CHECK("answer"."word" IN ('client', 'studio')),
	CONSTRAINT "answer_approval" CHECK(("answer"."kind" = 'approval') = ("answer"."option" IS NOT NULL AND "answer"."total_cents" IS NOT NULL))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `answer_reference_unique` ON `answer` (`reference`);--> statement-breakpoint
CREATE UNIQUE INDEX `answer_revision_id_unique` ON `answer` (`revision_id`);--> statement-breakpoint
CREATE TABLE `draft` (
	`proposal_id` text PRIMARY KEY NOT NULL,
	`version` integer NOT NULL,
	`document` text NOT NULL,
	`updated_at` text NOT NULL,
	`updated_by` text NOT NULL,
	FOREIGN KEY (`proposal_id`) REFERENCES `proposal`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`updated_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "draft_version" CHECK("draft"."version" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `draft_material` (
	`proposal_id` text NOT NULL,
	`material_id` text NOT NULL,
	PRIMARY KEY(`proposal_id`, `material_id`),
	FOREIGN KEY (`proposal_id`) REFERENCES `proposal`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`material_id`) REFERENCES `material`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `draft_material_of` ON `draft_material` (`material_id`,`proposal_id`);--> statement-breakpoint
CREATE TABLE `proposal` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`season_id` text NOT NULL,
	`state` text NOT NULL,
	`revision_number` integer NOT NULL,
	`revision_hash` text,
	`answer_by` text,
	`published_at` text,
	`seen_at` text,
	`reminded_at` text,
	`answered_at` text,
	`lapse_noted_at` text,
	`palette` text NOT NULL,
	`palette_count` integer NOT NULL,
	`palette_hexes` text NOT NULL,
	`value_cents` integer,
	`margin_tenths` integer,
	`created_at` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`season_id`) REFERENCES `season`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "proposal_state" CHECK("proposal"."state" IN ('drafting', 'waiting for an answer', 'change asked for', 'approved', 'skipped', 'cancelled', 'installed', 'withdrawn')),
	CONSTRAINT "proposal_published" CHECK(("proposal"."revision_number" = 0) = ("proposal"."revision_hash" IS NULL)),
	CONSTRAINT "proposal_unpublished" CHECK("proposal"."revision_number" > 0 OR "proposal"."state" = 'drafting')
) STRICT;
--> statement-breakpoint
CREATE INDEX `proposal_season` ON `proposal` (`season_id`,`state`,`answer_by`);--> statement-breakpoint
CREATE UNIQUE INDEX `proposal_once` ON `proposal` (`client_id`,`season_id`);--> statement-breakpoint
CREATE TABLE `revision` (
	`id` text PRIMARY KEY NOT NULL,
	`proposal_id` text NOT NULL,
	`number` integer NOT NULL,
	`hash` text NOT NULL,
	`offer_hash` text NOT NULL,
	`costing_hash` text NOT NULL,
	`rates_version` integer NOT NULL,
	`answer_by` text NOT NULL,
	`published_at` text NOT NULL,
	`published_by` text NOT NULL,
	FOREIGN KEY (`proposal_id`) REFERENCES `proposal`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`rates_version`) REFERENCES `rates`(`version`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`published_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "revision_from_one" CHECK("revision"."number" >= 1)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `revision_hash_unique` ON `revision` (`hash`);--> statement-breakpoint
CREATE UNIQUE INDEX `revision_number` ON `revision` (`proposal_id`,`number`);--> statement-breakpoint
CREATE TABLE `erasure` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`at` text NOT NULL,
	`by` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `erasure_client` ON `erasure` (`client_id`);--> statement-breakpoint
CREATE TABLE `event` (
	`seq` integer PRIMARY KEY NOT NULL,
	`hash` text NOT NULL,
	`prev` text NOT NULL,
	`at` text NOT NULL,
	`actor` text NOT NULL,
	`act` text NOT NULL,
	`object` text NOT NULL,
	`client_id` text,
	`facts` text NOT NULL,
	`sealed` text,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `event_hash_unique` ON `event` (`hash`);--> statement-breakpoint
CREATE UNIQUE INDEX `event_prev_unique` ON `event` (`prev`);--> statement-breakpoint
CREATE INDEX `event_client` ON `event` (`client_id`,`seq`);--> statement-breakpoint
CREATE INDEX `event_object` ON `event` (`object`,`seq`);--> statement-breakpoint
CREATE TABLE `sealed_text` (
	`hash` text PRIMARY KEY NOT NULL,
	`client_id` text,
	`salt` blob NOT NULL,
	`body` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "sealed_text_salt" CHECK(length("sealed_text"."salt") = 16)
) STRICT;
--> statement-breakpoint
CREATE INDEX `sealed_text_client` ON `sealed_text` (`client_id`);--> statement-breakpoint
CREATE TABLE `rates` (
	`version` integer PRIMARY KEY NOT NULL,
	`document` text NOT NULL,
	`made_at` text NOT NULL,
	`made_by` text,
	FOREIGN KEY (`made_by`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `season` (
	`id` text PRIMARY KEY NOT NULL,
	`quarter` text NOT NULL,
	`year` integer NOT NULL,
	`window_from` text NOT NULL,
	`window_to` text NOT NULL,
	`answer_by` text NOT NULL,
	CONSTRAINT "season_quarter" CHECK("season"."quarter" IN ('spring', 'summer', 'autumn', 'winter')),
	CONSTRAINT "season_dates" CHECK("season"."answer_by" <= "season"."window_from" AND "season"."window_from" <= "season"."window_to")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `season_once` ON `season` (`quarter`,`year`);--> statement-breakpoint
CREATE TABLE `studio` (
	`id` integer PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`time_zone` text NOT NULL,
	`currency` text NOT NULL,
	`lengths` text NOT NULL,
	`created_at` text NOT NULL,
	CONSTRAINT "studio_one" CHECK("studio"."id" = 1),
	CONSTRAINT "studio_lengths" CHECK("studio"."lengths" IN ('in', 'cm'))
) STRICT;
