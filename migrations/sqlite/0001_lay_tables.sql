-- Everything hangs on the household: every table but lease and staff carries its number, so that the store can be
-- split by it. Times end in _at: milliseconds since 1970-01-01 UTC. Days: days since 1970-01-01 where they live.

CREATE TABLE household (
    id         INTEGER PRIMARY KEY,           -- number of the household, as staff say it
    version    BIGINT NOT NULL,               -- grows by one with every change, so that a stale turn is refused
    name       TEXT   NOT NULL,               -- what staff call them; empty until somebody says
    lang       TEXT   NOT NULL,               -- ISO 639-1 code of the language we write to them
    country    TEXT,                          -- ISO 3166 code
    time_zone  TEXT   NOT NULL,               -- IANA name
    since_at   BIGINT NOT NULL,               -- ms UTC: first text
    seed       BIGINT NOT NULL,               -- of the twin's chance
    staff_id   BIGINT,                        -- field worker who looks after them
    next_fact  BIGINT NOT NULL,               -- number the next fact gets
    talk       TEXT   NOT NULL,               -- JSON: where the conversation stands
    erased_at  BIGINT                         -- ms UTC: when they asked to be forgotten
);
CREATE INDEX household_staff ON household (staff_id);

CREATE TABLE phone (
    number       TEXT   PRIMARY KEY,          -- as the gateway writes it
    household_id BIGINT NOT NULL,
    gateway      TEXT   NOT NULL,             -- by which they last wrote
    since_at     BIGINT NOT NULL              -- ms UTC
) WITHOUT ROWID;
CREATE INDEX phone_household ON phone (household_id);

CREATE TABLE stopped (
    number       TEXT   PRIMARY KEY,          -- said stop and not start since
    household_id BIGINT NOT NULL,             -- 0: of no household
    at           BIGINT NOT NULL              -- ms UTC
) WITHOUT ROWID;

CREATE TABLE fact (
    household_id BIGINT NOT NULL,
    id           BIGINT NOT NULL,             -- counts from 1 within the household
    day          BIGINT NOT NULL,             -- the day it is about
    told_at      BIGINT NOT NULL,             -- seconds (not ms) since 1970-01-01 UTC, as the twin folds it
    what         TEXT   NOT NULL,             -- JSON of the fact
    PRIMARY KEY (household_id, id)
) WITHOUT ROWID;
CREATE INDEX fact_day ON fact (household_id, day);

CREATE TABLE twin (
    household_id INTEGER PRIMARY KEY,
    day          BIGINT NOT NULL,             -- it stands at this day's dawn
    bytes        BLOB   NOT NULL
);

CREATE TABLE checkpoint (
    household_id BIGINT NOT NULL,
    day          BIGINT NOT NULL,             -- the twin as it stood at this day's dawn
    bytes        BLOB   NOT NULL,
    PRIMARY KEY (household_id, day)
);

CREATE TABLE staff (
    id            INTEGER PRIMARY KEY,
    name          TEXT   NOT NULL UNIQUE,
    phone         TEXT   UNIQUE,              -- number they text from
    gateway       TEXT,                       -- by which we text them
    lang          TEXT   NOT NULL,            -- ISO 639-1
    role          TEXT   NOT NULL,            -- field, or lead: may see whole numbers
    password_hash TEXT                        -- argon2 string; none: no log-in to the pages
);

CREATE TABLE inbox (
    id           INTEGER PRIMARY KEY,         -- in order of arrival
    gateway      TEXT   NOT NULL,
    sender       TEXT   NOT NULL,
    gateway_id   TEXT   NOT NULL,             -- the gateway's own id
    recipient    TEXT,
    text         TEXT   NOT NULL,
    sent_at      BIGINT NOT NULL,             -- ms UTC
    received_at  BIGINT NOT NULL,             -- ms UTC
    household_id BIGINT NOT NULL,             -- 0: not known yet
    lane         TEXT   NOT NULL,             -- texts of one lane are worked one at a time: h:HOUSEHOLD or n:NUMBER
    state        TEXT   NOT NULL,             -- open, answered, skipped, failed
    why          TEXT,                        -- why it was skipped or failed
    alarmed      BIGINT NOT NULL,             -- 1: an alarm was answered on receipt
    tries        BIGINT NOT NULL,             -- turns that failed so far
    next_at      BIGINT NOT NULL,             -- ms UTC: not worked before this
    done_at      BIGINT,                      -- ms UTC
    UNIQUE (gateway, sender, gateway_id)
);
CREATE INDEX inbox_waiting ON inbox (next_at, id) WHERE state = 'open';
CREATE INDEX inbox_lane ON inbox (lane, sent_at, id) WHERE state = 'open';
CREATE INDEX inbox_recent ON inbox (sender, received_at);
CREATE INDEX inbox_household ON inbox (household_id, received_at) WHERE household_id <> 0;

CREATE TABLE lease (
    lane     TEXT   PRIMARY KEY,
    owner    TEXT   NOT NULL,                 -- the node that works it
    until_at BIGINT NOT NULL                  -- ms UTC: free for others after this; moved on by heartbeats
) WITHOUT ROWID;

CREATE TABLE outbox (
    seq          INTEGER PRIMARY KEY,         -- order in which texts were decided
    id           TEXT   NOT NULL UNIQUE,      -- stable over retries
    household_id BIGINT NOT NULL,             -- 0: of no household
    inbox_id     BIGINT,                      -- the text it answers
    gateway      TEXT   NOT NULL,
    recipient    TEXT   NOT NULL,
    text         TEXT   NOT NULL,
    kind         TEXT   NOT NULL,
    advice       TEXT,                        -- JSON
    urgent       BIGINT NOT NULL,             -- 1: goes before all that is not
    state        TEXT   NOT NULL,             -- queued, sent, delivered, failed, refused, expired
    why          TEXT,                        -- what the gateway said, shortened
    not_before   BIGINT NOT NULL,             -- ms UTC: quiet hours
    next_at      BIGINT NOT NULL,             -- ms UTC: next try
    expires_at   BIGINT NOT NULL,             -- ms UTC: stale after this, not sent any more
    tries        BIGINT NOT NULL,             -- sends begun
    owner        TEXT,                        -- the node that sends it now
    until_at     BIGINT NOT NULL,             -- ms UTC: free for others after this
    wire_id      TEXT,                        -- the gateway's id of it, for its receipts
    created_at   BIGINT NOT NULL,             -- ms UTC
    settled_at   BIGINT                       -- ms UTC: when the state last changed
);
CREATE INDEX outbox_waiting ON outbox (gateway, next_at, seq) WHERE state = 'queued';
CREATE INDEX outbox_recipient ON outbox (recipient, seq) WHERE state = 'queued';
CREATE INDEX outbox_wire ON outbox (gateway, wire_id) WHERE wire_id IS NOT NULL;
CREATE INDEX outbox_household ON outbox (household_id, created_at);

CREATE TABLE due (
    household_id BIGINT NOT NULL,
    kind         TEXT   NOT NULL,             -- what the clock is to wake us for
    at           BIGINT NOT NULL,             -- ms UTC
    tries        BIGINT NOT NULL,             -- wakings that failed so far
    PRIMARY KEY (household_id, kind)
) WITHOUT ROWID;
CREATE INDEX due_at ON due (at);

CREATE TABLE alarm (
    id              INTEGER PRIMARY KEY,
    household_id    BIGINT NOT NULL,
    at              BIGINT NOT NULL,          -- ms UTC
    signs           TEXT   NOT NULL,          -- JSON list of sign ids
    said            TEXT   NOT NULL,          -- in their words
    acknowledged_by BIGINT,                   -- staff
    acknowledged_at BIGINT                    -- ms UTC
);
CREATE INDEX alarm_open ON alarm (household_id, at) WHERE acknowledged_at IS NULL;

CREATE TABLE audit (
    id           INTEGER PRIMARY KEY,
    household_id BIGINT NOT NULL,             -- 0: of no household
    at           BIGINT NOT NULL,             -- ms UTC
    what         TEXT   NOT NULL              -- who did what, for whom
);
CREATE INDEX audit_household ON audit (household_id, at);
