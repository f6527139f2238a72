-- Habits, drafts and the identity, as texts under keys.
CREATE TABLE kept (
  key TEXT PRIMARY KEY,
  text TEXT NOT NULL
) STRICT;

-- Notices that were delivered; none is delivered twice.
CREATE TABLE delivered (
  key TEXT PRIMARY KEY,
  -- When first: milliseconds since 1970 UTC.
  at_ms INTEGER NOT NULL
) STRICT;
