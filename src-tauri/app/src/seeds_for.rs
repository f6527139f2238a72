//! How many seeds to sow for the plants wanted.

use plumule_agronomy::Outlook;

/// Beyond this the advice is to buy better seed.
const MOST: u32 = 10_000;

/// For 1, 2, … `most_wanted` plants the smallest n with
/// P(X >= wanted) >= `confidence`, X ~ BetaBinomial(n, a, b); none above
/// 10,000 seeds. X counts seeds that come up, so a cluster of seeds is one.
pub(crate) fn seeds_for(outlook: Outlook, most_wanted: u32, confidence: f64) -> Vec<Option<u32>> {
    let mut n = 0;
    let mut ln_none = 0.0;
    (1..=most_wanted)
        .map(|wanted| {
            while n <= MOST {
                if n >= wanted && fewer(outlook, n, ln_none, wanted) <= 1.0 - confidence + 1e-12 {
                    return Some(n);
                }
                // P(none of n + 1) = P(none of n) (b + n)/(a + b + n).
                let more = f64::from(n);
                ln_none += ((outlook.b + more) / (outlook.a + outlook.b + more)).ln();
                n += 1;
            }
            None
        })
        .collect()
}

/// P(X < wanted) by the ratio of one term to the next, in logs, since the
/// first may be smaller than any number.
fn fewer(outlook: Outlook, n: u32, ln_none: f64, wanted: u32) -> f64 {
    let Outlook { a, b } = outlook;
    let seeds = f64::from(n);
    let mut ln_term = ln_none;
    let mut sum = 0.0;
    for up in 0..wanted {
        let k = f64::from(up);
        sum += ln_term.exp();
        ln_term += ((seeds - k) / (k + 1.0) * (k + a) / (seeds - k - 1.0 + b)).ln();
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;

    /// With a = b = 1 every number of n comes up as likely as any other
    /// (the discrete uniform special case of the beta-binomial), so that
    /// P(X >= w) = (n + 1 - w)/(n + 1).
    #[test]
    fn uniform_is_counted_by_hand() {
        let even = Outlook { a: 1.0, b: 1.0 };
        let found = seeds_for(even, 3, 0.9);
        // 9/10 at n = 9; 18/20 at n = 19; 27/30 at n = 29.
        assert_eq!(found, [Some(9), Some(19), Some(29)]);
    }

    /// A share that is as good as certain is a binomial: of seeds that come up
    /// 8 in 10, 3 plants with 0.9 want 5 (P(X >= 3) = 0.94208) and not 4
    /// (0.8192), by the binomial table.
    #[test]
    fn near_certainty_is_binomial() {
        let sure = Outlook { a: 8e8, b: 2e8 };
        assert_eq!(seeds_for(sure, 3, 0.9).last(), Some(&Some(5)));
    }

    #[test]
    fn dead_seed_has_no_answer() {
        let dead = Outlook { a: 0.12, b: 1200.0 };
        assert_eq!(seeds_for(dead, 1, 0.9), [None]);
    }
}
