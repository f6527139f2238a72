//! Which backups are kept.

use chrono::{DateTime, Datelike, Duration, Utc};
use std::collections::BTreeSet;

/// All of the last two days are kept.
const ALL_DAYS: i64 = 2;
/// Then the last of each of so many days that have one, …
const DAILY: usize = 12;
/// … of so many weeks, …
const WEEKLY: usize = 10;
/// … and of so many months.
const MONTHLY: usize = 9;

/// The period a moment lies in.
type Period = fn(DateTime<Utc>) -> (i32, u32);

/// Which of these are kept, by their place. Days, weeks (ISO 8601) and months
/// are those of UTC. What lies in the future is kept: it was the clock that
/// was wrong.
pub(super) fn kept(times: &[DateTime<Utc>], now: DateTime<Utc>) -> BTreeSet<usize> {
    let mut newest_first: Vec<usize> = (0..times.len()).collect();
    let time = |n: &usize| times.get(*n).copied().unwrap_or(now);
    newest_first.sort_by_key(|n| std::cmp::Reverse(time(n)));
    let old = now - Duration::days(ALL_DAYS);
    let (fresh, mut rest): (Vec<_>, Vec<_>) =
        newest_first.into_iter().partition(|n| time(n) >= old);
    let mut kept: BTreeSet<usize> = fresh.into_iter().collect();
    let rules: [(usize, Period); 3] = [
        (DAILY, |at| (at.year(), at.ordinal())),
        (WEEKLY, |at| (at.iso_week().year(), at.iso_week().week())),
        (MONTHLY, |at| (at.year(), at.month())),
    ];
    for (most, period) in rules {
        let mut periods = BTreeSet::new();
        let mut later = Vec::new();
        for n in rest {
            let of = period(time(&n));
            if periods.contains(&of) {
                continue;
            }
            if periods.len() == most {
                later.push(n);
            } else {
                periods.insert(of);
                kept.insert(n);
            }
        }
        rest = later;
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::TimeZone;

    fn at(text: &str) -> DateTime<Utc> {
        let naive = chrono::NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M").unwrap();
        Utc.from_utc_datetime(&naive)
    }

    /// What is kept of these at 2026-06-30 12:00, a Tuesday.
    #[track_caller]
    fn keeps(times: &[&str], want: &[&str]) {
        let all: Vec<_> = times.iter().map(|text| at(text)).collect();
        let kept = kept(&all, at("2026-06-30 12:00"));
        let kept: Vec<_> = kept.into_iter().map(|n| times[n]).collect();
        assert_eq!(kept, want);
    }

    #[test]
    fn all_of_two_days_and_of_the_future() {
        let all = [
            "2026-06-28 12:00",
            "2026-06-28 12:01",
            "2026-06-30 11:59",
            "2031-01-01 00:00",
            "2031-01-01 00:01",
        ];
        keeps(&all, &all);
    }

    #[test]
    fn then_the_last_of_a_day() {
        keeps(
            &[
                "2026-06-28 11:58",
                "2026-06-28 11:59",
                "2026-06-27 23:59",
                "2026-06-27 00:00",
            ],
            &["2026-06-28 11:59", "2026-06-27 23:59"],
        );
    }

    #[test]
    fn then_the_last_of_a_week_and_of_a_month() {
        let days: Vec<String> = (1..=27)
            .rev()
            .map(|d| format!("2026-06-{d:02} 08:00"))
            .collect();
        let mut all: Vec<&str> = days.iter().map(String::as_str).collect();
        all.extend(["2025-12-20 08:00", "2025-11-05 08:00"]);
        // 12 days back to the 16th; the week of the 15th, then the Sundays
        // 14 and 7; the older two are of weeks of their own.
        let mut want = all[..12].to_vec();
        want.extend(["2026-06-15 08:00", "2026-06-14 08:00", "2026-06-07 08:00"]);
        want.extend(["2025-12-20 08:00", "2025-11-05 08:00"]);
        keeps(&all, &want);
    }

    #[test]
    fn thinned_at_each_backup_for_three_years_the_set_is_full_and_reaches_back() {
        let start = at("2023-01-01 03:00");
        let mut now = start;
        let mut held: Vec<DateTime<Utc>> = Vec::new();
        while now < at("2026-01-01 00:00") {
            held.push(now);
            let keep = kept(&held, now);
            held = keep.into_iter().map(|n| held[n]).collect();
            now += Duration::hours(6);
        }
        // Two days of four and the one on the edge, then 12, 10 and 9.
        assert_eq!(held.len(), 9 + 12 + 10 + 9);
        let age = (now - held.iter().min().copied().unwrap()).num_days();
        // Two days, 12 days, 9 to 10 weeks and 8 months: the last of the ninth.
        assert!((300..340).contains(&age), "{age} days");
    }
}
