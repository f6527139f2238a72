//! Words made to fit into a space: smaller, on more lines, cut short.

/// A line of text and the size of its letters.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Line {
    pub text: String,
    pub size: f32,
}

/// A space for words; lengths in one unit, whichever.
#[derive(Clone, Copy, Debug)]
pub(super) struct Space {
    pub width: f32,
    pub height: f32,
    /// The largest and the smallest size of letters.
    pub sizes: (f32, f32),
    /// The most lines.
    pub lines: usize,
}

/// From one line's foot to the next, as a share of the letters' size.
pub(super) const LEADING: f32 = 1.15;
/// Sizes are tried in steps of so much.
const STEP: f32 = 0.94;
const MORE: &str = "…";

/// The words in the largest letters in which they fit, broken at blanks; if
/// they do not in the smallest, cut short. `width` is that of a text, as a
/// share of its letters' size.
pub(super) fn fit(words: &str, space: Space, width: &dyn Fn(&str) -> f32) -> Vec<Line> {
    let words = words.split_whitespace().collect::<Vec<_>>();
    if words.is_empty() || space.width <= 0.0 || space.height <= 0.0 {
        return Vec::new();
    }
    let (largest, smallest) = space.sizes;
    let mut size = largest.min(space.height / LEADING);
    let smallest = smallest.min(size);
    loop {
        let room = ((space.height / (size * LEADING)) as usize).clamp(1, space.lines.max(1));
        let lines = broken(&words, space.width / size, width);
        let all_fit = lines.iter().all(|line| width(line) * size <= space.width);
        if lines.len() <= room && all_fit {
            return sized(lines, size);
        }
        if size <= smallest {
            return sized(cut(lines, room, space.width / size, width), size);
        }
        size = (size * STEP).max(smallest);
    }
}

fn sized(lines: Vec<String>, size: f32) -> Vec<Line> {
    let lines = lines.into_iter();
    lines.map(|text| Line { text, size }).collect()
}

/// Broken at blanks into lines that are no wider, but for single words.
fn broken(words: &[&str], most: f32, width: &dyn Fn(&str) -> f32) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words {
        if let Some(last) = lines.last_mut() {
            let longer = format!("{last} {word}");
            if width(&longer) <= most {
                *last = longer;
                continue;
            }
        }
        lines.push((*word).to_owned());
    }
    lines
}

/// At most so many lines, each cut short where it is too wide.
fn cut(lines: Vec<String>, room: usize, most: f32, width: &dyn Fn(&str) -> f32) -> Vec<String> {
    let more = lines.len() > room;
    let mut kept: Vec<String> = lines.into_iter().take(room).collect();
    if more && let Some(last) = kept.last_mut() {
        last.push_str(MORE);
    }
    for line in &mut kept {
        while width(line) > most && line.chars().count() > 1 {
            *line = line.trim_end_matches(MORE).trim_end().to_owned();
            line.pop();
            line.push_str(MORE);
            if line == MORE {
                break;
            }
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Every letter half as wide as it is high.
    fn half(text: &str) -> f32 {
        text.chars().count() as f32 * 0.5
    }

    fn space(width: f32, height: f32, lines: usize) -> Space {
        Space {
            width,
            height,
            sizes: (10.0, 4.0),
            lines,
        }
    }

    fn texts(lines: &[Line]) -> Vec<&str> {
        lines.iter().map(|line| line.text.as_str()).collect()
    }

    #[test]
    fn short_words_are_large() {
        let lines = fit("Leek", space(100.0, 30.0, 2), &half);
        assert_eq!(texts(&lines), ["Leek"]);
        assert_eq!(lines[0].size, 10.0);
    }

    #[test]
    fn long_ones_wrap_before_they_shrink() {
        let lines = fit("Tomato Amber Lantern", space(60.0, 30.0, 2), &half);
        assert_eq!(texts(&lines), ["Tomato Amber", "Lantern"]);
        assert_eq!(lines[0].size, 10.0);
        let lines = fit("Tomato Amber Lantern", space(60.0, 11.5, 2), &half);
        assert_eq!(texts(&lines), ["Tomato Amber Lantern"]);
        assert!(lines[0].size < 6.0);
    }

    #[test]
    fn what_cannot_be_made_small_enough_is_cut_short() {
        let lines = fit("Chrysanthemum coronarium", space(12.0, 10.0, 1), &half);
        assert_eq!(texts(&lines), ["Chrys…"]);
        assert!(fit("  ", space(12.0, 10.0, 1), &half).is_empty());
    }

    proptest! {
        #[test]
        fn nothing_ever_reaches_out(
            words in "\\PC{0,80}",
            width in 6.0..200.0_f32,
            height in 5.0..60.0_f32,
            lines in 1..4_usize,
        ) {
            let fitted = fit(&words, space(width, height, lines), &half);
            prop_assert!(fitted.len() <= lines);
            let high: f32 = fitted.iter().map(|line| line.size * LEADING).sum();
            prop_assert!(high <= height + 0.01);
            for line in &fitted {
                prop_assert!(half(&line.text) * line.size <= width + 0.01, "{line:?}");
            }
        }
    }
}
