-- Facts lie by the year they are about: a text touches the year it speaks of, and a year long past can be moved or
-- taken off whole. What lies outside the years named has a part of its own.

ALTER TABLE fact RENAME TO fact_whole;
ALTER INDEX fact_pkey RENAME TO fact_whole_pkey;
ALTER INDEX fact_day RENAME TO fact_whole_day;

CREATE TABLE fact (
    household_id BIGINT NOT NULL,
    id           BIGINT NOT NULL,             -- counts from 1 within the household
    day          BIGINT NOT NULL,             -- the day it is about
    told_at      BIGINT NOT NULL,             -- seconds (not ms) since 1970-01-01 UTC, as the twin folds it
    what         TEXT   NOT NULL,             -- JSON of the fact
    PRIMARY KEY (household_id, id, day)
) PARTITION BY RANGE (day);
CREATE INDEX fact_day ON fact (household_id, day);

CREATE TABLE fact_before PARTITION OF fact
    FOR VALUES FROM (MINVALUE) TO (DATE '2026-01-01' - DATE '1970-01-01');
DO $$ BEGIN
    FOR year IN 2026..2045 LOOP
        EXECUTE format('CREATE TABLE fact_%s PARTITION OF fact FOR VALUES FROM (%s) TO (%s)', year,
            make_date(year, 1, 1) - DATE '1970-01-01', make_date(year + 1, 1, 1) - DATE '1970-01-01');
    END LOOP;
END $$;
CREATE TABLE fact_after PARTITION OF fact
    FOR VALUES FROM (DATE '2046-01-01' - DATE '1970-01-01') TO (MAXVALUE);

INSERT INTO fact SELECT household_id, id, day, told_at, what FROM fact_whole;
DROP TABLE fact_whole;
