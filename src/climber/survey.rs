//! What a national survey of grip comes to: percentiles by sex and age, and a line in age, stature and body mass.

/// Combined grip (the best of three squeezes of the right hand and of the left, added) from an age on, at
/// [`DEVIATIONS`]: the 5th, 20th, 50th, 80th and 95th percentiles.
///
/// # Units
/// Years; tenths of a kilogram, as the survey reads its dynamometers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AgeBand {
    /// The first year of age.
    pub from: u16,
    /// Percentiles of women.
    pub female: [u16; 5],
    /// Percentiles of men.
    pub male: [u16; 5],
}

/// Combined grip by age and sex; the last band has no end.
///
/// # Source
/// NHANES 2011-2014, 10 386 people, computed from the microdata with its examination weights: the least reading at
/// or below which that share of the weight lies. 270 to 895 people a cell.
pub const AGE_BANDS: &[AgeBand] = &[
    AgeBand { from: 18, female: [443, 502, 573, 662, 763], male: [671, 776, 869, 1006, 1225] },
    AgeBand { from: 20, female: [446, 517, 595, 679, 796], male: [656, 803, 941, 1095, 1244] },
    AgeBand { from: 30, female: [459, 532, 615, 700, 811], male: [697, 847, 981, 1113, 1249] },
    AgeBand { from: 40, female: [434, 520, 600, 685, 770], male: [706, 828, 948, 1071, 1196] },
    AgeBand { from: 50, female: [400, 486, 556, 643, 728], male: [607, 757, 892, 997, 1131] },
    AgeBand { from: 60, female: [372, 448, 519, 596, 646], male: [578, 693, 840, 957, 1071] },
    AgeBand { from: 70, female: [301, 380, 464, 533, 601], male: [510, 615, 743, 843, 942] },
    AgeBand { from: 80, female: [215, 291, 370, 449, 519], male: [380, 512, 625, 734, 828] },
];

/// Where the percentiles of an [`AgeBand`] lie, in standard deviations of a normal distribution: by definition.
pub const DEVIATIONS: [f64; 5] =
    [-1.644_853_626_951_472_7, TWENTIETH, 0.0, 0.841_621_233_572_914_3, 1.644_853_626_951_472_7];

/// The 20th percentile in standard deviations, by definition: what to plan on where only sex and age are known.
/// That it is the 20th and not the middle is judged.
pub const TWENTIETH: f64 = -0.841_621_233_572_914_3;

/// Combined grip as a line in age, stature and body mass.
///
/// ```text
///   kilograms = at_fifty + a (a = years - 50) + a squared + (stature - 170 cm) + (body mass - 80 kg)
/// ```
///
/// # Units
/// Kilograms, for each year, centimetre and kilogram.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// At 50 years, 170 cm and 80 kg.
    pub at_fifty: f64,
    /// For each year.
    pub year: f64,
    /// For each year squared.
    pub year_squared: f64,
    /// For each centimetre.
    pub centimetre: f64,
    /// For each kilogram.
    pub kilogram: f64,
    /// What people lie off the line: one standard deviation.
    pub deviation: f64,
}

/// The line of women.
///
/// # Source
/// NHANES 2011-2014, 4918 women of 20 and over, weighted least squares, computed from the microdata.
pub const FEMALE_LINE: Line = Line {
    at_fifty: 62.239,
    year: -0.2921,
    year_squared: -0.0082,
    centimetre: 0.4821,
    kilogram: 0.0944,
    deviation: 8.88,
};

/// The line of men.
///
/// # Source
/// NHANES 2011-2014, 4792 men of 20 and over, weighted least squares, computed from the microdata.
pub const MALE_LINE: Line = Line {
    at_fifty: 85.919,
    year: -0.4572,
    year_squared: -0.0116,
    centimetre: 0.7791,
    kilogram: 0.1402,
    deviation: 14.16,
};

/// From this age on the survey counts everybody alike, in years.
pub const OLDEST: f64 = 80.0;

/// More body mass than this is taken for this, in kilograms.
///
/// # Source
/// Computed: surveyed men over 120 kg are 2 to 4 kg weaker than their line, women 1 to 7 kg.
pub const HEAVIEST: f64 = 120.0;

/// No combined grip is taken to be less, in kilograms: what keeps a far draw above nothing.
///
/// # Source
/// Judged, a third of the least of the survey (14.8 kg).
pub const LEAST_GRIP: f64 = 5.0;
