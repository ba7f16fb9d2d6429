//! Records: structs that cross the boundary as plain objects.

/// Records that are written as plain objects, key by key.
///
/// serde's derive would do, but `serde-wasm-bindgen` keeps a table of the keys of derived structs, and a hash table's
/// code is a fiftieth of the module.
macro_rules! records {
    ($($(#[$about:meta])* $seen:vis struct $name:ident { $($(#[$what:meta])* $shown:vis $key:ident: $kind:ty,)* })*) => {$(
        $(#[$about])*
        #[derive(Debug, Clone, PartialEq)]
        $seen struct $name {
            $($(#[$what])* $shown $key: $kind,)*
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeMap;
                let mut map = serializer.serialize_map(None)?;
                $(map.serialize_entry(stringify!($key), &self.$key)?;)*
                map.end()
            }
        }
    )*};
}
pub(crate) use records;
