//! What is wanted, what there is, and a plan.

/// The most cords of one kind: so that three aims fit in 64 bits (judged; nobody cuts more for one tree).
pub const MOST_CORDS: usize = 200;

/// A hank that can be had.
///
/// # Units
/// Tenths of a millimetre: an inch is 254 of them and a millimetre 10, so both are whole. Prices in hundredths.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stock {
    /// Its length, 1 km at most.
    pub length: u32,
    /// Its price, 100,000.00 at most. Nought is what one has already.
    pub price: Option<u32>,
    /// How many of it there are; none where there are enough.
    pub limit: Option<u32>,
}

/// What is wanted, of one diameter and fibre, and what it can be cut out of.
///
/// # Units
/// Tenths of a millimetre.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Order {
    /// The cut length of every single cord.
    pub cords: Vec<u32>,
    /// The hanks that can be had.
    pub stocks: Vec<Stock>,
    /// What every cut takes.
    pub kerf: u32,
    /// What is of no use at the ends of a hank.
    pub end: u32,
}

impl Order {
    /// Whether price is the first aim: it is where every hank has one.
    #[must_use]
    pub fn is_priced(&self) -> bool {
        let mut priced = !self.stocks.is_empty();
        for stock in &self.stocks {
            priced &= stock.price.is_some();
        }
        priced
    }

    /// What a hank counts towards the first aim: its price, or else its length, and nought of what one has already.
    #[must_use]
    pub fn cost(&self, stock: &Stock) -> u32 {
        match stock.price {
            Some(price) if self.is_priced() || price == 0 => price,
            _ => stock.length,
        }
    }
}

/// A hank of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cut {
    /// Which of the order's stocks.
    pub stock: usize,
    /// Which of the order's cords, the longest first.
    pub cords: Vec<usize>,
    /// What is left behind the last cut, without the end allowance.
    pub left: u32,
}

/// What is cut out of what: every cord once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    /// The hanks, the longest first.
    pub hanks: Vec<Cut>,
}

/// Why there is no plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// A cord is longer than any hank can give: which, and the most that one gives.
    TooLong {
        /// The place of the longest among the order's cords.
        cord: usize,
        /// The longest cord that can be cut.
        most: u32,
    },
    /// More than [`MOST_CORDS`], or a length or price beyond what is reckoned with.
    TooMuch,
}
