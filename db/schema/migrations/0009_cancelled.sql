ALTER TABLE `proposal` ADD `remains_cents` integer CONSTRAINT "proposal_remains" CHECK("remains_cents" IS NULL OR "remains_cents" >= 0);
