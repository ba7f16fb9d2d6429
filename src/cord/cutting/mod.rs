//! Cutting cords out of the hanks there are to buy: the least price or length, then the fewest hanks, then the largest
//! single remainder.
//!
//! ```text
//!   cords of a hank + a kerf for every cut between them <= hank - end allowance
//!   remainder = what is left behind one cut more
//! ```
//!
//! | file | knows |
//! |---|---|
//! | `order` | what is wanted and what there is; a plan |
//! | `aims` | the three aims as one number |
//! | `shop` | an order as the search sees it: weights, room, costs, all in order |
//! | `exact` | the best plan of up to 12 cords, by subsets |
//! | `sums` | which lengths any of the cords add up to |
//! | `cover` | what any hanks must cover together, whatever is cut out of which |
//! | `combos` | the hanks to buy, cheapest first, that pass every cover |
//! | `fill` | quick ways to cut the cords out of given hanks |
//! | `pack` | whether they can be cut out of given hanks at all |
//! | `remainder` | the longest that can be left |
//! | `search` | all of these together, within an effort |
//!
//! # Guarantees
//! Whole numbers throughout, so the same plan on every machine; the order in which cords and hanks are given is of no
//! account. Effort is counted in steps, never timed.
//!
//! # Example
//! ```
//! use boughline::cord::cutting::{Cutting, Order, Stock};
//!
//! // Tenths of a millimetre: two loops of 1.8 m and one of 2.1 m, out of hanks of 5 or 10 m.
//! let hank = |length| Stock { length, price: None, limit: None };
//! let order = Order { cords: vec![18_000, 18_000, 21_000], stocks: vec![hank(50_000), hank(100_000)], kerf: 50, end: 500 };
//! let best = Cutting::of(&order).ok().and_then(|cutting| cutting.so_far()).ok_or(())?;
//! assert_eq!(best.plan.hanks.len(), 1);
//! assert_eq!((best.cost, best.proved), (100_000, true));
//! # Ok::<(), ()>(())
//! ```

mod aims;
mod combos;
mod cover;
mod exact;
mod fill;
mod order;
mod pack;
mod remainder;
mod search;
mod shop;
mod sums;

pub use exact::EXACT_CORDS;
pub use order::{Cut, Fault, MOST_CORDS, Order, Plan, Stock};
pub use search::{Best, Cutting};
