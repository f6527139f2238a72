//! Stories told on the real app, by what is on its screen. Each says at its
//! head why it is told. Run by `cargo xtask test`, or by hand after
//! `cargo build -p plumule --features test-hooks`.

#![cfg(test)]

mod access;
mod access_rare;
mod bench;
mod crash;
mod demo;
mod frost;
mod growing;
mod keeping;
mod keys;
mod late;
mod later;
mod main_job;
mod notice;
mod photos;
mod plans;
#[expect(dead_code, reason = "the pictures use more of it")]
mod real;
mod refused;
mod search;
mod seed;
mod settings;
mod stay;
mod undo;
