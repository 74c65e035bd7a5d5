-- Alarms are told to a programme's own computer, once for each alarm.

ALTER TABLE alarm ADD COLUMN called_at BIGINT;                   -- ms UTC: taken there
ALTER TABLE alarm ADD COLUMN calls BIGINT NOT NULL DEFAULT 0;    -- tries begun
ALTER TABLE alarm ADD COLUMN call_next_at BIGINT NOT NULL DEFAULT 0; -- ms UTC: not tried before this
CREATE INDEX alarm_uncalled ON alarm (at) WHERE called_at IS NULL;
