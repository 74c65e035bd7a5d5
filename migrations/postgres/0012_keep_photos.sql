-- What staff photographed on a visit. Erased with the household.

CREATE TABLE photo (
    id           BIGSERIAL PRIMARY KEY,
    household_id BIGINT NOT NULL,
    visit_id     BIGINT NOT NULL,             -- the visit it was taken on
    at           BIGINT NOT NULL,             -- ms UTC: when it was kept
    whole        BYTEA  NOT NULL,             -- JPEG of our own making: no place, device or name of the maker in it
    small        BYTEA  NOT NULL              -- the same for a list: JPEG
);
CREATE INDEX photo_household ON photo (household_id, visit_id);
