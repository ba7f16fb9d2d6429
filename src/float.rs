//! The transcendental functions, from `libm`: the same bits natively and in WebAssembly, which std's are not.
//! The only file that names `libm`.

/// The exponential function.
pub(crate) fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// The cosine of an angle in radians.
pub(crate) fn cos(x: f64) -> f64 {
    libm::cos(x)
}

/// The sine of an angle in radians.
pub(crate) fn sin(x: f64) -> f64 {
    libm::sin(x)
}

/// The natural logarithm.
pub(crate) fn ln(x: f64) -> f64 {
    libm::log(x)
}
