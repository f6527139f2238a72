//! Every code there is, so that others can test that each has words. Above a
//! code stand the arguments that come with it.

/// Refused at the door: `refused-<code>`.
pub const REFUSALS: &[&str] = &[
    "nothing_to_write",
    "nothing_to_undo",
    "amendment_by_hand",
    "entry_too_large",
    // temperature, lowest, highest (°C)
    "reading_out_of_range",
    // lowest, highest (°C)
    "min_above_max",
    // day: when it began
    "before_the_sowing",
    // day
    "in_the_future",
    // zone
    "zone_unknown",
    "name_empty",
    // most: characters
    "name_too_long",
    "text_empty",
    // most: characters
    "text_too_long",
    "tray_without_cells",
    // most: cells
    "tray_too_large",
    // code
    "tray_would_lose_cells",
    "cells_none",
    // code, cells: how many the tray has
    "cells_outside",
    // code, cells: how many are taken
    "cells_taken",
    // code
    "code_taken",
    "place_unknown",
    "packet_unknown",
    "tray_unknown",
    "sowing_unknown",
    "batch_unknown",
    "test_unknown",
    "item_unknown",
    "plan_unknown",
    "reservation_unknown",
    // day
    "plan_too_far_ahead",
    // day
    "plan_day_is_past",
    "entry_unknown",
    "entry_not_understood",
    "id_taken",
    // name
    "place_retired",
    // code
    "tray_emptied",
    // code
    "tray_occupied",
    "already_ended",
    // up
    "something_came_up",
    "number_zero",
    // most
    "number_too_large",
    "parts_none",
    // there
    "more_than_there",
    // seeds: how many are not up
    "more_than_seeds",
    // most: degrees north or south
    "latitude_out_of_range",
    "month_day_unknown",
    "germination_out_of_range",
    // most
    "days_out_of_range",
    "saved_from_f1",
    "test_closed",
    // seeds
    "more_than_tested",
    // day: when it was started
    "before_the_test",
    // first, last
    "year_out_of_range",
    // most: mm
    "depth_out_of_range",
    // most: hours
    "soak_out_of_range",
    // day
    "night_out_of_range",
    // least, most: °C
    "night_temperature_out_of_range",
    "frost_nothing_reckoned",
    "frost_out_of_range",
    "not_away",
    // name
    "heat_not_off",
    "photo_malformed",
    "felt_nothing",
    "ends_before_it_starts",
    "job_malformed",
    "correction_of_another_kind",
    "correction_does_not_add_up",
];

/// Asked first: `asks-<code>`.
pub const QUESTIONS: &[&str] = &[
    // up, seeds
    "above_the_seeds",
    // up, before
    "above_the_batch",
    // day, days
    "far_back",
    // lost, there
    "count_falls",
    // before, now
    "test_count_falls",
    // place, temperature, before (°C)
    "reading_differs",
    // reserved, raised: plants there and seeds that may still come up
    "more_reserved_than_raised",
    // reserved, rest: how many are left then
    "others_were_promised",
    // entries: how many go with it
    "others_build_on_it",
    // day: when it ended
    "after_the_end",
];

/// Failures: `error-<code>`.
pub const ERRORS: &[&str] = &[
    "store_failed",
    "disk_full",
    "journal_read_only",
    "journal_busy",
    "journal_damaged",
    "journal_newer",
    "not_a_journal",
    "file_failed",
    "cancelled",
    "backup_unknown",
    "not_an_archive",
    "archive_newer",
    "archive_damaged",
    "archive_too_large",
    "passphrase_wanted",
    "passphrase_wrong",
    "passphrase_empty",
];

/// What a check finds: `finding-<code>`.
pub const FINDINGS: &[&str] = &[
    // fault: as the database says it
    "file_damaged",
    // first, last: numbers on this copy
    "entries_unread",
    // entry: its number on this copy
    "entry_unreadable",
    // entry
    "entry_altered",
    // entry, columns
    "entry_misfiled",
    // device, first, last: numbers on that device
    "entries_missing",
    // table, rows: how many
    "projection_differs",
    // photo: its SHA-256
    "photo_missing",
    // photo
    "photo_altered",
];

/// All codes, each with the prefix of its message key.
pub const ALL_CODES: &[(&str, &[&str])] = &[
    ("refused", REFUSALS),
    ("asks", QUESTIONS),
    ("error", ERRORS),
    ("finding", FINDINGS),
];
