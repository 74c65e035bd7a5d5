-- Where a household is, in their words, beside its name: staff look for it by either.

ALTER TABLE household ADD COLUMN place TEXT NOT NULL DEFAULT '';
UPDATE household SET place = COALESCE((SELECT what::json ->> 'name' FROM fact WHERE household_id = household.id
    AND what LIKE '%"fact":"place"%' ORDER BY id DESC LIMIT 1), '') WHERE erased_at IS NULL;
