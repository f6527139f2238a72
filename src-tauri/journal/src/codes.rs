//! Every code there is, so that others can test that each has words.

/// Refused at the door: `refused-<code>`.
pub const REFUSALS: &[&str] = &[
    "nothing_to_write",
    "nothing_to_undo",
    "amendment_by_hand",
    "entry_too_large",
    "reading_out_of_range",
    "min_above_max",
    "before_the_sowing",
    "in_the_future",
    "zone_unknown",
    "name_empty",
    "name_too_long",
    "text_empty",
    "text_too_long",
    "tray_without_cells",
    "tray_too_large",
    "tray_would_lose_cells",
    "cells_none",
    "cells_outside",
    "cells_taken",
    "code_taken",
    "place_unknown",
    "packet_unknown",
    "tray_unknown",
    "sowing_unknown",
    "batch_unknown",
    "entry_unknown",
    "entry_not_understood",
    "id_taken",
    "place_retired",
    "tray_emptied",
    "tray_occupied",
    "already_ended",
    "something_came_up",
    "number_zero",
    "number_too_large",
    "parts_none",
    "more_than_there",
    "more_than_seeds",
    "latitude_out_of_range",
    "month_day_unknown",
    "germination_out_of_range",
    "year_out_of_range",
    "depth_out_of_range",
    "photo_malformed",
    "felt_nothing",
    "ends_before_it_starts",
    "job_malformed",
    "correction_of_another_kind",
    "correction_does_not_add_up",
];

/// Asked first: `asks-<code>`.
pub const QUESTIONS: &[&str] = &[
    "above_the_seeds",
    "above_the_batch",
    "far_back",
    "count_falls",
    "reading_differs",
    "others_build_on_it",
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
];

/// All codes, each with the prefix of its message key.
pub const ALL_CODES: &[(&str, &[&str])] = &[
    ("refused", REFUSALS),
    ("asks", QUESTIONS),
    ("error", ERRORS),
];
