-- How a field worker's talk by text stands: the PIN's hash, when it was last given, wrong tries, what MORE goes on with.

ALTER TABLE staff ADD COLUMN line TEXT NOT NULL DEFAULT '{}';
