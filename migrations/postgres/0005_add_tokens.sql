-- Tokens of programmes that read by machine. Belongs to no household.

CREATE TABLE token (
    name       TEXT   PRIMARY KEY,            -- whose it is
    hash       TEXT   NOT NULL UNIQUE,        -- SHA-256 of the token
    scope      TEXT   NOT NULL,               -- read, or people: names too
    created_at BIGINT NOT NULL                -- ms UTC
);
