//! Species of trees, and how strong their green wood is in bending.

use crate::field::{Field, Kind, Row, choice};
use crate::quantity::{INCH, POUND_FORCE};
use crate::source::{ASTM_GREEN, LAVERS, Source, WOOD_HANDBOOK, WOOD_MEMORY};

/// A species a line: its id, its name, the mean strength of its green clear wood in megapascals, the standard deviation
/// where one is published, and the source.
macro_rules! species {
    ($($variant:ident = $id:literal, $noun:literal, $mean:literal, $deviation:expr, $source:ident;)*) => {
        choice! {
            /// A species of tree.
            Species {
                $(#[doc = concat!("The ", $noun, ".")] $variant = $id, $noun, "";)*
                /// The baldcypress.
                Baldcypress = "baldcypress", "baldcypress", "";
                /// The black cottonwood.
                BlackCottonwood = "black-cottonwood", "black cottonwood", "";
            }
        }

        /// What one table says of each species; the others stand in [`IN_PSI`].
        const TABLE: &[(Species, Green)] =
            &[$((Species::$variant, Green { mean: $mean * 1e6, deviation: megapascals($deviation), source: $source }),)*];
    };
}

/// The bending strength of green clear wood: the modulus of rupture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Green {
    /// The mean, in pascals.
    pub mean: f64,
    /// The standard deviation, in pascals, where one is published.
    pub deviation: Option<f64>,
    /// Where it comes from.
    pub source: Source,
}

/// The standard deviation of clear wood's bending strength over its mean, where none of the species is published.
///
/// # Source
/// Wood Handbook, table 5-6 (quoted): 16 %.
pub const VARIATION: f64 = 0.16;

/// The species of the tree.
pub static SPECIES: Field<Species> = Field::new(Row {
    id: "species",
    noun: "species",
    hint: "If yours is not listed, its strength is not known here: ask an arborist.",
    kind: Kind::Choice { options: Species::OPTIONS, likely: None },
    why: "Strengths of green wood differ threefold.",
    private: false,
});

/// What green wood bears over what is published for the same wood at 12 % moisture.
///
/// # Source
/// Computed from 38 species of the Wood Handbook: 0.48 to 0.76, median 0.59; the cautious end is taken.
pub const GREEN_OVER_DRY: f64 = 0.50;

impl Green {
    /// The mean less two standard deviations, in pascals: one piece of clear wood in some forty bears less.
    #[must_use]
    pub fn low(self) -> f64 {
        self.mean - 2.0 * self.deviation.unwrap_or(VARIATION * self.mean)
    }
}

const fn megapascals(deviation: Option<f64>) -> Option<f64> {
    match deviation {
        Some(deviation) => Some(deviation * 1e6),
        None => None,
    }
}

/// A pound-force on a square inch, in pascals.
const PSI: f64 = POUND_FORCE.si(1.0) / (INCH.si(1.0) * INCH.si(1.0));

/// Means and standard deviations in pounds-force a square inch.
const IN_PSI: &[(Species, f64, f64)] = &[
    (Species::WesternHemlock, 6_637.0, 1_088.0),
    (Species::EasternHemlock, 6_420.0, 1_027.0),
    (Species::SlashPine, 8_692.0, 1_127.0),
    (Species::Baldcypress, 6_640.0, 1_062.0),
    (Species::WhiteFir, 5_854.0, 949.0),
    (Species::GrandFir, 5_839.0, 680.0),
    (Species::LodgepolePine, 5_490.0, 878.0),
    (Species::BlackCottonwood, 4_890.0, 951.0),
];

impl Species {
    /// Everything published of its green wood.
    #[must_use]
    pub fn published(self) -> Vec<Green> {
        let mut published = Vec::new();
        for (species, green) in TABLE {
            if *species == self {
                published.push(*green);
            }
        }
        for (species, mean, deviation) in IN_PSI {
            if *species == self {
                published.push(Green { mean: mean * PSI, deviation: Some(deviation * PSI), source: ASTM_GREEN });
            }
        }
        published
    }

    /// The strength to reckon with, in pascals, and where it comes from: of what is published, the lowest mean less two
    /// standard deviations.
    ///
    /// # Guarantees
    /// Clear wood only: a living limb has knots, taper, decay and unions, so this is an upper bound.
    ///
    /// # Example
    /// ```
    /// use boughline::tree::Species;
    ///
    /// let (strength, _) = Species::NorthernRedOak.low().unwrap();
    /// assert_eq!((strength / 1e5).round(), 388.0); // 0.68 of 57 MPa
    /// ```
    #[must_use]
    pub fn low(self) -> Option<(f64, Source)> {
        let mut lowest: Option<(f64, Source)> = None;
        for green in self.published() {
            let low = green.low();
            if lowest.is_none_or(|(known, _)| low < known) {
                lowest = Some((low, green.source));
            }
        }
        lowest
    }
}

/// The strength to reckon with for a species that is not listed, in pascals, from its published one at 12 % moisture.
#[must_use]
pub fn low_of_dry(at_12_percent: f64) -> f64 {
    GREEN_OVER_DRY * at_12_percent * (1.0 - 2.0 * VARIATION)
}

species! {
    WhiteAsh = "white-ash", "white ash", 66.0, None, WOOD_HANDBOOK;
    BlackCherry = "black-cherry", "black cherry", 55.0, None, WOOD_HANDBOOK;
    SugarMaple = "sugar-maple", "sugar maple", 65.0, None, WOOD_HANDBOOK;
    NorthernRedOak = "northern-red-oak", "northern red oak", 57.0, None, WOOD_HANDBOOK;
    WhiteOak = "white-oak", "white oak", 57.0, None, WOOD_HANDBOOK;
    TulipTree = "tulip-tree", "tulip tree", 41.0, None, WOOD_HANDBOOK;
    DouglasFirCoast = "douglas-fir-coast", "Douglas-fir (coast)", 53.0, None, WOOD_HANDBOOK;
    DouglasFirInteriorNorth = "douglas-fir-interior-north", "Douglas-fir (interior north)", 51.0, None, WOOD_HANDBOOK;
    DouglasFirInteriorWest = "douglas-fir-interior-west", "Douglas-fir (interior west)", 53.0, None, WOOD_HANDBOOK;
    WesternLarch = "western-larch", "western larch", 53.0, None, WOOD_HANDBOOK;
    BalsamFir = "balsam-fir", "balsam fir", 38.0, None, WOOD_HANDBOOK;
    CaliforniaRedFir = "california-red-fir", "California red fir", 40.0, None, WOOD_HANDBOOK;
    GrandFir = "grand-fir", "grand fir", 40.0, None, WOOD_HANDBOOK;
    NobleFir = "noble-fir", "noble fir", 43.0, None, WOOD_HANDBOOK;
    PacificSilverFir = "pacific-silver-fir", "Pacific silver fir", 44.0, None, WOOD_HANDBOOK;
    SubalpineFir = "subalpine-fir", "subalpine fir", 34.0, None, WOOD_HANDBOOK;
    WhiteFir = "white-fir", "white fir", 41.0, None, WOOD_HANDBOOK;
    EasternHemlock = "eastern-hemlock", "eastern hemlock", 44.0, None, WOOD_HANDBOOK;
    MountainHemlock = "mountain-hemlock", "mountain hemlock", 43.0, None, WOOD_HANDBOOK;
    WesternHemlock = "western-hemlock", "western hemlock", 46.0, None, WOOD_HANDBOOK;
    JackPine = "jack-pine", "jack pine", 41.0, None, WOOD_HANDBOOK;
    LoblollyPine = "loblolly-pine", "loblolly pine", 50.0, None, WOOD_HANDBOOK;
    LodgepolePine = "lodgepole-pine", "lodgepole pine", 38.0, None, WOOD_HANDBOOK;
    LongleafPine = "longleaf-pine", "longleaf pine", 59.0, None, WOOD_HANDBOOK;
    PondPine = "pond-pine", "pond pine", 51.0, None, WOOD_HANDBOOK;
    PonderosaPine = "ponderosa-pine", "ponderosa pine", 35.0, None, WOOD_HANDBOOK;
    RedPine = "red-pine", "red pine", 40.0, None, WOOD_HANDBOOK;
    SandPine = "sand-pine", "sand pine", 52.0, None, WOOD_HANDBOOK;
    ShortleafPine = "shortleaf-pine", "shortleaf pine", 51.0, None, WOOD_HANDBOOK;
    SlashPine = "slash-pine", "slash pine", 60.0, None, WOOD_HANDBOOK;
    SprucePine = "spruce-pine", "spruce pine", 41.0, None, WOOD_HANDBOOK;
    SugarPine = "sugar-pine", "sugar pine", 34.0, None, WOOD_HANDBOOK;
    VirginiaPine = "virginia-pine", "Virginia pine", 50.0, None, WOOD_HANDBOOK;
    WesternWhitePine = "western-white-pine", "western white pine", 32.0, None, WOOD_HANDBOOK;
    RedwoodOldGrowth = "redwood-old-growth", "redwood (old growth)", 52.0, None, WOOD_HANDBOOK;
    RedwoodYoungGrowth = "redwood-young-growth", "redwood (young growth)", 41.0, None, WOOD_HANDBOOK;
    EngelmannSpruce = "engelmann-spruce", "Engelmann spruce", 32.0, None, WOOD_HANDBOOK;
    WesternRedcedar = "western-redcedar", "western redcedar", 35.9, None, WOOD_HANDBOOK;
    EuropeanAsh = "european-ash", "European ash", 66.0, Some(10.9), LAVERS;
    EuropeanBeech = "european-beech", "European beech", 65.0, Some(9.0), LAVERS;
    EuropeanOak = "european-oak", "European oak", 59.0, Some(8.0), LAVERS;
    TurkeyOak = "turkey-oak", "Turkey oak", 70.0, Some(9.7), LAVERS;
    RedMaple = "red-maple", "red maple", 53.0, None, WOOD_MEMORY;
    SilverMaple = "silver-maple", "silver maple", 40.0, None, WOOD_MEMORY;
    ShagbarkHickory = "shagbark-hickory", "shagbark hickory", 76.0, None, WOOD_MEMORY;
    AmericanBeech = "american-beech", "American beech", 59.0, None, WOOD_MEMORY;
    AmericanSycamore = "american-sycamore", "American sycamore", 45.0, None, WOOD_MEMORY;
    AmericanElm = "american-elm", "American elm", 50.0, None, WOOD_MEMORY;
    BlackWalnut = "black-walnut", "black walnut", 66.0, None, WOOD_MEMORY;
    Sweetgum = "sweetgum", "sweetgum", 49.0, None, WOOD_MEMORY;
    AmericanBasswood = "american-basswood", "American basswood", 34.0, None, WOOD_MEMORY;
    BlackLocust = "black-locust", "black locust", 95.0, None, WOOD_MEMORY;
    YellowBirch = "yellow-birch", "yellow birch", 57.0, None, WOOD_MEMORY;
    EasternWhitePine = "eastern-white-pine", "eastern white pine", 34.0, None, WOOD_MEMORY;
}
