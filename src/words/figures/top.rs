//! How near the crotch the climber comes.

use super::Rows;
use crate::climber::{EXTRA_PAIR, SEAT_BELOW};
use crate::field::Spread;
use crate::source::{GEOMETRY, JUDGED};

impl Rows<'_> {
    pub(super) fn top(&mut self) {
        let top = &self.answer.top;
        let sources = &[GEOMETRY, JUDGED];
        self.add("topGap", "your attachment below the crotch, at the nearest", &top.gap, "{M}", &[JUDGED]);
        match top.extra_pairs {
            Some(pairs) => {
                self.line("Stack length, with the upper hitch right under the crotch or the knot there.", &[], &[]);
                if pairs > 0 {
                    let (pairs, each) = (Spread::point(pairs as f64), const { Spread::point(EXTRA_PAIR) });
                    self.more(" It counts {c0} for each pair of turns beyond the first: {0}.", &[&each, &pairs], &[]);
                }
            }
            None => self.line("One hitch or knot and its connector, right under the crotch.", &[], &[]),
        }
        let (Some(seat), Some(crotch)) = (&top.seat, top.crotch) else { return };
        self.add("topSeat", "your seat above the ground, at the highest", seat, "{M}", sources);
        self.line(
            "height of the crotch − this gap − how far the seat hangs below the attachment = {M} − {M} − {M} = {M}",
            &[&Spread::point(crotch), &top.gap, &SEAT_BELOW, seat],
            &[],
        );
        let [low, high] = [SEAT_BELOW.low, SEAT_BELOW.high].map(Spread::point);
        self.line(
            "In a harness under load the seat hangs {c0} to {c0} below the attachment, as this stands at the lap or near the breastbone.",
            &[&low, &high],
            &[],
        );
        let (Some(over), Some(edge)) = (&top.over_edge, top.edge) else { return };
        self.add("seatOverEdge", "your seat above the edge, at the highest", over, "{M}", sources);
        self.line("{M} − {M} = {M}", &[seat, &Spread::point(edge), over], &[]);
        let template = if over.likely < 0.0 {
            "The rig ends with your seat still about {M} below the edge."
        } else {
            "Before the rig ends your seat comes about {M} above the edge."
        };
        self.line(template, &[&Spread::point(over.likely.abs())], &[]);
    }
}
