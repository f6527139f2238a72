//! The tree of dependencies as `cargo tree` prints it.

use std::collections::BTreeSet;

use crate::house::House;

/// What one package depends on, development left out.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Tree {
    /// Named in its own manifest.
    pub direct: BTreeSet<String>,
    /// Those and all that they bring.
    pub all: BTreeSet<String>,
}

impl Tree {
    /// Asks cargo about a package, for every platform; what `closed` packages
    /// bring is left out.
    ///
    /// # Errors
    /// What cargo complained.
    pub fn of(house: &House, package: &str, closed: &[&str]) -> Result<Self, String> {
        let text = house
            .cargo(["tree", "--locked", "-p", package, "--target", "all"])
            .args([
                "-e",
                "normal,no-proc-macro",
                "--prefix",
                "depth",
                "--no-dedupe",
            ])
            .text()?;
        Self::read(&text, closed)
    }

    /// Reads lines such as `2serde v1.0.0 (*)`: depth, name, version.
    ///
    /// # Errors
    /// The line that was not understood.
    pub fn read(text: &str, closed: &[&str]) -> Result<Self, String> {
        let mut tree = Self::default();
        let mut within = None;
        for line in text.lines().filter(|line| !line.trim().is_empty()) {
            let name_at = line.find(|c: char| !c.is_ascii_digit());
            let (depth, rest) = line.split_at(name_at.unwrap_or(0));
            let name = rest.split_whitespace().next();
            let (Ok(depth), Some(name)) = (depth.parse::<u32>(), name) else {
                return Err(format!("cargo tree printed a line not understood: {line}"));
            };
            if within.is_some_and(|closed| depth > closed) {
                continue;
            }
            within = closed.contains(&name).then_some(depth);
            if depth == 1 {
                tree.direct.insert(name.to_owned());
            }
            if depth >= 1 {
                tree.all.insert(name.to_owned());
            }
        }
        Ok(tree)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn depth_tells_direct_from_brought() {
        let tree = Tree::read(
            "0a v0.1.0 (/x/a)\n1b v1.0.0\n2c v2.0.0\n1c v2.0.0 (*)\n\n",
            &[],
        )
        .unwrap();
        assert_eq!(tree.direct, BTreeSet::from(["b".into(), "c".into()]));
        assert_eq!(tree.all, BTreeSet::from(["b".into(), "c".into()]));
        let tree = Tree::read("0a v0.1.0\n1b v1.0.0\n2c v2.0.0\n", &[]).unwrap();
        assert!(!tree.direct.contains("c") && tree.all.contains("c"));
    }

    #[test]
    fn what_a_closed_one_brings_is_left_out() {
        let tree = Tree::read("0a v1\n1b v1\n2c v1\n3d v1\n1e v1\n2d v1\n", &["b"]).unwrap();
        let all: Vec<&str> = tree.all.iter().map(String::as_str).collect();
        assert_eq!(all, ["b", "d", "e"]);
    }

    #[test]
    fn an_unknown_line_is_no_empty_tree() {
        assert!(Tree::read("├── b v1.0.0", &[]).is_err());
        assert!(Tree::read("1", &[]).is_err());
    }
}
