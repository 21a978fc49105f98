-- Version 2: photos, by reference.
CREATE TABLE photo (
    id INTEGER PRIMARY KEY,
    case_id TEXT NOT NULL REFERENCES cases,
    at TEXT NOT NULL,
    stage TEXT NOT NULL,
    path TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    caption TEXT NOT NULL
) STRICT;

CREATE INDEX photo_of_case ON photo (case_id);
