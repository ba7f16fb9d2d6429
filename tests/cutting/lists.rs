//! Lists of cords and hanks: what people write, what a link carries, what stands in the box.

use boughline::cord::list::{CORDS, HANKS, read_cords, read_hanks};
use boughline::field::Said;
use boughline::quantity::System;

#[rustfmt::skip]
const CORD_TEXTS: &[(&str, &str, &str)] = &[
    ("2~6mm~1.8m~foot%20loop,1~7mm~2.1m", "2~6mm~1.8m~foot%20loop,1~7mm~2.1m", "2 ~ 6mm ~ 1.8m ~ foot loop\n1 ~ 7mm ~ 2.1m"),
    ("2 ~ 6 ~ 1,8", "2~6mm~1.8m", "2 ~ 6 mm ~ 1,8 m"),
    ("2 ~ 6 mm ~ 5 ft 11 in ~ Nylon; 1 ~ 7 mm ~ 2 m ~ high-modulus polyethylene ~ Fußschlaufe", "2~6mm~5ft11in~nylon,1~7mm~2m~hmpe~Fu%C3%9Fschlaufe", "2 ~ 6 mm ~ 5 ft 11 in ~ nylon\n1 ~ 7 mm ~ 2 m ~ hmpe ~ Fußschlaufe"),
    ("\n 1~6mm~1m~a%7Eb%2Cc \n\n", "1~6mm~1m~a%20b%20c", "1 ~ 6mm ~ 1m ~ a b c"),
];

#[rustfmt::skip]
const HANK_TEXTS: &[(&str, &str, &str)] = &[
    ("any~20m,6mm~3.2m~0~x1", "any~20m,6mm~3.2m~0~x1", "any ~ 20m\n6mm ~ 3.2m ~ 0 ~ x1"),
    ("ANY ~ 20 ~ × 3 ~ 12,50 ~ polyester", "any~20m~polyester~12.5~x3", "any ~ 20 m ~ polyester ~ 12,50 ~ x3"),
];

#[test]
fn a_list_is_the_same_in_a_box_and_in_a_link() {
    for (field, texts) in [(&CORDS.row, CORD_TEXTS), (&HANKS.row, HANK_TEXTS)] {
        for (text, linked, tidied) in texts {
            let tidy = field.tidied(text, System::Si);
            assert_eq!(tidy, *tidied, "{text:?}");
            assert_eq!(field.linked(&Said::Text(tidy)).as_deref(), Some(*linked), "{text:?}");
            assert_eq!(field.linked(&Said::Text((*linked).to_owned())).as_deref(), Some(*linked));
            assert_eq!(field.tidied(tidied, System::Si), *tidied);
        }
    }
    assert_eq!(read_cords("2~6mm~1.8m").map(|list| list.rows), read_cords("2 ~ 6 mm ~ 1,8 m").map(|list| list.rows));
    assert_eq!(read_hanks("any~5m").map(|list| list.rows.len()), Ok(1));
}

#[test]
fn marks_without_a_row_are_no_list() {
    for text in [",", ";", " ,\n; "] {
        assert_eq!(read_cords(text).map_err(|mistake| mistake.row), Err(1), "{text:?}");
        assert_eq!(read_hanks(text).map_err(|mistake| mistake.row), Err(1), "{text:?}");
        assert_eq!(HANKS.row.linked(&Said::Text(text.to_owned())), None);
    }
}
