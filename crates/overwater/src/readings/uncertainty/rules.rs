//! The rule sets as data: what each is called, what it rests on, and of which year.

/// A rule set for uncertainties.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RuleSet {
    /// First order, from slopes and standard uncertainties.
    Gum,
    /// By drawing from distributions.
    MonteCarlo,
    /// Half-widths added up.
    School,
}

impl RuleSet {
    /// Every rule set.
    pub const ALL: [RuleSet; 3] = [RuleSet::Gum, RuleSet::MonteCarlo, RuleSet::School];

    /// Its name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            RuleSet::Gum => "gum",
            RuleSet::MonteCarlo => "monte_carlo",
            RuleSet::School => "school",
        }
    }

    /// What it rests on, with the year.
    #[must_use]
    pub const fn source(self) -> &'static str {
        match self {
            RuleSet::Gum => {
                "JCGM 100:2008, Guide to the expression of uncertainty in measurement, clauses 4, 5, 6 and annex G"
            }
            RuleSet::MonteCarlo => {
                "JCGM 101:2008, Supplement 1 to the GUM: propagation of distributions using a Monte Carlo method, clauses 7.2 to 7.9"
            }
            RuleSet::School => "common practice of school examinations as met in 2026, no single source",
        }
    }
}
