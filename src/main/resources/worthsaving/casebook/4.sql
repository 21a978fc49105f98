-- Version 4: a journal holds the whole of a teardown: steps opened, parts bought for an item, items mended. SQLite cannot
-- alter a CHECK, so the table is built anew. A photo may belong to an entry.
CREATE TABLE entry_of_version_4 (
    id INTEGER PRIMARY KEY,
    case_id TEXT NOT NULL REFERENCES cases,
    at TEXT NOT NULL,
    stage TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('NOTE', 'DECISION', 'FINDING', 'HOURS', 'RECEIPT', 'OPENED', 'PART', 'MENDED')),
    text TEXT NOT NULL,
    amount REAL,
    currency TEXT,
    subject TEXT,
    sight TEXT,
    witness TEXT,
    planned REAL
) STRICT;

INSERT INTO entry_of_version_4 SELECT id, case_id, at, stage, kind, text, amount, currency, subject, sight, witness, planned
    FROM entry;

DROP TABLE entry;

ALTER TABLE entry_of_version_4 RENAME TO entry;

CREATE INDEX entry_of_case ON entry (case_id);

ALTER TABLE photo ADD COLUMN entry INTEGER REFERENCES entry;

CREATE INDEX photo_of_entry ON photo (entry);
