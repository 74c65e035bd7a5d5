-- The nightly pass looks for twins that stand before a day.

CREATE INDEX twin_day ON twin (day, household_id);
