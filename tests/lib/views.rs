//! Every view that somebody can have.

use boughline::quantity::{Decimal, System, View};

pub(crate) const VIEWS: [View; 4] = [
    View { system: System::Si, decimal: Decimal::Point },
    View { system: System::Si, decimal: Decimal::Comma },
    View { system: System::Us, decimal: Decimal::Point },
    View { system: System::Us, decimal: Decimal::Comma },
];
