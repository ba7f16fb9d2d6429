//! What is always the same of a caution.

use crate::source::Source;

/// What is always the same of a caution.
pub(super) struct Known {
    pub(super) id: &'static str,
    /// Whether it can kill.
    pub(super) grave: bool,
    pub(super) sources: &'static [Source],
    pub(super) template: &'static str,
}
