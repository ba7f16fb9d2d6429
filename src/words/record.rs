//! Records: structs that cross the boundary as plain objects.

use serde::ser::{Serialize, SerializeMap, SerializeSeq, Serializer};

/// What a record comes to.
///
/// One type crosses the boundary, and is serialised, instead of thirty: code for each would be a tenth of the module.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Plain {
    Nothing,
    Truth(bool),
    Number(f64),
    Text(String),
    List(Vec<Plain>),
    Object(Vec<(&'static str, Plain)>),
}

impl Serialize for Plain {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Nothing => serializer.serialize_none(),
            Self::Truth(truth) => serializer.serialize_bool(*truth),
            Self::Number(number) => serializer.serialize_f64(*number),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(list) => {
                let mut seq = serializer.serialize_seq(Some(list.len()))?;
                for item in list {
                    seq.serialize_element(item)?;
                }
                seq.end()
            }
            Self::Object(entries) => {
                let mut map = serializer.serialize_map(Some(entries.len()))?;
                for (key, value) in entries {
                    map.serialize_entry(key, value)?;
                }
                map.end()
            }
        }
    }
}

/// What can be written plainly.
pub(crate) trait IsPlain {
    fn plain(&self) -> Plain;
}

impl IsPlain for bool {
    fn plain(&self) -> Plain {
        Plain::Truth(*self)
    }
}

impl IsPlain for f64 {
    fn plain(&self) -> Plain {
        Plain::Number(*self)
    }
}

impl IsPlain for u32 {
    fn plain(&self) -> Plain {
        Plain::Number(f64::from(*self))
    }
}

impl IsPlain for usize {
    fn plain(&self) -> Plain {
        Plain::Number(*self as f64)
    }
}

impl IsPlain for &str {
    fn plain(&self) -> Plain {
        Plain::Text((*self).to_owned())
    }
}

impl IsPlain for String {
    fn plain(&self) -> Plain {
        Plain::Text(self.clone())
    }
}

impl<T: IsPlain> IsPlain for Option<T> {
    fn plain(&self) -> Plain {
        self.as_ref().map_or(Plain::Nothing, T::plain)
    }
}

impl<T: IsPlain> IsPlain for Vec<T> {
    fn plain(&self) -> Plain {
        let mut list = Vec::new();
        for item in self {
            list.push(item.plain());
        }
        Plain::List(list)
    }
}

/// Structs that are written as plain objects, key by key.
macro_rules! records {
    ($($(#[$about:meta])* $seen:vis struct $name:ident { $($(#[$what:meta])* $shown:vis $key:ident: $kind:ty,)* })*) => {$(
        $(#[$about])*
        #[derive(Debug, Clone, PartialEq)]
        $seen struct $name {
            $($(#[$what])* $shown $key: $kind,)*
        }

        impl $crate::words::IsPlain for $name {
            fn plain(&self) -> $crate::words::Plain {
                $crate::words::Plain::Object(vec![$((stringify!($key), $crate::words::IsPlain::plain(&self.$key)),)*])
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serde::Serialize::serialize(&$crate::words::IsPlain::plain(self), serializer)
            }
        }
    )*};
}
pub(crate) use records;
