-- One word of staff to many families: its texts stand in the outbox under its number.

CREATE TABLE broadcast (
    id         BIGSERIAL PRIMARY KEY,
    key        TEXT   NOT NULL UNIQUE,        -- of the form it came from: sent twice, it is one
    at         BIGINT NOT NULL,               -- ms UTC
    staff      TEXT   NOT NULL,               -- who sent it
    text       TEXT   NOT NULL,               -- their words
    audience   TEXT   NOT NULL,               -- to whom, in words
    stopped_at BIGINT                         -- ms UTC
);

ALTER TABLE outbox ADD COLUMN broadcast_id BIGINT;
CREATE INDEX outbox_broadcast ON outbox (broadcast_id, state) WHERE broadcast_id IS NOT NULL;
