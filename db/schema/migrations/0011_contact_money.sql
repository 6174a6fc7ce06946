ALTER TABLE `contact` ADD COLUMN `sees_money` integer DEFAULT false NOT NULL CONSTRAINT "contact_sees_money" CHECK(`sees_money` IN (0, 1));
