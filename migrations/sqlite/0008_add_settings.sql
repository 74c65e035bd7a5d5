-- What a programme sets for all its households, and the words of its districts.

CREATE TABLE setting (
    name  TEXT PRIMARY KEY,                   -- keep_texts_days, or emergency: and an ISO 3166 code
    value TEXT NOT NULL                       -- days, or the number to call
);

CREATE TABLE feed_word (
    id      INTEGER PRIMARY KEY,
    word    TEXT   NOT NULL,                  -- as people of the district write it
    feed    TEXT   NOT NULL,                  -- what it means
    country TEXT   NOT NULL,                  -- ISO 3166 code
    place   TEXT   NOT NULL,                  -- only there; empty: in the whole country
    staff   TEXT   NOT NULL,                  -- who taught it
    at      BIGINT NOT NULL                   -- ms UTC
);

-- For a day's traffic by gateway, and for texts that are kept long enough.
CREATE INDEX inbox_received ON inbox (received_at);
CREATE INDEX outbox_created ON outbox (created_at);
