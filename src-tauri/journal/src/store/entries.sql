-- The truth: entries are only ever added, never changed or removed.
CREATE TABLE entries (
  -- Number on this copy, in order of arrival; means nothing elsewhere.
  nr INTEGER PRIMARY KEY AUTOINCREMENT,
  -- SHA-256 of the line: an entry's identity when journals are merged.
  hash BLOB NOT NULL UNIQUE CHECK (length(hash) = 32),
  -- UUIDv7 by which other entries name it.
  id BLOB NOT NULL CHECK (length(id) = 16),
  -- Id of the first entry of the act it was written in.
  act BLOB NOT NULL CHECK (length(act) = 16),
  -- Device that wrote it.
  device BLOB NOT NULL CHECK (length(device) = 16),
  -- Number on that device, from 1. Not unique: a cloned identity may have
  -- written two, and both are kept.
  seq INTEGER NOT NULL,
  -- Logical clock: orders edits.
  lamport INTEGER NOT NULL,
  -- Kind, as in the line.
  kind TEXT NOT NULL,
  -- The canonical line, byte for byte as it was written. All other columns
  -- are extracted from it.
  line TEXT NOT NULL
) STRICT;

CREATE INDEX entries_id ON entries (id);
CREATE INDEX entries_act ON entries (act);
CREATE INDEX entries_device ON entries (device, seq);
CREATE INDEX entries_lamport ON entries (lamport);
