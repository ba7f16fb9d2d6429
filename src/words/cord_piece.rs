//! The pieces of a cord.

use super::CordPiece;
use super::figure::figure;
use super::shares::share;
use super::template::said;
use crate::cord::{Piece, Place};
use crate::field::Spread;
use crate::quantity::{MILLIMETRE, View, plain};
use crate::question::cut_length::Answer;
use crate::source::{ANSUR, GEOMETRY, JUDGED, KNOT_PAGES, Source};

/// A piece with its id, its noun, and how it comes about.
pub(super) fn cord_piece(
    answer: &Answer,
    (piece, place): (Piece, Place),
    length: &Spread,
    part: f64,
    view: View,
) -> CordPiece {
    let make = &answer.make;
    let millimetres = |si: f64| Spread::point(MILLIMETRE.count(si));
    let second = place == Place::Second;
    let either = |first, other| if second { other } else { first };
    let (kind, id, noun, sources): (_, _, _, &[Source]) = match piece {
        Piece::Tail => {
            ("tail", either("firstTail", "secondTail"), either("tail", "tail of the other end"), &[KNOT_PAGES])
        }
        Piece::Knot => (
            "knot",
            either("firstKnot", "secondKnot"),
            either("knot", "knot of the other end"),
            &[GEOMETRY, KNOT_PAGES, JUDGED],
        ),
        Piece::Eye => {
            ("eye", either("firstEye", "secondEye"), either("eye", "eye of the other end"), &[GEOMETRY, JUDGED])
        }
        Piece::Leg => ("leg", either("firstLeg", "secondLeg"), either("leg", "other leg"), &[GEOMETRY]),
        Piece::Coils => ("coils", "coils", "coils round the rope", make.pattern.sources),
        Piece::Crossings => ("crossings", "crossings", "crossings over the rope", make.pattern.sources),
        Piece::Span if answer.strands.is_some() => ("span", "span", "strands of the rig", &[GEOMETRY, ANSUR, JUDGED]),
        Piece::Span => ("span", "span", "between its ends", make.pattern.sources),
        Piece::HandEnd => ("hand-end", "handEnd", "for the hand", &[JUDGED]),
    };
    let working = match piece {
        Piece::Tail => "Ten diameters, and at least 10 cm (4 in).".to_owned(),
        Piece::Knot => said(
            "Laps of the cord round itself and back under them: {1} diameters.",
            &[&Spread::point(length.likely / make.cord)],
            &[],
            view,
        ),
        Piece::Eye => "Once round a connector 12 mm thick.".to_owned(),
        Piece::Leg => "Between hitch and connector.".to_owned(),
        Piece::Coils => {
            let strands = f64::from(make.pattern.lay.strands()) * make.coils;
            said(
                "{} times round {1} mm rope{} with {1} mm cord, along the helix: {F} each.",
                &[&millimetres(make.rope), &millimetres(make.cord), &Spread::point(length.likely / strands)],
                &[&count(strands, view), if make.pattern.beside > 0.0 { " and a carabiner’s back" } else { "" }],
                view,
            )
        }
        Piece::Crossings => "Half way round the rope for every strand that crosses.".to_owned(),
        Piece::Span => match &answer.strands {
            Some((count, each)) => said(
                "{0} strands, the upper hitch as far off as it comes: {M} each.",
                &[&Spread::point(f64::from(*count)), each],
                &[],
                view,
            ),
            None if make.is_loop() => "Twice its inside length.".to_owned(),
            None => "Its finished length.".to_owned(),
        },
        Piece::HandEnd => "Judged: from a hand’s width to an arm’s length.".to_owned(),
    };
    let mut figure = figure(id, noun, length, "{M}", view, sources);
    figure.text = share(part, view);
    figure.workings.push(working);
    let place = match place {
        Place::First => "first",
        Place::Middle => "middle",
        Place::Second => "second",
    };
    CordPiece { kind, place, length: figure }
}

/// A number of coils or crossings.
pub(super) fn count(number: f64, view: View) -> String {
    plain(number, if number.fract() == 0.0 { 0 } else { 1 }, view)
}
