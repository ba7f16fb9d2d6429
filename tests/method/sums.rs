//! Sums as they are printed, worked out: a reader of its own, which knows nothing of the library.

/// What a sum comes to; what is wrong where it is none.
pub(super) fn value(sum: &str, known: &[(String, f64)]) -> Result<f64, String> {
    let mut reader = Reader { pieces: pieces(sum), at: 0, known };
    let value = reader.added()?;
    if reader.at == reader.pieces.len() { Ok(value) } else { Err(format!("{:?} is left", reader.peek())) }
}

/// The symbols of a line, without functions and numbers.
pub(super) fn names(line: &str) -> Vec<String> {
    const FUNCTIONS: [&str; 7] = ["exp", "ln", "sin", "cos", "min", "max", "√"];
    let starts = |piece: &String| piece.chars().next().is_some_and(char::is_alphabetic);
    let pieces = pieces(line).into_iter();
    pieces.filter(|piece| starts(piece) && !FUNCTIONS.contains(&piece.as_str())).collect()
}

fn pieces(sum: &str) -> Vec<String> {
    let mut pieces: Vec<String> = Vec::new();
    let mut open = false;
    for letter in sum.chars() {
        let belongs = letter.is_alphanumeric() || letter == '.' || ('₀'..='₉').contains(&letter);
        match pieces.last_mut().filter(|_| open && belongs) {
            Some(piece) => piece.push(letter),
            None if letter.is_whitespace() => {}
            None => pieces.push(letter.to_string()),
        }
        open = belongs;
    }
    pieces
}

struct Reader<'a> {
    pieces: Vec<String>,
    at: usize,
    known: &'a [(String, f64)],
}

impl Reader<'_> {
    fn peek(&self) -> &str {
        self.pieces.get(self.at).map_or("", String::as_str)
    }

    fn takes(&mut self, piece: &str) -> bool {
        let found = self.peek() == piece;
        self.at += usize::from(found);
        found
    }

    fn added(&mut self) -> Result<f64, String> {
        let mut sum = self.multiplied()?;
        loop {
            if self.takes("+") {
                sum += self.multiplied()?;
            } else if self.takes("−") {
                sum -= self.multiplied()?;
            } else {
                return Ok(sum);
            }
        }
    }

    fn multiplied(&mut self) -> Result<f64, String> {
        let mut product = self.raised()?;
        loop {
            if self.takes("×") {
                product *= self.raised()?;
            } else if self.takes("/") {
                product /= self.raised()?;
            } else {
                return Ok(product);
            }
        }
    }

    fn raised(&mut self) -> Result<f64, String> {
        let base = self.single()?;
        #[expect(clippy::disallowed_methods, reason = "it is to differ from the library's own")]
        if self.takes("^") { Ok(base.powf(self.single()?)) } else { Ok(base) }
    }

    #[expect(clippy::disallowed_methods, reason = "it is to differ from the library's own")]
    fn single(&mut self) -> Result<f64, String> {
        if self.takes("−") {
            return Ok(-self.multiplied()?);
        }
        if self.takes("(") {
            let inside = self.added()?;
            return if self.takes(")") { Ok(inside) } else { Err("a bracket is open".to_owned()) };
        }
        let name = self.peek().to_owned();
        self.at += 1;
        if let Ok(number) = name.parse() {
            return Ok(number);
        }
        if self.takes("(") {
            let mut given = vec![self.added()?];
            while self.takes(",") {
                given.push(self.added()?);
            }
            if !self.takes(")") {
                return Err("a bracket is open".to_owned());
            }
            return match (name.as_str(), given.as_slice()) {
                ("exp", [x]) => Ok(x.exp()),
                ("ln", [x]) => Ok(x.ln()),
                ("sin", [x]) => Ok(x.sin()),
                ("cos", [x]) => Ok(x.cos()),
                ("√", [x]) => Ok(x.sqrt()),
                ("min", [x, y]) => Ok(x.min(*y)),
                ("max", [x, y]) => Ok(x.max(*y)),
                _ => Err(format!("{name} is no function")),
            };
        }
        let found = self.known.iter().rev().find(|(symbol, _)| *symbol == name);
        found.map(|(_, value)| *value).ok_or_else(|| format!("nobody knows {name}"))
    }
}
