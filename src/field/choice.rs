//! Things to choose from.

/// A thing to choose, by id and by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Named {
    /// Its id, which never changes.
    pub id: &'static str,
    /// What people call it.
    pub noun: &'static str,
    /// What it means, in a sentence.
    pub hint: &'static str,
}

/// An enum whose variants are a field's options: one table of ids, names and hints.
macro_rules! choice {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $id:literal, $noun:literal, $hint:literal;)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum $name {
            $($(#[$variant_doc])* $variant,)*
        }

        impl $name {
            /// Every variant, in the order of [`Self::OPTIONS`].
            pub const ALL: &[Self] = &[$(Self::$variant),*];
            /// The options as people see them.
            pub const OPTIONS: &[$crate::field::Named] =
                &[$($crate::field::Named { id: $id, noun: $noun, hint: $crate::told::told($hint) }),*];

            /// The option that stands for this.
            #[must_use]
            #[expect(clippy::indexing_slicing, reason = "as many options as variants, in the same order")]
            pub const fn named(self) -> &'static $crate::field::Named {
                &Self::OPTIONS[self as usize]
            }
        }

        impl $crate::field::Value for $name {
            fn of(reading: $crate::field::Reading) -> Option<Self> {
                match reading {
                    $crate::field::Reading::Choice(place) => Self::ALL.get(place).copied(),
                    $crate::field::Reading::Si(_) | $crate::field::Reading::Text(_) => None,
                }
            }

            fn into_said(self) -> $crate::field::Said {
                $crate::field::Said::Text(self.named().id.to_owned())
            }
        }
    };
}
pub(crate) use choice;
