//! What this will never say, whatever is entered.

use super::Chapter;

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "never",
        "What this will never say",
        "Whatever is entered, no page, text or program of Boughline says any of these things, nor anything that comes to the same. The best there is to say is within reach on paper, and what is missing before it is a plan. A test reads everything that it can tell for words of leave and of promise.",
        Vec::new(),
    )
    .note("never that a climb is safe", "It reckons force, length and time. Wood, weather, wear and mistakes are in none of them.", &[])
    .note("never that you may climb", "Nobody here has seen you, the tree or the gear. That is for you to decide, with a qualified climber who has.", &[])
    .note("never that a part, knot, hitch, limb or tree will hold", "A figure is of new gear and of clear wood in a test. It stands beside a load to rule things out; that it rules nothing out is no proof.", &[])
    .note("never that a strength is enough", "It stands beside a published minimum. Whether it suffices is for a qualified person with the gear in hand.", &[])
    .note("never that a maker’s limit can be passed", "Makers know what they tested. Instructions and labels win over any number here, and so do local codes and licensed practice.", &[])
    .note("never that a check can be left out", "A hitch is set, dressed and tested low down each time, and somebody else looks. No sum stands in for looking.", &[])
    .note("never that nobody need be there", "Somebody who hangs still has minutes. Two people at all tree climbing, one of them able and equipped to rescue at once.", &[])
    .note("never that training can be left out", "Arithmetic is no training: it teaches nobody how to tie, look, change over or get somebody down.", &[])
    .note("never that a number stands in for a trial at knee height", "Your own strokes on the very rig show what no figure here knows: your losses, your tiring and your mistakes.", &[])
    .note("never that a way down or a rescue will work", "Times of rescues are judged, and friction changes with rope, wear and wet. Only a rehearsal low down tells.", &[])
    .note("never that a time is safe to hang", "Some faint within minutes and without warning. The clocks here say when it is too late, not until when nothing happens.", &[])
    .note("never that the likely figure is the one to plan on", "Ranges are shown, and whatever holds, reaches or lowers somebody is planned on its worse end.", &[])
}
