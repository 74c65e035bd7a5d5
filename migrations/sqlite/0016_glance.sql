-- What lists show of a household, in a narrow row of its own: the talk is long, and the twin longer. The column of
-- `twin` that held what was foreseen stays until no node writes it any more.

CREATE TABLE glance (
    household_id INTEGER PRIMARY KEY,
    version      BIGINT NOT NULL,             -- of the household's row it was taken from; another: read the talk itself
    standing     TEXT   NOT NULL,             -- JSON: what lists need of the talk
    foreseen     TEXT                         -- JSON: when the nightly pass looked ahead, and the advice
);
INSERT INTO glance (household_id, version, standing, foreseen)
    SELECT household_id, 0, '{}', foreseen FROM twin WHERE foreseen IS NOT NULL;
