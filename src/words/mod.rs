//! Facts to sentences, for a [`View`](crate::quantity::View). The only storey that words what a person reads as an answer.

mod advantage;
mod assumed;
mod body_caution;
mod can_i_climb;
mod capped;
mod caution;
mod chart;
mod cord_caution;
mod cord_figures;
mod cord_length;
mod cord_piece;
mod cut_caution;
mod cut_gear;
mod cut_list;
mod cut_plan;
mod cut_proof;
mod drawing;
mod error;
mod figure;
mod figures;
mod first;
mod going;
mod helps;
mod known_caution;
mod leg_climb;
mod limb;
mod load_caution;
mod load_line;
mod loads;
mod map;
mod misread;
mod missing;
mod notice;
mod own_rig;
mod part;
mod phrase;
mod record;
mod refusal;
mod report;
mod rope_buy;
mod rope_caution;
mod rope_length;
mod rope_measure;
mod rope_state;
mod row;
mod second;
mod shares;
mod slip;
mod source;
mod template;
mod top_out;
mod verdict;

pub use advantage::advantage_report;
pub use can_i_climb::report;
pub use chart::{Axis, Band, Chart, ChartLine, Mark, Point};
pub use cord_length::cord_report;
pub use cut_list::{ListPart, list_rows};
pub use cut_plan::{CutKind, CutLine, CutReport, HankLine, cut_report};
pub use error::{error_lines, message};
pub use going::{GoingReport, GoingRow};
pub use helps::{HelpLine, HelpsReport, helps_report};
pub use loads::loads_report;
pub use map::{FeasibilityMap, MapPlace, MapRig, map_report};
pub use notice::notice;
pub use own_rig::rig_rows;
pub(crate) use record::{IsPlain, Plain};
pub use report::{
    AdvantageReport, CautionLine, CordPiece, CordReport, CordShape, Drawing, DrawnRope, DrawnStop, ErrorLine, Figure,
    LegLine, Level, LimbLine, LoadLine, LoadState, LoadsReport, PartLine, Report, RigLine, RigRow, RopeReport,
    RopeState, SourceLine, Strand, Tension, VerdictLine, WorkDone,
};
pub use rope_length::rope_report;
pub use row::{ChoiceLine, RowLine, row_line};
pub use source::source_line;
