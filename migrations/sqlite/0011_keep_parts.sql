-- Parts of long texts that wait for the others. Belongs to no household yet: of the moment, as leases are.

CREATE TABLE part (
    gateway     TEXT   NOT NULL,
    sender      TEXT   NOT NULL,
    recipient   TEXT   NOT NULL,               -- ours; empty if not said
    reference   BIGINT NOT NULL,               -- the network's, of the whole text
    total       BIGINT NOT NULL,               -- parts of the whole
    number      BIGINT NOT NULL,               -- of this one, from 1
    text        TEXT   NOT NULL,
    received_at BIGINT NOT NULL,               -- ms UTC
    PRIMARY KEY (gateway, sender, recipient, reference, total, number)
);
