-- What staff found at a household: the check of a new tank, or a look at a fault.

CREATE TABLE visit (
    id           INTEGER PRIMARY KEY,
    household_id BIGINT NOT NULL,
    at           BIGINT NOT NULL,             -- ms UTC: when it was written down
    day          BIGINT NOT NULL,             -- the day of the visit, as facts count days
    kind         TEXT   NOT NULL,             -- new_tank, fault
    staff        TEXT   NOT NULL,             -- name of who was there
    found        TEXT   NOT NULL,             -- JSON: check to good or bad; what was not looked at is left out
    note         TEXT   NOT NULL
);
CREATE INDEX visit_household ON visit (household_id, day);
