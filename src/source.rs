//! Every publication that a figure comes from, and how the figure was obtained.

/// How a figure got here from its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Obtained {
    /// Read in a stored copy of the source.
    Read,
    /// Read in a second source that quotes the first.
    Quoted,
    /// Recalled, not checked.
    Memory,
    /// Recomputed from open data.
    Computed,
    /// Nobody published it: our reasoned default, adjustable, always shown with its range.
    Judged,
    /// It follows from lengths and angles alone.
    Geometry,
    /// It is agreed to be so.
    Definition,
    /// Climbers say so; there is no publication.
    CommonPractice,
}

impl Obtained {
    /// The words for it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        crate::told::told(match self {
            Self::Read => "read in a stored copy",
            Self::Quoted => "quoted by a second source",
            Self::Memory => "from memory, not checked",
            Self::Computed => "computed from open data",
            Self::Judged => "judged: nobody published it",
            Self::Geometry => "geometry",
            Self::Definition => "by definition",
            Self::CommonPractice => "common practice, no source",
        })
    }
}

/// One publication, or one way of knowing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Source {
    /// Its id, which never changes.
    pub id: &'static str,
    /// Author, title, edition, page or table.
    pub title: &'static str,
    /// How the figures were obtained.
    pub obtained: Obtained,
}

macro_rules! sources {
    ($($name:ident: $id:literal, $title:literal, $obtained:ident;)*) => {
        $(#[doc = concat!($title, ".")]
        pub const $name: Source = Source { id: $id, title: crate::told::told($title), obtained: Obtained::$obtained };)*

        /// All of them.
        pub const SOURCES: &[Source] = &[$($name),*];
    };
}

sources! {
    ANSUR: "ansur-ii", "US Army anthropometric survey ANSUR II (2012), public microdata: overhead grip reach sitting, regressed on stature", Computed;
    CROSBY: "crosby-1994", "C. A. Crosby and others, hand strength: normative values (1994): the dominant hand is about 10 % stronger in right-handers", Read;
    DELANEY: "delaney", "R. Delaney, Physics for Roping Technicians (2022), p. 90: efficiency of carabiners and pulleys, and the rule that each turn multiplies the tension", Quoted;
    CAPSTAN: "delaney-88", "R. Delaney, Physics for Roping Technicians (2022), p. 88: friction of ropes round metal and timber, from a load raised and lowered", Read;
    PRATTLEY: "prattley-2016", "Prattley, pulley-versus-carabiner test (2016): 0.53 for a carabiner, 0.83 for a small pulley, n = 5", Read;
    SETNICKA: "setnicka-1977", "T. Setnicka, Wilderness Search and Rescue (1977): 0.66 for a carabiner, 0.75 for a cheap pulley, 0.93 for a rescue pulley", Quoted;
    JOHNSON: "johnson-2009", "Johnson and others, J Strength Cond Res 23:1022 (2009): about ten repetitions at 80 % of the greatest pull-down, which is 0.55 of body mass for women and 0.93 for men", Read;
    LA_DELFA: "la-delfa-2017", "La Delfa and Potvin, Appl Ergon 59:410 (2017): pull by height of the hand, evaluated from its published coefficients", Computed;
    YOUNG: "young-2009", "Young and others, Hum Factors 51:705 (2009): what one hand holds overhead, as a multiple of grip", Read;
    HUR: "hur-2012", "Hur and others (2012, PMC8887815): friction of a hand on a metal handle: slick polyester glove 0.32, bare 0.50, rubbered glove 0.74", Read;
    NHANES: "nhanes-grip", "National Health and Nutrition Examination Survey 2011-2014, US, public microdata: best grip of right and left, 10 386 adults, by weight", Computed;
    HARNESS_TEST: "harness-mass", "Fall-protection standards test with 100 kg; ratings of 136 to 150 kg exist, and every part must carry the same rating", Read;
    AFAG401: "hse-afag401", "Health and Safety Executive, leaflet AFAG401: two people at all tree climbing, one on the ground able and equipped to rescue; hitch cords of at least 8 mm", Read;
    RESCUE_MANUAL: "tree-rescue-manual-2022", "Arboriculture Australia, Tree rescue manual (2022): a base anchor loads the crotch with close to twice the weight (p. 84); an anchor that its own tail pulls down takes three times its height of rope (p. 87); a tie-in limb is at least as thick as the climber's forearm (p. 79); bending at a union (p. 121)", Read;
    OREGON: "oregon-437-002-0310", "Oregon Administrative Rules 437-002-0310: a figure-eight in the end of the rope, so that it cannot run through the hitch", Read;
    KNOT_PAGES: "knot-pages", "Knots: a stopper takes about 23 cm of rope; tails of at least 10 cm (US Army, Ranger Handbook, ch. 9) and ten diameters (two alpine teaching pages); a double fisherman's with its tails 67 diameters (a New Zealand caving association's page)", Read;
    ROPE_LADDER: "rope-ladder", "Lengths that ropes are sold in: 20, 30, 40, 45, 50 and 60 m; 50, 75 and 100 ft (read), 120, 150 and 200 ft", Memory;
    MOYER: "moyer-2000", "T. Moyer, P. Tusting and C. Harmston, ITRS 2000: friction hitches of accessory cord on 10.5 mm rope, prusik of 3 wraps, klemheist of 3 to 5, Bachmann and autoblock of 4; stiff cord in knots", Read;
    EVANS: "evans-prusiks", "T. Evans, Empirical Breaking Strengths of Single Prusiks, ITRS: loops cut at 91 cm of 6 mm and 104 cm of 7 mm for a prusik of 3 wraps on 11 mm rope, with a double fisherman's", Read;
    HITCH_PAGES: "hitch-pages", "Tree climbing manuals: Schwabisch of one turn below and four above; Blake's hitch of 4 wraps, the tail out between the second and the third (quoted), about 3.5 ft of line beyond the bight for bridge, hitch and backup", Read;
    MOUNTAIN_PAGES: "mountain-pages", "Mountaineering texts: cord at least 2 mm thinner than the rope; backup loops of 5 to 7 mm, at most half the rope; 25 ft or 8 m of 6 mm for a pair of foot slings", Read;
    CORD_MEMORY: "cord-memory", "Cords recalled and not checked: coils of hitches that no source counts; cord of 60 to 80 % of the rope; eye to eye 71 to 84 cm for a Valdotain tresse, 61 to 76 cm for a Distel or Schwabisch; where fibres melt", Memory;
    TIRING: "frey-law-2012", "L. Frey-Law and others, J Biomech 45:1803 (2012), after Xia and Frey-Law (2008); recovery at rest after Looft and Frey-Law (2020): how muscles tire and recover. The kind edge: measured pulls repeated for 12 minutes at a third of the time topped out at 0.37 (J Physiol 592:4775)", Read;
    RAKSHIT: "rakshit-2021", "Rakshit and others, J Biomech 110695 (2021): how fast the muscles of hand and elbow tire and recover, pooled; 1.6 times as fast gives ten repetitions at 80 % (Johnson 2009), 3.8 times 0.37 at a third of the time (J Physiol 592:4775)", Quoted;
    JACOBS: "jacobs-2001", "Jacobs and others (2001), and other small studies of training with paraplegia: 12 to 39 % more arm strength in 12 to 16 weeks", Read;
    AMINOFF: "aminoff-1996", "Aminoff and others (1996): power at the arm crank, from which about 107 W at the peak of able-bodied men is judged", Judged;
    HAISMA: "haisma-2006", "Haisma and others (2006): power at the arm crank at its peak, 74 W with paraplegia and 40 W with tetraplegia", Read;
    WOOD_HANDBOOK: "wood-handbook", "US Department of Agriculture, Wood Handbook, FPL-GTR-190 (2010) and 282 (2021), table 5-3a: bending strength of green clear wood; table 5-6: its coefficient of variation, 16 %", Quoted;
    WOOD_MEMORY: "wood-handbook-memory", "The same table, for species recalled and not checked", Memory;
    LAVERS: "lavers-1983", "G. M. Lavers, BRE report BR 241 (3rd ed., 1983): bending strength of green clear wood grown in the United Kingdom, with standard deviations", Quoted;
    ASTM_GREEN: "astm-d2555", "Table of the kind of ASTM D2555: modulus of rupture of green clear wood with standard deviations, in psi", Read;
    CALIFORNIA: "california-title-8-3422", "California Code of Regulations, Title 8, section 3422: climbing lines and every part that bears a tree worker at least 5,000 lbf, lines at most 7 % of stretch at 500 lbf", Read;
    ANSI_Z133: "ansi-z133", "ANSI Z133, arboricultural operations: climbing lines at least 5,400 lbf", Quoted;
    OSHA: "osha-8-kn", "US Occupational Safety and Health Administration, fall protection: at most 8 kN on somebody in a full-body harness", Read;
    SEAT_REVIEW: "s40870-015-0015-5", "Review, doi 10.1007/s40870-015-0015-5: what bodies stand, seat harnesses well below 8 kN; 4 kN", Read;
    ATTAWAY: "attaway", "Wexler; S. Attaway, Rope System Analysis: what a rope pulls that stops a fall, and the force at a strain of one, 71 to 89 kN for static rope and 18 to 36 kN for dynamic", Quoted;
    MORTON_HEARLE: "morton-hearle", "Morton and Hearle, Physical Properties of Textile Fibres, table 6.1: specific heat of nylon 1,430 and polyester 1,030 J/(kg K)", Read;
    FIBRE_HEAT: "fibre-heat", "Density, conductivity and melting of fibres: nylon melts near 220 °C and changes near 165, polyester melts at 250 and softens near 170, HMPE melts at 147, aramid chars near 500; what aramid and HMPE take and pass on, from memory", Read;
    SUMMIT: "bmc-summit-90", "British Mountaineering Council, Summit 90: a hand is usually taken to hold 222 N (50 lbf) on a rope; the largest hand is about three times the smallest", Read;
    MUNTER: "munter-holding", "A Munter holds up to 2.5 kN, the hand not stated, which is 10 to 12.5 times a usual hand; 12 to 15 from memory; less with the hand below the load: 5 to 14, to plan on 5", Judged;
    HITCH_SLIP: "schwartz-bianchini", "Schwartz: an 8 mm prusik of three wraps on 1/2 in rope begins to slip at 7 to 9.5 kN; Bianchini and others, Forests 12(11):1457 (2021): tree climbing hitches held up to 18.7 kN with at most 9.6 cm of slip", Read;
    KNOT_STRENGTH: "knot-strengths", "Knots keep 0.50 to plan on (R. Delaney, 2022, p. 30), an overhand 0.45 (FM 3-05.70, appendix G), 0.40 of aramid and 0.92 of 7 mm nylon (Moyer, Tusting and Harmston, ITRS 2000)", Read;
    OREGON_BOLE: "oregon-437-007-1530", "Oregon Administrative Rules 437-007-1530: no unsecured climbing in conifers above the bole of 4 inches", Quoted;
    EN_564: "en-564", "EN 564, accessory cord of 4 to 8 mm: at least 0.2 kN for each square millimetre of diameter squared", Read;
    EN_567: "en-567", "EN 567:2013, rope clamps: 4 kN without damage", Read;
    EN_1891: "en-1891", "EN 1891, low-stretch kernmantel ropes: type A at least 22 kN, type B 18 kN; at most 5 % of stretch between 50 and 150 kg", Read;
    EN_12275: "en-12275", "EN 12275:2013, connectors: strengths by class, as a test house sums them up", Read;
    EN_341: "en-341", "EN 341:1997, class A, as the Alberta Occupational Health and Safety Code guide has it: descenders run at 0.5 to 2 m/s", Read;
    PULLEY_STANDARD: "en-12278", "EN 12278, pulleys: at least 12 kN", Memory;
    TURNER: "turner-2008", "Turner and others (2008), motionless suspension in a harness: median 29 to 31 min, range 4 to 60", Read;
    HSIAO: "hsiao-2012", "Hsiao and others, Human Factors 54(3):346 (2012): a rescue within 9 min keeps 95 % of people unaffected in a full-body harness", Read;
    RAUCH: "rauch-2019", "Rauch and others (2019): hanging still in a sit harness, 30 % of tests ended near fainting within the hour, the earliest at 13.4 min; a second study besides it: raised legs added about 10 min", Read;
    DYSREFLEXIA: "dysreflexia-guideline", "Clinical guideline on autonomic dysreflexia, after spinal injury at or above T6: tight straps are among its triggers; sit up, loosen, get help", Read;
    WHEELED_MOBILITY: "wheeled-mobility", "Anthropometry of Wheeled Mobility: of wheelchair users who can lift an empty can overhead, 20 to 25 % cannot with 2.27 kg", Read;
    WHEELCHAIR_SHOULDERS: "wheelchair-shoulders", "Studies of wheelchair users: overused shoulders in 30 to 60 % of them", Read;
    SPINAL_MEMORY: "spinal-injury-memory", "What is taught after a spinal injury: relieve skin without feeling of pressure, and inspect it; bones below the injury grow thin", Memory;
    GRAVITY: "standard-gravity", "Standard gravity, 9.80665 m/s2 (3rd General Conference on Weights and Measures, 1901; the place is from memory)", Definition;
    GEOMETRY: "geometry", "Ropes keep their length, and the forces on every part balance", Geometry;
    JUDGED: "judged", "The authors' own estimate, shown with its range", Judged;
    COMMON_PRACTICE: "common-practice", "What climbers do and report: about 15 cm (6 in) a stroke sitting, about 23 cm (9 in) leaning back or with a hand loop; 3 m or 10 ft from power lines; a first try at knee height; a flight of stairs before a climb by the legs, which one climber of about 172 kg found hard; about 7 ft of 7 mm cord for a long tended hitch on 9.5 mm rope, about 6 ft of 6 mm for an upper hitch that opens", CommonPractice;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_kebab_case_and_differ() {
        for (at, source) in SOURCES.iter().enumerate() {
            assert!(
                source.id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-'),
                "{}",
                source.id
            );
            assert!(SOURCES.iter().skip(at + 1).all(|other| other.id != source.id), "{}", source.id);
            assert!(source.title.len() > 10);
        }
    }
}
