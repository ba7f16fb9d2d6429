//! What the arms pull.

use super::formula::{Formula, formula};
use super::table::digits;
use super::unit::{CM, KG, KGF, N, RATIO, one};
use super::{Chapter, Given, Table};
use crate::climber::{
    AGE_BANDS, ANOTHER_DAY, Arms, DEVIATIONS, FEMALE_LINE, Grip, HEAVIEST, LEAST_GRIP, Line, MALE_LINE, Norm, OLDEST,
    ONE_ARM, OTHER_HAND, PREDICTION_ERROR, PULL_OVER_GRIP, PullTaken, SURE_OF, Sex, TRAINED_PULL_OVER_GRIP, TWENTIETH,
    Training, Trunk, for_arms, predicted_pull,
};
use crate::field::Spread;
use crate::quantity::{Count, Force, Length, Mass};
use crate::source::{CROSBY, GEOMETRY, HAISMA, JACOBS, JOHNSON, JUDGED, LA_DELFA, NHANES, RAKSHIT, Source};

const LINE: &str = "S = a + b × (y − 50) + c × (y − 50) ^ 2 + d × (h − 170) + e × (m − 80) + s × z";

fn by_line(sex: Sex, x: &Given) -> f64 {
    let norm = Norm {
        sex,
        age: Count::new(x.of("y")),
        stature: Some(Length::centimetres(x.of("h"))),
        body_mass: Mass::kilograms(x.of("m")),
    };
    Force::newtons(norm.combined_grip(x.of("z"))).in_kilograms_force()
}

fn line(id: &'static str, gives: &'static str, line: Line, example: fn(&Given) -> f64) -> Formula {
    const FROM: &[Source] = &[NHANES];
    formula(id, gives)
        .words("A line through the survey in age, stature and body mass, by weighted least squares; used from 20 years on where stature is known. Without a stature the percentiles of the table below are taken, straight between them.")
        .symbols(KGF, LINE)
        .term("S", "grip of both hands, added", KGF)
        .term("y", "age in years, at most 80", RATIO)
        .term("h", "stature", CM)
        .term("m", "body mass, at most 120 kg", KG)
        .term("z", "standard deviations off the middle; −0.84 to plan on", RATIO)
        .figure("a", "at 50 years, 170 cm, 80 kg", one(line.at_fifty), RATIO, FROM)
        .figure("b", "for each year", one(line.year), RATIO, FROM)
        .figure("c", "for each year squared", one(line.year_squared), RATIO, FROM)
        .figure("d", "for each centimetre", one(line.centimetre), RATIO, FROM)
        .figure("e", "for each kilogram", one(line.kilogram), RATIO, FROM)
        .figure("s", "one standard deviation", one(line.deviation), RATIO, FROM)
        .figure("", "years from which all are counted alike", one(OLDEST), RATIO, FROM)
        .figure("", "body mass beyond which none is added", one(HEAVIEST), KG, FROM)
        .figure("", "no grip of both hands is taken to be less, in kgf", one(LEAST_GRIP), RATIO, &[JUDGED])
        .from(FROM)
        .used("A grip, where only age and sex are known. The 20th percentile is shown to plan on; its spread is in the samples and never applied twice.")
        .example(&[("y", 65.0), ("h", 175.0), ("m", 95.0), ("z", 0.0)], example)
}

fn norms(id: &'static str, caption: &'static str, of: fn(&crate::climber::AgeBand) -> [u16; 5]) -> Table {
    const HEADS: &[&str] = &["from age", "5th", "20th", "50th", "80th", "95th percentile, kgf"];
    let mut table = Table::new(id, caption, HEADS, &[NHANES]);
    for band in AGE_BANDS {
        let mut cells = vec![band.from.to_string()];
        cells.extend(of(band).map(|tenths| digits(f64::from(tenths) / 10.0)));
        table = table.row(cells, &[]);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    let trunk = Trunk::Unsteady.share_of_prediction().unwrap_or(Spread::point(1.0));
    Chapter::new(
        "pull",
        "The pull, and what arms give",
        "What you measured decides; a guess is only used where nothing was measured, and is shown beside it. Best first: ten strokes at knee height, a measured pull, a grip, age and sex.",
        vec![
            line("grip-of-women", "Grip of a woman, from age, stature and mass", FEMALE_LINE, |x| by_line(Sex::Female, x)),
            line("grip-of-men", "Grip of a man, from age, stature and mass", MALE_LINE, |x| by_line(Sex::Male, x)),
            formula("two-hands", "The stronger hand, of a grip of both")
                .words("One hand is taken to have nine tenths of the other; of two hands that take turns the weaker counts.")
                .symbols(N, "R = S / (1 + o)")
                .term("R", "grip of the stronger hand", N)
                .term("S", "grip of both hands, added", N)
                .figure("o", "the other hand over the stronger", one(OTHER_HAND), RATIO, &[CROSBY])
                .from(&[GEOMETRY])
                .used("A norm’s two hands; the other hand of somebody who measured one.")
                .example(&[("S", 800.0)], |x| Grip::combined(x.of("S")).right),
            formula("pull-from-grip", "Pull of two arms, guessed from a grip")
                .words("Grip of both hands times what arms pull of it, with one person’s own deviation. Without a trunk that holds one upright a share of it is left; after an injury at the neck nothing is guessed.")
                .symbols(N, "P = G × r × exp(s × z)")
                .term("P", "pull of two arms through a stroke", N)
                .term("G", "grip of both hands, added", N)
                .figure("r", "pull over grip, untrained", PULL_OVER_GRIP, RATIO, &[JOHNSON, NHANES, LA_DELFA, JUDGED])
                .figure("", "pull over grip, of somebody who trains pulling", TRAINED_PULL_OVER_GRIP, RATIO, &[JUDGED])
                .figure("s", "one person off the guess: one standard deviation of the logarithm", one(PREDICTION_ERROR), RATIO, &[JUDGED])
                .term("z", "standard deviations, drawn for each sample", RATIO)
                .figure("", "share left without trunk control", trunk, RATIO, &[JUDGED, HAISMA])
                .from(&[JUDGED])
                .used("Arms, where no pull was measured.")
                .example(&[("G", 800.0), ("z", -1.0)], |x| {
                    predicted_pull(x.of("G"), Training::Untrained.pull_over_grip().likely, x.of("z"))
                }),
            formula("pull-measured", "Pull through a stroke, from a still pull overhead")
                .words("A still pull with the hands overhead is stronger than the weakest point of a stroke; a pull at chest height is taken as it is; the load of ten repetitions already contains the weakest point and is 80 % of the greatest. A scale’s reading and the day may be off.")
                .symbols(N, "P = F × t × d × a")
                .term("P", "pull through a stroke", N)
                .term("F", "the reading", N)
                .figure("t", "still, hands overhead", PullTaken::Overhead.through_the_stroke(), RATIO, &[LA_DELFA])
                .figure("", "still, hands at chest height", PullTaken::LowestPoint.through_the_stroke(), RATIO, &[GEOMETRY])
                .figure("", "the load of ten repetitions", PullTaken::TenRepetitions.through_the_stroke(), RATIO, &[JOHNSON])
                .figure("d", "another day, and the scale", ANOTHER_DAY, RATIO, &[JUDGED])
                .term("a", "arms: 1 where as many pull as were measured, one over two below where one pulls alone", RATIO)
                .figure("", "what one arm pulls over two", ONE_ARM, RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("Arms, where a pull was measured.")
                .example(&[("F", 500.0), ("a", 1.0)], |x| {
                    let through = PullTaken::Overhead.through_the_stroke().likely;
                    x.of("F") * through * ANOTHER_DAY.likely * for_arms(Arms::Two, Arms::Two, ONE_ARM.likely)
                }),
            formula("pull-of-one-arm", "Pull of one arm, from one that two arms gave")
                .words("Two arms give a little less than twice one.")
                .symbols(N, "P = F × o")
                .term("P", "pull of one arm", N)
                .term("F", "pull of two", N)
                .figure("o", "one arm over two", ONE_ARM, RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("Hand over hand, pulling with alternate hands, and climbing with one arm.")
                .example(&[("F", 500.0)], |x| x.of("F") * for_arms(Arms::Two, Arms::One, ONE_ARM.likely)),
            formula("knee-height-trial", "Strength that a trial at knee height proves")
                .words("Strokes on the very rig have losses, setback, hold and tiring in them. The strength with which so many strokes are the last that succeed at that pace, by the model of tiring, is what the climber has: what one stroke needed there, times what so many strokes take (see how strength lasts). Strokes you are sure you could have added count in part.")
                .figure("", "share of the strokes you are sure of that you would have made", SURE_OF, RATIO, &[JUDGED])
                .from(&[RAKSHIT, JUDGED])
                .used("Arms and hands, where a trial was made: it decides before everything else."),
        ],
    )
    .table(norms("norms-women", "Grip of both hands of women by age, as surveyed", |band| band.female))
    .table(norms("norms-men", "Grip of both hands of men by age, as surveyed", |band| band.male))
    .note(
        "where the table of grip comes from",
        "The best of three squeezes of each hand, added, of 10 386 adults of the United States met in 2011 to 2014 (a work of the United States government, in the public domain), by examination weight: the least reading at or below which that share of the weight lies; 270 to 895 people a cell. The microdata are in the project, and a test computes the table from them again, in two languages.",
        &[NHANES],
    )
    .note(
        "to plan on",
        "Where only age and sex are known, plan on the 20th percentile, 0.84 standard deviations below the middle: four in five of their kind have more. That it is the 20th is judged. A norm alone is good to about 30 % for one person.",
        &[JUDGED, NHANES],
    )
    .note(
        "not yet",
        "Training added 12 to 39 % of arm strength in 12 to 16 weeks in small studies of paraplegia, so that an answer of no may be one of not yet.",
        &[JACOBS],
    )
    .table(percentiles())
}

fn percentiles() -> Table {
    let mut table = Table::new(
        "percentiles",
        "Where the percentiles lie on a normal distribution, by definition",
        &["percentile", "standard deviations"],
        &[],
    );
    for (name, at) in ["5th", "20th", "50th", "80th", "95th"].into_iter().zip(DEVIATIONS) {
        table = table.row(vec![name.to_owned(), digits(at)], &[]);
    }
    debug_assert!(DEVIATIONS.contains(&TWENTIETH));
    table
}
