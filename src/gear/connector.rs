//! Connectors and pulleys: what they must bear.

use super::Minimum;
use crate::field::{Field, Kind, Row, choice};
use crate::quantity::{Force, KILONEWTON};
use crate::source::{EN_12275, PULLEY_STANDARD};

choice! {
    /// A class of connector.
    Connector {
        /// Class B.
        Basic = "basic", "basic, class B", "The usual carabiner.";
        /// Class H.
        Hms = "hms", "pear-shaped, class H", "A wide carabiner, for hitches that brake.";
        /// Class K.
        Klettersteig = "via-ferrata", "via ferrata, class K", "A carabiner that clips wires and rungs.";
        /// Class X.
        Oval = "oval", "oval, class X", "An oval carabiner, which keeps hitches and pulleys centred.";
    }
}

/// The connectors of the rig.
pub static CONNECTOR: Field<Connector> = Field::new(Row {
    id: "connector",
    noun: "connectors",
    hint: "The letter in a ring on the back says the class.",
    kind: Kind::Choice { options: Connector::OPTIONS, likely: Some("oval") },
    why: "Of the classes people hang on, the oval one bears least.",
    private: false,
});

impl Connector {
    /// What it bears along its back with the gate shut, with the gate open, and across.
    ///
    /// # Source
    /// EN 12275:2013, as a test house sums it up.
    #[must_use]
    pub const fn minimums(self) -> [Minimum; 3] {
        let [shut, open, across] = match self {
            Self::Basic => [20.0, 7.0, 7.0],
            Self::Hms => [20.0, 6.0, 7.0],
            Self::Klettersteig => [25.0, 8.0, 7.0],
            Self::Oval => [18.0, 5.0, 7.0],
        };
        [kilonewtons(shut), kilonewtons(open), kilonewtons(across)]
    }
}

const fn kilonewtons(force: f64) -> Minimum {
    Minimum { force: Force::newtons(KILONEWTON.si(force)), source: EN_12275 }
}

/// What a pulley must bear (from memory): the label says what yours does.
pub const PULLEY_MINIMUM: Minimum = Minimum { force: Force::newtons(KILONEWTON.si(12.0)), source: PULLEY_STANDARD };

#[cfg(test)]
mod tests {
    use super::*;

    /// EN 12275:2013 as a test house sums it up: class, then kN along with the gate shut, along with it open, and across.
    #[test]
    fn each_class_has_the_minimums_that_are_published() {
        const ROWS: [(&str, [f64; 3]); 4] =
            [("B", [20.0, 7.0, 7.0]), ("H", [20.0, 6.0, 7.0]), ("K", [25.0, 8.0, 7.0]), ("X", [18.0, 5.0, 7.0])];
        for (connector, (class, kilonewtons)) in Connector::ALL.iter().zip(ROWS) {
            assert!(connector.named().noun.ends_with(&format!("class {class}")), "{connector:?}");
            let found = connector.minimums().map(|minimum| minimum.force.in_newtons() / 1e3);
            assert!(found.iter().zip(kilonewtons).all(|(found, printed)| (found - printed).abs() < 1e-9), "{found:?}");
        }
    }

    #[test]
    fn a_gate_that_stands_open_costs_most_of_the_strength() {
        for connector in Connector::ALL {
            let [shut, open, across] = connector.minimums().map(|minimum| minimum.force.in_newtons());
            assert!(open < 0.5 * shut && across < 0.5 * shut, "{connector:?}");
        }
    }
}
