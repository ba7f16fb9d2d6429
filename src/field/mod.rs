//! What a field's row is: what may be said, within which limits, and why.

mod choice;
mod limits;
mod row;
mod said;
mod spread;
mod value;

pub use choice::Named;
pub(crate) use choice::choice;
pub use limits::Limits;
pub use row::{Form, Kind, Row};
pub use said::{Reading, Refusal, Said};
pub use spread::Spread;
pub use value::{Field, Value};
