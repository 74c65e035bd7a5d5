//! Closed lists of ids that are written the same in texts, facts, files and tables: one macro, both ways.

/// Declares an enum whose variants are known to the outside by fixed ids.
///
/// Gives `ALL`, `id()`, `from_id()`, `Display`, and serde as the id string.
#[macro_export]
macro_rules! ids {
    ($(#[$meta:meta])* $name:ident { $($(#[$vmeta:meta])* $variant:ident = $id:literal),+ $(,)? }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($(#[$vmeta])* $variant),+ }

        impl $name {
            /// Every one, in the order declared.
            pub const ALL: &'static [$name] = &[$($name::$variant),+];

            /// The id as it stands in facts and files.
            pub const fn id(self) -> &'static str {
                match self { $($name::$variant => $id),+ }
            }

            /// The one with this id, if there is one.
            pub fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some($name::$variant),)+ _ => None }
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result { f.write_str(self.id()) }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, s: S) -> Result<S::Ok, S::Error> { s.serialize_str(self.id()) }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
                let id = <std::borrow::Cow<'de, str>>::deserialize(d)?;
                Self::from_id(&id).ok_or_else(|| {
                    serde::de::Error::custom(format!("`{id}` is not a known {}", stringify!($name)))
                })
            }
        }
    };
}
