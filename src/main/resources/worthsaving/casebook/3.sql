-- Version 3: what learning needs. Hours by the book and money expected, which items had failed, days to sell.
ALTER TABLE entry ADD COLUMN planned REAL;

ALTER TABLE actual ADD COLUMN days_to_sell REAL;

ALTER TABLE actual ADD COLUMN items TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(items));
