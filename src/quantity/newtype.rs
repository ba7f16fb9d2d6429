//! What every quantity's newtype is made of.

/// The newtype of one quantity: a value in SI that only adds to its own kind.
macro_rules! newtype {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $crate::quantity::Quantity for $name {
            const DIMENSION: $crate::quantity::Dimension = $crate::quantity::Dimension::$name;

            fn from_si(si: f64) -> Self {
                Self(si)
            }

            fn si(self) -> f64 {
                self.0
            }
        }

        impl std::ops::Add for $name {
            type Output = Self;

            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl std::ops::Sub for $name {
            type Output = Self;

            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl std::ops::Mul<f64> for $name {
            type Output = Self;

            fn mul(self, times: f64) -> Self {
                Self(self.0 * times)
            }
        }

        impl std::ops::Div<f64> for $name {
            type Output = Self;

            fn div(self, by: f64) -> Self {
                Self(self.0 / by)
            }
        }
    };
}

/// The ways into a newtype and out of it, a pair a unit.
macro_rules! counted_in {
    ($name:ident: $($unit:ident, $many:ident, $in_many:ident;)+) => {
        impl $name {
            $(
                #[doc = concat!("So many [", stringify!($many), "](crate::quantity::", stringify!($unit), ").")]
                #[must_use]
                pub const fn $many(number: f64) -> Self {
                    Self($unit.si(number))
                }

                #[doc = concat!("How many [", stringify!($many), "](crate::quantity::", stringify!($unit), ") it is.")]
                #[must_use]
                pub const fn $in_many(self) -> f64 {
                    $unit.count(self.0)
                }
            )+
        }
    };
}
pub(super) use {counted_in, newtype};
