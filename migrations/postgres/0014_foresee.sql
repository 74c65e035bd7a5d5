-- What the nightly pass worked out for a household that did not text, so that lists need not.

ALTER TABLE twin ADD COLUMN foreseen TEXT; -- JSON: when, and the advice
