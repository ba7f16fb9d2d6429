//! Decimal digits to and from binary, exactly.
//!
//! std does this too, for every number there is; its tables are a fifth of the module that is shipped. What people
//! write has few digits, so long division of whole numbers does.

/// The most digits that are read in all: what a `u64` surely holds.
const MOST_DIGITS: usize = 19;

/// The most decimals that are read: ten to this power, doubled, fits 128 bits.
const MOST_DECIMALS: usize = 37;

/// The most decimals that are written: 53 bits times ten to this power fit 128 bits.
const MOST_WRITTEN: usize = 22;

/// The number `whole.decimals`, rounded to the nearest `f64` and halves to even, as std rounds it.
///
/// None where there is something else than digits, or more of them than make sense: 19 without leading zeros, or 37
/// decimals.
pub(super) fn value(whole: &str, decimals: &str) -> Option<f64> {
    let mut number = 0_u64;
    let mut count = 0;
    for digit in whole.bytes().chain(decimals.bytes()) {
        if !digit.is_ascii_digit() {
            return None;
        }
        count += usize::from(count > 0 || digit != b'0');
        if count > MOST_DIGITS {
            return None;
        }
        number = number * 10 + u64::from(digit - b'0');
    }
    (decimals.len() <= MOST_DECIMALS).then(|| quotient(number, ten_to(decimals.len())))
}

/// The power of ten, at most the 38th.
fn ten_to(power: usize) -> u128 {
    (0..power).fold(1, |ten, _| ten * 10)
}

/// `number / by`, rounded to the nearest `f64` and halves to even: long division, bit by bit.
fn quotient(number: u64, by: u128) -> f64 {
    if number == 0 {
        return 0.0;
    }
    let (mut rest, mut bits, mut place) = (0_u128, 0_u64, 64);
    // 53 bits and one to round by; `place` ends as the power of two of the last.
    while bits < 1 << 53 {
        place -= 1;
        let next = if place >= 0 { number >> place & 1 } else { 0 };
        rest = rest << 1 | u128::from(next);
        bits <<= 1;
        if rest >= by {
            rest -= by;
            bits |= 1;
        }
    }
    let below = place > 0 && number & ((1 << place) - 1) != 0;
    let exact = rest == 0 && !below;
    let up = bits & 1 == 1 && (!exact || bits & 2 == 2);
    let mantissa = (bits >> 1) + u64::from(up);
    // Exact: the mantissa has at most 53 bits, and the power is far from either end of what an f64 holds.
    mantissa as f64 * two_to(place + 1)
}

/// Two to a power between -200 and 100.
fn two_to(power: i32) -> f64 {
    f64::from_bits(u64::from((1023 + power).unsigned_abs()) << 52)
}

/// The shortest decimal that reads back to this number, which is finite and not negative: as a whole number, and how many
/// of its digits are decimals. None for what has more digits than are read or written; from 1e-5 to 1e15 there always is
/// one.
pub(super) fn shortest(number: f64) -> Option<(u64, usize)> {
    let bits = number.to_bits();
    let power = i32::try_from(bits >> 52 & 0x7ff).ok()? - 1075;
    if power < -1074 {
        // Nought, and what is next to it.
        return (bits == 0).then_some((0, 0));
    }
    let mantissa = u128::from(bits & ((1 << 52) - 1) | 1 << 52);
    for decimals in 0..=MOST_WRITTEN {
        let scaled = mantissa * ten_to(decimals);
        let nearest = match u32::try_from(-power) {
            Ok(0) => scaled,
            Ok(down @ 1..128) => (scaled >> down) + (scaled >> (down - 1) & 1),
            Ok(_) => return None,
            Err(_) => scaled.checked_mul(1_u128.checked_shl(power.unsigned_abs())?)?,
        };
        let Some(nearest) = u64::try_from(nearest).ok().filter(|nearest| *nearest < 10_u64.pow(19)) else { continue };
        if quotient(nearest, ten_to(decimals)).to_bits() == bits {
            return Some((nearest, decimals));
        }
    }
    None
}

/// The digits of a whole number of `10^-decimals`, with a mark before the decimals.
pub(super) fn pointed(number: u64, decimals: usize, mark: char) -> String {
    let mut text = String::new();
    let mut rest = number;
    let mut place = 0;
    while rest > 0 || place <= decimals {
        if place > 0 && place == decimals {
            text.insert(0, mark);
        }
        text.insert(0, char::from(b'0' + (rest % 10) as u8));
        rest /= 10;
        place += 1;
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn reading_rounds_as_std_does(whole in "[0-9]{1,10}", decimals in "[0-9]{0,9}") {
            let std: f64 = format!("{whole}.{decimals}0").parse().unwrap();
            prop_assert_eq!(value(&whole, &decimals).map(f64::to_bits), Some(std.to_bits()));
        }

        #[test]
        fn reading_rounds_as_std_does_far_behind_the_point(zeros in 0_usize..18, digits in "[0-9]{1,19}") {
            let decimals = format!("{}{digits}", "0".repeat(zeros));
            let std: f64 = format!("0.{decimals}").parse().unwrap();
            prop_assert_eq!(value("0", &decimals).map(f64::to_bits), Some(std.to_bits()));
        }

        #[test]
        fn the_shortest_is_the_shortest_of_std(power in -5_i32..15, lead in 1.0_f64..10.0) {
            let number = lead * format!("1e{power}").parse::<f64>().unwrap();
            let (digits, decimals) = shortest(number).unwrap();
            prop_assert_eq!(pointed(digits, decimals, '.'), format!("{number}"));
        }
    }

    /// Halves between two neighbours go to the even one: 2^53 + 1 and 2^53 + 3.
    #[test]
    fn halves_go_to_the_even_neighbour() {
        assert_eq!(value("9007199254740993", ""), Some(9_007_199_254_740_992.0));
        assert_eq!(value("9007199254740995", ""), Some(9_007_199_254_740_996.0));
        assert_eq!(value("9007199254740993", "001"), Some(9_007_199_254_740_994.0));
    }

    #[test]
    fn what_is_too_long_or_no_digit_is_none() {
        assert_eq!(value("12345678901234567890", ""), None);
        assert_eq!(value("0", &"0".repeat(38)), None);
        assert_eq!(value("1x", ""), None);
        assert_eq!(shortest(1e30), None);
        assert_eq!(shortest(f64::MIN_POSITIVE), None);
        assert_eq!(shortest(0.0), Some((0, 0)));
        assert_eq!(shortest(0.1), Some((1, 1)));
    }
}
