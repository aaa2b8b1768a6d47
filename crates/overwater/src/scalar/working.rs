//! A number that remembers how it came about: the worked solution.

use std::cell::RefCell;
use std::ops::{Add, Div, Mul, Neg, Sub};

use super::{Constant, Scalar, Symbol, Unity, raise};
use crate::units::significant;

/// Where the steps of a solution are written down while the formula runs.
#[derive(Debug, Default)]
pub struct Tape {
    nodes: RefCell<Vec<Node>>,
    steps: RefCell<Vec<(&'static Symbol, usize)>>,
}

#[derive(Debug, Clone, Copy)]
enum Node {
    Number(f64),
    Constant(&'static Constant),
    /// An input, with its value in its school unit.
    Input(&'static Symbol, f64),
    /// An earlier step, with its value in its school unit.
    Step(&'static Symbol, f64),
    Pair(Operation, usize, usize),
    Negative(usize),
    Power(usize, u32),
    Function(Function, usize),
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Operation {
    Plus,
    Minus,
    Times,
    Over,
}

#[derive(Debug, Clone, Copy)]
enum Function {
    Exponential,
    Logarithm,
    Root,
    Sine,
}

impl Tape {
    /// An empty tape.
    #[must_use]
    pub fn new() -> Self {
        Tape::default()
    }

    fn add(&self, node: Node) -> usize {
        let mut nodes = self.nodes.borrow_mut();
        nodes.push(node);
        nodes.len() - 1
    }

    /// The solution as far as it has been written.
    #[must_use]
    pub fn solution(&self) -> Solution {
        Solution { nodes: self.nodes.borrow().clone(), steps: self.steps.borrow().clone() }
    }
}

/// A number and its place on a [`Tape`].
#[derive(Debug, Clone, Copy)]
pub struct Working<'t> {
    value: f64,
    origin: Origin<'t>,
}

#[derive(Debug, Clone, Copy)]
enum Origin<'t> {
    Number,
    Constant(&'static Constant),
    Tape(&'t Tape, usize),
}

impl<'t> Working<'t> {
    /// An input; it is named when the formula takes it in with [`Scalar::enter`].
    #[must_use]
    pub fn input(tape: &'t Tape, value: f64) -> Self {
        Working { value, origin: Origin::Tape(tape, tape.add(Node::Number(value))) }
    }

    /// The number.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.value
    }

    fn tape(&self) -> Option<&'t Tape> {
        match self.origin {
            Origin::Tape(tape, _) => Some(tape),
            Origin::Number | Origin::Constant(_) => None,
        }
    }

    fn place(&self, tape: &Tape) -> usize {
        match self.origin {
            Origin::Tape(_, index) => index,
            Origin::Number => tape.add(Node::Number(self.value)),
            Origin::Constant(constant) => tape.add(Node::Constant(constant)),
        }
    }

    fn pair(self, operation: Operation, other: Self, value: f64) -> Self {
        let Some(tape) = self.tape().or(other.tape()) else {
            return Working { value, origin: Origin::Number };
        };
        let node = Node::Pair(operation, self.place(tape), other.place(tape));
        Working { value, origin: Origin::Tape(tape, tape.add(node)) }
    }

    fn single(self, value: f64, node: impl Fn(usize) -> Node) -> Self {
        match self.tape() {
            Some(tape) => {
                let node = node(self.place(tape));
                Working { value, origin: Origin::Tape(tape, tape.add(node)) }
            }
            None => Working { value, origin: Origin::Number },
        }
    }
}

macro_rules! arithmetic {
    ($operator:ident, $method:ident, $sign:tt, $operation:expr) => {
        impl $operator for Working<'_> {
            type Output = Self;
            fn $method(self, other: Self) -> Self {
                self.pair($operation, other, self.value $sign other.value)
            }
        }

        impl $operator<f64> for Working<'_> {
            type Output = Self;
            fn $method(self, other: f64) -> Self {
                self.pair($operation, Scalar::number(other), self.value $sign other)
            }
        }
    };
}

arithmetic!(Add, add, +, Operation::Plus);
arithmetic!(Sub, sub, -, Operation::Minus);
arithmetic!(Mul, mul, *, Operation::Times);
arithmetic!(Div, div, /, Operation::Over);

impl Neg for Working<'_> {
    type Output = Self;
    fn neg(self) -> Self {
        self.single(-self.value, Node::Negative)
    }
}

impl Div<Unity> for Working<'_> {
    type Output = Self;
    fn div(self, _: Unity) -> Self {
        self
    }
}

impl Scalar for Working<'_> {
    fn number(value: f64) -> Self {
        Working { value, origin: Origin::Number }
    }

    fn constant(constant: &'static Constant) -> Self {
        Working { value: constant.si(), origin: Origin::Constant(constant) }
    }

    fn over(self, constant: &'static Constant) -> Self {
        let value = self.value * (1.0 / constant.si());
        self.pair(Operation::Over, Self::constant(constant), value)
    }

    fn enter(self, symbol: &'static Symbol) -> Self {
        let Some(tape) = self.tape() else {
            return Working { value: symbol.unit.to_si(self.value), ..self };
        };
        let named = tape.add(Node::Input(symbol, self.value));
        let index = if symbol.unit.zero == 0.0 {
            named
        } else {
            let zero = tape.add(Node::Number(symbol.unit.zero));
            tape.add(Node::Pair(Operation::Plus, named, zero))
        };
        Working { value: symbol.unit.to_si(self.value), origin: Origin::Tape(tape, index) }
    }

    fn leave(self, symbol: &'static Symbol) -> Self {
        Working { value: symbol.unit.from_si(self.value), origin: self.origin }
    }

    fn checkpoint(self, symbol: &'static Symbol) -> Self {
        let Some(tape) = self.tape() else {
            return self;
        };
        tape.steps.borrow_mut().push((symbol, self.place(tape)));
        let named = tape.add(Node::Step(symbol, symbol.unit.from_si(self.value)));
        // The step's own node is remembered by its position: the one before the name that now stands for it.
        Working { value: self.value, origin: Origin::Tape(tape, named) }
    }

    fn exp(self) -> Self {
        self.single(Scalar::exp(self.value), |x| Node::Function(Function::Exponential, x))
    }

    fn ln(self) -> Self {
        self.single(Scalar::ln(self.value), |x| Node::Function(Function::Logarithm, x))
    }

    fn sqrt(self) -> Self {
        self.single(self.value.sqrt(), |x| Node::Function(Function::Root, x))
    }

    fn sin(self) -> Self {
        self.single(Scalar::sin(self.value), |x| Node::Function(Function::Sine, x))
    }

    fn look_up<const N: usize>(self, find: impl Fn(f64) -> [f64; N]) -> [Self; N] {
        find(self.value).map(Self::number)
    }

    fn where_within(self, tested: Self, least: f64, greatest: f64) -> Self {
        Working { value: self.value.where_within(tested.value, least, greatest), origin: self.origin }
    }

    fn power(self, exponent: u32) -> Self {
        self.single(raise(self.value, exponent), |x| Node::Power(x, exponent))
    }
}

/// How a solution is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Notation {
    /// Plain text.
    Text,
    /// LaTeX mathematics.
    Latex,
}

/// A worked solution: the named steps of a formula in order.
#[derive(Debug, Clone)]
pub struct Solution {
    nodes: Vec<Node>,
    steps: Vec<(&'static Symbol, usize)>,
}

/// One step of a [`Solution`].
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedStep {
    /// What was worked out.
    pub symbol: &'static Symbol,
    /// The relation in symbols, without what it is equal to.
    pub relation: String,
    /// The same with numbers and units put in.
    pub numbers: String,
    /// The value in the symbol's unit.
    pub value: f64,
    /// The value with its unit, to five significant figures.
    pub result: String,
}

impl Solution {
    /// The steps in order, written in the given notation.
    #[must_use]
    pub fn steps(&self, notation: Notation) -> Vec<SolvedStep> {
        self.steps
            .iter()
            .map(|&(symbol, index)| {
                let value = self.value_of(symbol, index);
                SolvedStep {
                    symbol,
                    relation: self.write(index, notation, false).0,
                    numbers: self.write(index, notation, true).0,
                    value,
                    result: quantity(five_figures(value), symbol, notation),
                }
            })
            .collect()
    }

    /// Every constant that was put in, in the order of first use.
    #[must_use]
    pub fn constants(&self) -> Vec<&'static Constant> {
        let mut found: Vec<&'static Constant> = Vec::new();
        for node in &self.nodes {
            if let Node::Constant(constant) = node
                && !found.contains(constant)
            {
                found.push(constant);
            }
        }
        found
    }

    /// The named node that a checkpoint put down for the expression at `index`.
    fn value_of(&self, symbol: &'static Symbol, index: usize) -> f64 {
        self.nodes
            .iter()
            .skip(index + 1)
            .find_map(|node| match node {
                Node::Step(found, value) if std::ptr::eq(*found, symbol) => Some(*value),
                _ => None,
            })
            .unwrap_or(f64::NAN)
    }

    /// The expression and how tightly it binds: 1 sums, 2 products, 3 signs, 4 powers, 5 everything closed.
    fn write(&self, index: usize, notation: Notation, numbers: bool) -> (String, u8) {
        let Some(node) = self.nodes.get(index) else {
            return (String::new(), 5);
        };
        let given = |value: f64, symbol: &Symbol| {
            // A number with its unit is a product, and a negative one needs brackets too, before a power.
            let closed = value >= 0.0 && symbol.unit.text.is_empty();
            (quantity(value, symbol, notation), if closed { 5 } else { 3 })
        };
        let sub = |index: usize, least: u8| {
            let (text, binding) = self.write(index, notation, numbers);
            if binding < least { bracket(&text, notation) } else { text }
        };
        // What begins with a sign and follows another operation would be read as a difference.
        let after = |index: usize, least: u8| {
            let text = sub(index, least);
            if text.starts_with('-') { bracket(&text, notation) } else { text }
        };
        match *node {
            Node::Number(value) => (plain(value, notation), if value < 0.0 { 3 } else { 5 }),
            Node::Constant(constant) if numbers => given(constant.value, &constant.symbol),
            Node::Input(symbol, value) if numbers => given(value, symbol),
            Node::Step(symbol, value) if numbers => given(five_figures(value), symbol),
            Node::Constant(Constant { symbol, .. }) | Node::Input(symbol, _) | Node::Step(symbol, _) => {
                (name(symbol, notation), 5)
            }
            Node::Negative(x) => (format!("-{}", after(x, 3)), 3),
            Node::Power(x, exponent) => match notation {
                Notation::Text => (format!("{}^{exponent}", sub(x, 5)), 4),
                Notation::Latex => (format!("{}^{{{exponent}}}", sub(x, 5)), 4),
            },
            Node::Function(function, x) => (self.function(function, x, notation, numbers), 5),
            Node::Pair(Operation::Plus, a, b) => (format!("{} + {}", sub(a, 1), after(b, 2)), 1),
            Node::Pair(Operation::Minus, a, b) => (format!("{} - {}", sub(a, 1), after(b, 2)), 1),
            Node::Pair(Operation::Times, a, b) => {
                let factor = after(b, 3);
                let sign = match notation {
                    Notation::Text => " × ",
                    // A symbol may stand beside another, a number may not.
                    Notation::Latex if numbers || factor.starts_with(|sign: char| sign.is_ascii_digit()) => {
                        r" \times "
                    }
                    Notation::Latex => r"\,",
                };
                (format!("{}{sign}{factor}", sub(a, 2)), 2)
            }
            Node::Pair(Operation::Over, a, b) => match notation {
                Notation::Text => (format!("{} / {}", sub(a, 2), after(b, 3)), 2),
                Notation::Latex => (format!(r"\frac{{{}}}{{{}}}", sub(a, 0), sub(b, 0)), 2),
            },
        }
    }

    fn function(&self, function: Function, x: usize, notation: Notation, numbers: bool) -> String {
        let (inner, _) = self.write(x, notation, numbers);
        match (function, notation) {
            (Function::Exponential, Notation::Text) => format!("exp({inner})"),
            (Function::Logarithm, Notation::Text) => format!("ln({inner})"),
            (Function::Root, Notation::Text) => format!("√({inner})"),
            (Function::Sine, Notation::Text) => format!("sin({inner})"),
            (Function::Sine, Notation::Latex) => format!(r"\sin\left({inner}\right)"),
            (Function::Exponential, Notation::Latex) => format!(r"\exp\left({inner}\right)"),
            (Function::Logarithm, Notation::Latex) => format!(r"\ln\left({inner}\right)"),
            (Function::Root, Notation::Latex) => format!(r"\sqrt{{{inner}}}"),
        }
    }
}

fn bracket(text: &str, notation: Notation) -> String {
    match notation {
        Notation::Text => format!("({text})"),
        Notation::Latex => format!(r"\left({text}\right)"),
    }
}

fn name(symbol: &Symbol, notation: Notation) -> String {
    match notation {
        Notation::Text => symbol.text.to_owned(),
        Notation::Latex => symbol.latex.to_owned(),
    }
}

/// A bare number with at most nine figures and no trailing zeros.
fn plain(value: f64, notation: Notation) -> String {
    let text = significant(value, 9);
    let (mantissa, exponent) = match text.split_once('e') {
        Some((mantissa, exponent)) => (mantissa, Some(exponent)),
        None => (text.as_str(), None),
    };
    let mantissa =
        if mantissa.contains('.') { mantissa.trim_end_matches('0').trim_end_matches('.') } else { mantissa };
    match (exponent, notation) {
        (None, _) => mantissa.to_owned(),
        (Some(power), Notation::Text) => format!("{mantissa}e{power}"),
        (Some(power), Notation::Latex) => format!(r"{mantissa} \times 10^{{{power}}}"),
    }
}

fn quantity(value: f64, symbol: &Symbol, notation: Notation) -> String {
    let number = plain(value, notation);
    match (symbol.unit.text, notation) {
        ("", _) => number,
        (unit, Notation::Text) => format!("{number} {unit}"),
        (_, Notation::Latex) => format!(r"{number}\,{}", symbol.unit.latex),
    }
}

/// Five figures are enough to follow a solution by hand; given values seldom have more.
fn five_figures(value: f64) -> f64 {
    significant(value, 5).parse().unwrap_or(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scalar::symbol::Source;
    use crate::units;

    static WHERE: Source = Source { text: "made up for this test", year: Some(2026) };
    static LENGTH: Symbol = Symbol {
        id: "length",
        text: "l",
        latex: "l",
        name: "length",
        unit: &units::CENTIMETRE,
        source: None,
    };
    static WARM: Symbol = Symbol {
        id: "warm",
        text: "t",
        latex: "t",
        name: "temperature",
        unit: &units::DEGREE_CELSIUS,
        source: None,
    };
    static ABSOLUTE: Symbol = Symbol {
        id: "absolute",
        text: "T",
        latex: "T",
        name: "thermodynamic temperature",
        unit: &units::KELVIN,
        source: Some(&WHERE),
    };
    static RESULT: Symbol = Symbol {
        id: "result",
        text: "x",
        latex: "x",
        name: "result",
        unit: &units::ONE,
        source: Some(&WHERE),
    };
    static FACTOR: Constant = Constant {
        symbol: Symbol {
            id: "factor",
            text: "a₁",
            latex: "a_1",
            name: "factor",
            unit: &units::ONE,
            source: Some(&WHERE),
        },
        value: -2.5,
        standard_uncertainty: None,
    };

    fn formula<S: Scalar>(length: S, warm: S) -> S {
        let l = length.enter(&LENGTH);
        let t = warm.enter(&WARM).checkpoint(&ABSOLUTE);
        let a = S::constant(&FACTOR);
        ((a * l.power(2) - (t / (t + 1.0)).sqrt()) / -(l - (a - l)).exp()).checkpoint(&RESULT)
    }

    #[test]
    fn relation_numbers_and_value_of_each_step() {
        let tape = Tape::new();
        let x = formula(Working::input(&tape, 50.0), Working::input(&tape, 21.0));
        assert_eq!(x.value().to_bits(), formula(50.0, 21.0).to_bits());
        let steps = tape.solution().steps(Notation::Text);
        assert_eq!(steps.len(), 2);
        assert_eq!(steps[0].relation, "t + 273.15");
        assert_eq!(steps[0].numbers, "21 degC + 273.15");
        assert_eq!(steps[0].result, "294.15 K");
        assert_eq!(steps[1].relation, "(a₁ × l^2 - √(T / (T + 1))) / (-exp(l - (a₁ - l)))");
        assert_eq!(
            steps[1].numbers,
            "(-2.5 × (50 cm)^2 - √(294.15 K / (294.15 K + 1))) / (-exp(50 cm - (-2.5 - 50 cm)))"
        );
        assert_eq!(steps[1].value.to_bits(), x.value().to_bits());
    }

    #[test]
    fn latex_uses_fractions_and_sized_brackets() {
        let tape = Tape::new();
        formula(Working::input(&tape, 50.0), Working::input(&tape, 21.0));
        let steps = tape.solution().steps(Notation::Latex);
        assert_eq!(
            steps[1].relation,
            r"\frac{a_1\,l^{2} - \sqrt{\frac{T}{T + 1}}}{-\exp\left(l - \left(a_1 - l\right)\right)}"
        );
        assert_eq!(steps[0].numbers, r"21\,{}^\circ\mathrm{C} + 273.15");
    }

    #[test]
    fn what_has_a_sign_stands_in_brackets_after_an_operation() {
        let tape = Tape::new();
        let l = Working::input(&tape, -3.0).enter(&LENGTH);
        let a = Working::constant(&FACTOR);
        let x = (l * -2.0 + Working::number(-5.0) * l) - a * (l * 4.0) - -(a * l) + 2.0;
        x.checkpoint(&RESULT);
        let step = |notation| tape.solution().steps(notation).pop().unwrap();
        assert_eq!(step(Notation::Text).relation, "l × (-2) + (-5 × l) - a₁ × (l × 4) - (-(a₁ × l)) + 2");
        assert_eq!(
            step(Notation::Text).numbers,
            "-3 cm × (-2) + (-5 × (-3 cm)) - (-2.5 × (-3 cm × 4)) - (-(-2.5 × (-3 cm))) + 2"
        );
        assert_eq!(
            step(Notation::Latex).relation,
            r"l\,\left(-2\right) + \left(-5\,l\right) - a_1\,\left(l \times 4\right) - \left(-\left(a_1\,l\right)\right) + 2"
        );
    }

    #[test]
    fn constants_are_listed_once() {
        let tape = Tape::new();
        formula(Working::input(&tape, 50.0), Working::input(&tape, 21.0));
        assert_eq!(tape.solution().constants(), [&FACTOR]);
    }
}
