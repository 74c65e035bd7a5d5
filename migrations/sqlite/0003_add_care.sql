-- Who of the staff sees to a household's need, so that no two go and nobody thinks another went.

CREATE TABLE care (
    household_id BIGINT PRIMARY KEY,
    need         TEXT   NOT NULL,             -- the need it was taken for; another need asks anew
    staff        TEXT   NOT NULL,             -- name of who took it
    at           BIGINT NOT NULL,             -- ms UTC: taken
    done_at      BIGINT                       -- ms UTC: seen to
);
