-- Log-ins of staff. With lease and staff, a table that belongs to no household.

CREATE TABLE session (
    id_hash  TEXT   PRIMARY KEY,              -- SHA-256 of the cookie's id
    data     TEXT   NOT NULL,                 -- JSON: who is logged in
    until_at BIGINT NOT NULL                  -- ms UTC
);
CREATE INDEX session_until ON session (until_at);
