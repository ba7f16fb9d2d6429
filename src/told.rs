//! Texts that forms and lists show, and nothing reckons with.

/// The text; in the module as shipped, which is built with `--cfg boughline_terse`, nothing.
///
/// The npm package holds these texts once, as text, where they weigh less, and adds them to what the module says.
pub(crate) const fn told(text: &'static str) -> &'static str {
    if cfg!(boughline_terse) { "" } else { text }
}
