-- What staff photographed on a visit. Erased with the household.

CREATE TABLE photo (
    id           INTEGER PRIMARY KEY,
    household_id BIGINT NOT NULL,
    visit_id     BIGINT NOT NULL,             -- the visit it was taken on
    at           BIGINT NOT NULL,             -- ms UTC: when it was kept
    whole        BLOB   NOT NULL,             -- JPEG of our own making: no place, device or name of the maker in it
    small        BLOB   NOT NULL              -- the same for a list: JPEG
);
CREATE INDEX photo_household ON photo (household_id, visit_id);
