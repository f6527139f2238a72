# American English: only what is said otherwise than in en-GB.

refused-frost-nothing-reckoned = There is nothing to keep: neither spring nor fall had enough years with a frost. Bring a longer record.
