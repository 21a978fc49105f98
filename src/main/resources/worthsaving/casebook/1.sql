-- Version 1. Never edit a version that has been in use: write the next one.
CREATE TABLE cases (
    id TEXT PRIMARY KEY,
    seq INTEGER NOT NULL,
    listing TEXT NOT NULL CHECK (json_valid(listing)),
    added TEXT NOT NULL
) STRICT;

CREATE TABLE observation (
    case_id TEXT NOT NULL REFERENCES cases,
    seq INTEGER NOT NULL,
    subject TEXT NOT NULL,
    sight TEXT NOT NULL,
    witness TEXT NOT NULL,
    PRIMARY KEY (case_id, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE entry (
    id INTEGER PRIMARY KEY,
    case_id TEXT NOT NULL REFERENCES cases,
    at TEXT NOT NULL,
    stage TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('NOTE', 'DECISION', 'FINDING', 'HOURS', 'RECEIPT')),
    text TEXT NOT NULL,
    amount REAL,
    currency TEXT,
    subject TEXT,
    sight TEXT,
    witness TEXT
) STRICT;

CREATE INDEX entry_of_case ON entry (case_id);

CREATE TABLE forecast (
    id INTEGER PRIMARY KEY,
    case_id TEXT NOT NULL REFERENCES cases,
    made TEXT NOT NULL,
    catalogue TEXT NOT NULL,
    model TEXT NOT NULL,
    program TEXT NOT NULL,
    seed INTEGER NOT NULL,
    currency TEXT NOT NULL,
    spreads TEXT NOT NULL CHECK (json_valid(spreads)),
    items TEXT NOT NULL CHECK (json_valid(items))
) STRICT;

CREATE INDEX forecast_of_case ON forecast (case_id);

CREATE TABLE actual (
    case_id TEXT PRIMARY KEY REFERENCES cases,
    bought TEXT NOT NULL,
    sold TEXT NOT NULL,
    currency TEXT NOT NULL,
    paid REAL NOT NULL,
    sale REAL NOT NULL,
    cost REAL NOT NULL,
    hours REAL NOT NULL
) STRICT;

CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT;

-- The log of edits is only ever added to: undoing is an edit too.
CREATE TABLE edit (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    at TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('EDIT', 'UNDO', 'REDO')),
    of INTEGER REFERENCES edit,
    label TEXT NOT NULL
) STRICT;

CREATE TABLE change (
    edit INTEGER NOT NULL REFERENCES edit,
    seq INTEGER NOT NULL,
    tab TEXT NOT NULL,
    key TEXT NOT NULL CHECK (json_valid(key)),
    before TEXT CHECK (json_valid(before)),
    after TEXT CHECK (json_valid(after)),
    PRIMARY KEY (edit, seq)
) STRICT, WITHOUT ROWID;
