//! Facts to sentences, for a [`View`](crate::quantity::View). The only storey that words what a person reads as an answer.

mod advantage;
mod assumed;
mod before;
mod body_caution;
mod can_i_climb;
mod capped;
mod caution;
mod chart;
mod coming_down;
mod cord_caution;
mod cord_figures;
mod cord_length;
mod cord_piece;
mod cut_caution;
mod cut_cord;
mod cut_gear;
mod cut_list;
mod cut_plan;
mod cut_proof;
mod cut_rope;
mod descent_caution;
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
#[cfg(not(boughline_terse))]
mod method;
mod misread;
mod missing;
mod notice;
mod own_rig;
mod part;
mod phrase;
mod record;
mod refusal;
mod report;
mod rescue;
mod rescue_caution;
mod rescue_way;
mod rope_buy;
mod rope_caution;
mod rope_length;
mod rope_measure;
mod rope_state;
mod row;
mod second;
mod shares;
mod sheet;
mod slip;
mod source;
mod step;
mod template;
mod top_out;
mod verdict;

pub use advantage::advantage_report;
pub use before::BeforeLine;
pub use can_i_climb::report;
pub use chart::{Axis, Band, Chart, ChartLine, Mark, Point};
pub use coming_down::{DescentReport, descent_report};
pub use cord_length::cord_report;
pub use cut_list::{ListPart, list_rows};
pub use cut_plan::{CutKind, CutLine, CutReport, HankLine, cut_report};
pub use error::{error_lines, message};
pub use going::{GoingReport, GoingRow};
pub use helps::{HelpLine, HelpsReport, helps_report};
pub use loads::loads_report;
pub use map::{FeasibilityMap, MapPlace, MapRig, map_report};
#[cfg(not(boughline_terse))]
pub use method::method;
pub use notice::notice;
pub use own_rig::rig_rows;
pub(crate) use record::{IsPlain, Plain};
pub use report::{
    AdvantageReport, CautionLine, CordPiece, CordReport, CordShape, Drawing, DrawnRope, DrawnStop, ErrorLine, Figure,
    LegLine, Level, LimbLine, LoadLine, LoadState, LoadsReport, PartLine, Report, RigLine, RigRow, RopeReport,
    RopeState, SourceLine, Strand, Tension, VerdictLine, WorkDone,
};
pub use rescue::{HaulLine, RescueReport, rescue_report};
pub use rescue_way::{StageLine, WayLine};
pub use rope_length::rope_report;
pub use row::{ChoiceLine, RowLine, row_line};
pub use sheet::{Block, Format, Section, Sheet, Subject, as_text, sheet_text, trip_sheet};
pub use source::source_line;
pub use step::{StepLine, StepStop};
