//! Random plans for a rope that are in order.

use crate::plans::{Plan, draft, value};
use boughline::question::Question;
use boughline::question::rope_length::Inputs;
use proptest::prelude::*;

/// Every field said or not, but those that are needed always.
pub(crate) fn rope_plans() -> impl Strategy<Value = Plan> {
    let mut fields = Vec::new();
    for row in Question::RopeLength.fields() {
        let said = value(row).prop_map(|said| (row.id, said));
        let needed = ["crotchHeight", "anchor"].contains(&row.id);
        fields.push(if needed { said.prop_map(Some).boxed() } else { prop::option::of(said).boxed() });
    }
    fields
        .prop_map(|fields: Vec<Option<_>>| fields.into_iter().flatten().collect::<Plan>())
        .prop_filter("the lower hitch must be below the crotch", |plan| Inputs::of(&draft(plan)).is_ok())
}
