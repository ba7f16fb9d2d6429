//! How long somebody may hang still.

/// By when somebody who hangs without moving has to be on the ground, in seconds; no time is safe, and some faint sooner.
///
/// # Source
/// 95 % of people lasted at least 7 min hanging still in a chest attachment, 11 min in one at the back; the shortest was 4
/// (Turner and others 2008).
pub const RESCUE_CLOCK: f64 = 420.0;
