//! A field of values of one type, and the types that fields hold.

use super::{Reading, Row, Said};
use crate::quantity::Quantity;
use crate::told::told;
use std::marker::PhantomData;

/// A field of values of one type.
#[derive(Debug)]
pub struct Field<T: 'static> {
    /// Its row.
    pub row: Row,
    of: PhantomData<fn() -> T>,
}

impl<T> Field<T> {
    /// The field with this row.
    #[must_use]
    pub const fn new(mut row: Row) -> Self {
        row.hint = told(row.hint);
        row.why = told(row.why);
        Self { row, of: PhantomData }
    }
}

/// A type that fields hold.
pub trait Value: Sized {
    /// The value that a checked reading stands for.
    fn of(reading: Reading) -> Option<Self>;

    /// How it is said in a draft.
    fn into_said(self) -> Said;
}

impl<Q: Quantity> Value for Q {
    fn of(reading: Reading) -> Option<Self> {
        match reading {
            Reading::Si(si) => Some(Q::from_si(si)),
            Reading::Choice(_) | Reading::Text(_) => None,
        }
    }

    fn into_said(self) -> Said {
        Said::Number(self.si())
    }
}
