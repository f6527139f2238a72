-- What the entries add up to: thrown away and made again at any time.

-- Numbers about the projections themselves.
CREATE TABLE about (
  -- 'projection': the version these tables were made by.
  name TEXT PRIMARY KEY,
  number INTEGER NOT NULL
) STRICT;

-- Which entries amend which root; the greatest of a root holds.
CREATE TABLE amendments (
  -- Id of the root entry, which may not be here yet.
  root BLOB NOT NULL,
  lamport INTEGER NOT NULL,
  device BLOB NOT NULL,
  seq INTEGER NOT NULL,
  -- Breaks the tie of a cloned identity the same way everywhere.
  hash BLOB NOT NULL,
  entry INTEGER NOT NULL REFERENCES entries (nr),
  PRIMARY KEY (root, lamport, device, seq, hash)
) STRICT, WITHOUT ROWID;

-- Which root entries, amended or not, are about which subject.
CREATE TABLE touches (
  -- Its kind as a byte, then its id.
  subject BLOB NOT NULL,
  -- Of the entries, unchecked here: there are a hundred thousand at once.
  entry INTEGER NOT NULL,
  -- 1 if the subject's state depends on it; 0 if it is only in its timeline.
  weighs INTEGER NOT NULL,
  -- When it happened, after amendments: milliseconds since 1970 UTC.
  at_ms INTEGER NOT NULL,
  -- A fold reads those that weigh, however many others there are; a timeline
  -- the latest of both.
  PRIMARY KEY (subject, weighs, at_ms, entry)
) STRICT, WITHOUT ROWID;

-- The state of each subject.
CREATE TABLE states (
  subject BLOB PRIMARY KEY,
  -- 'garden', 'place', 'packet', 'tray', 'sowing', 'batch', 'test' or 'item'.
  kind TEXT NOT NULL,
  -- 1 while it is in use.
  alive INTEGER NOT NULL,
  -- When the last thing that made its state happened: milliseconds since 1970 UTC.
  last_ms INTEGER NOT NULL,
  -- The state as JSON.
  state TEXT NOT NULL,
  -- Of a tray: its code, as two are compared.
  code TEXT
) STRICT;

-- Opening the round reads these and nothing of the past.
-- A code that may be taken is looked for among those of living trays alone.
CREATE INDEX states_living ON states (kind, last_ms, code) WHERE alive = 1;
CREATE INDEX states_past ON states (kind, last_ms) WHERE alive = 0;

-- What other packets of a crop taught, and which may be sown in place of one.
CREATE INDEX states_crop ON states (json_extract(state, '$.described.crop'), alive, last_ms)
WHERE kind = 'packet';

-- Readings that hold, one row each.
CREATE TABLE readings (
  entry INTEGER PRIMARY KEY REFERENCES entries (nr),
  -- The subject that it is.
  place BLOB NOT NULL,
  -- When: milliseconds since 1970 UTC.
  at_ms INTEGER NOT NULL,
  -- The reading as JSON.
  reading TEXT NOT NULL
) STRICT;

CREATE INDEX readings_time ON readings (at_ms);
CREATE INDEX readings_place ON readings (place, at_ms);

-- Jobs put off or dismissed that hold, one row each.
CREATE TABLE jobs (
  entry INTEGER PRIMARY KEY REFERENCES entries (nr),
  -- What the job is about.
  subject BLOB NOT NULL,
  lamport INTEGER NOT NULL,
  device BLOB NOT NULL,
  seq INTEGER NOT NULL,
  -- The content as JSON.
  answer TEXT NOT NULL
) STRICT;

CREATE INDEX jobs_subject ON jobs (subject);

-- Finds the entries that took in a photo without going through all.
CREATE INDEX IF NOT EXISTS entries_photos ON entries (kind) WHERE kind = 'photo_taken';

-- What is looked for by its words is read from these alone: label codes with
-- their trays, notes with their days, plants without seed. Entries of other
-- kinds cost nothing by it.
CREATE INDEX IF NOT EXISTS entries_codes ON entries (
  kind,
  iif(json_valid(line), line ->> '$.what.code', NULL),
  iif(json_valid(line), line ->> '$.what.tray', NULL)
) WHERE kind = 'tray_described';
CREATE INDEX IF NOT EXISTS entries_notes ON entries (
  kind,
  iif(json_valid(line), line ->> '$.what.text', NULL),
  iif(json_valid(line), line ->> '$.happened.local', NULL),
  id
) WHERE kind IN ('noted', 'explained');
CREATE INDEX IF NOT EXISTS entries_started ON entries (kind) WHERE kind = 'batch_started';
