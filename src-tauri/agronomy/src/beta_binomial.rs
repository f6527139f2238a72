//! The Beta-binomial distribution: how many of n seeds come up that share an
//! uncertain π. statrs has none.

use crate::Outlook;

/// Above this all is scaled down, so that no term leaves the range of a float.
const LARGE: f64 = 1e200;

/// P(r) for r = 0, 1 … n.
///
/// By the ratio of one term to the next, scaled to sum to 1: logs of gammas
/// lose digits for large parameters.
pub(crate) fn chances(seeds: u32, Outlook { a, b }: Outlook) -> Vec<f64> {
    let n = f64::from(seeds);
    let mut terms = Vec::with_capacity(seeds as usize + 1);
    let mut term = 1.0;
    terms.push(term);
    for r in 0..seeds {
        let r = f64::from(r);
        term *= (n - r) / (r + 1.0) * ((a + r) / (b + n - r - 1.0));
        if term > LARGE {
            term /= LARGE;
            terms.iter_mut().for_each(|earlier| *earlier /= LARGE);
        }
        terms.push(term);
    }
    let sum: f64 = terms.iter().sum();
    terms.iter_mut().for_each(|term| *term /= sum);
    terms
}

/// P(X >= least) for `least` = 0, 1 … n + 1.
pub(crate) fn at_least(seeds: u32, outlook: Outlook) -> Vec<f64> {
    let mut sums = chances(seeds, outlook);
    sums.push(0.0);
    let mut sum = 0.0;
    for chance in sums.iter_mut().rev() {
        sum += *chance;
        *chance = f64::min(sum, 1.0);
    }
    sums
}

#[cfg(test)]
mod tests {
    use super::*;

    /// With a = b = 1 every number is as likely as any other.
    #[test]
    fn without_knowledge_all_numbers_are_alike() {
        let any = Outlook { a: 1.0, b: 1.0 };
        for chance in chances(4, any) {
            assert!((chance - 0.2).abs() < 1e-15);
        }
        assert!((at_least(4, any)[2] - 0.6).abs() < 1e-15);
        assert_eq!(at_least(4, any)[5], 0.0);
    }

    #[test]
    fn extremes_stay_in_range() {
        for (a, b) in [(1e-9, 1e9), (1e9, 1e-9), (1e-9, 1e-9), (1e9, 1e9)] {
            let found = chances(10_000, Outlook { a, b });
            let sum: f64 = found.iter().sum();
            assert!((sum - 1.0).abs() < 1e-9, "{a} {b}: {sum}");
        }
    }
}
