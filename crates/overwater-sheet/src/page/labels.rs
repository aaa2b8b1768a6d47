//! Labels above a chart: in rows, so that none lies on another and no leader runs through one.

/// Rows that labels may stand in.
pub(super) const ROWS: usize = 3;
/// Space kept on either side of a label.
const GAP: f64 = 3.0;

/// A label that wants to stand above a place.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Wish {
    /// The middle of what it names.
    pub(super) at: f64,
    /// Its width.
    pub(super) width: f64,
}

/// A label in its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Placed {
    /// Where its leader stands.
    pub(super) leader: f64,
    /// Its left edge.
    pub(super) left: f64,
    /// Its right edge.
    pub(super) right: f64,
    /// Its row, from 0 at the bottom.
    pub(super) row: usize,
}

impl Placed {
    fn is_free_of(&self, other: &Placed) -> bool {
        let apart = self.right + GAP <= other.left || other.right + GAP <= self.left;
        let crossed = |label: &Placed, leader: &Placed| {
            leader.row > label.row && label.left - GAP < leader.leader && leader.leader < label.right + GAP
        };
        (self.row != other.row || apart) && !crossed(self, other) && !crossed(other, self)
    }
}

/// Places labels from left to right between `low` and `high`, each in the lowest row where it is free of all before it;
/// nothing for one that finds no room.
pub(super) fn place(wishes: &[Wish], low: f64, high: f64) -> Vec<Option<Placed>> {
    let mut placed: Vec<Option<Placed>> = Vec::new();
    for wish in wishes {
        let left = (wish.at - wish.width / 2.0).min(high - wish.width).max(low);
        let right = left + wish.width;
        let found = (0..ROWS)
            .map(|row| Placed { leader: wish.at, left, right, row })
            .find(|label| right <= high && placed.iter().flatten().all(|other| label.is_free_of(other)));
        placed.push(found);
    }
    placed
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn labels_wider_than_their_pitch_stand_in_two_rows() {
        let wishes: Vec<Wish> =
            (0..12).map(|i| Wish { at: 50.0 + 36.0 * f64::from(i), width: 60.0 }).collect();
        let placed = place(&wishes, 0.0, 600.0);
        let rows: Vec<usize> = placed.iter().flatten().map(|label| label.row).collect();
        assert_eq!(rows, [0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1]);
    }

    #[test]
    fn a_label_stays_inside() {
        let placed = place(&[Wish { at: 2.0, width: 60.0 }, Wish { at: 598.0, width: 60.0 }], 0.0, 600.0);
        let edges: Vec<(f64, f64)> = placed.iter().flatten().map(|label| (label.left, label.right)).collect();
        assert_eq!(edges, [(0.0, 60.0), (540.0, 600.0)]);
        assert_eq!(place(&[Wish { at: 5.0, width: 20.0 }], 0.0, 10.0), [None]);
    }

    proptest! {
        #[test]
        fn no_label_lies_on_another_and_no_leader_runs_through_one(
            mut places in prop::collection::vec((0.0..640.0_f64, 5.0..120.0_f64), 1..40)
        ) {
            places.sort_by(|a, b| a.0.total_cmp(&b.0));
            let wishes: Vec<Wish> = places.iter().map(|(at, width)| Wish { at: *at, width: *width }).collect();
            let placed = place(&wishes, 0.0, 640.0);
            prop_assert_eq!(placed.len(), wishes.len());
            prop_assert!(placed.first().is_some_and(Option::is_some));
            let labels: Vec<Placed> = placed.into_iter().flatten().collect();
            for (i, a) in labels.iter().enumerate() {
                prop_assert!(a.left >= 0.0 && a.right <= 640.0 && a.row < ROWS);
                for b in labels.iter().skip(i + 1) {
                    prop_assert!(a.row != b.row || a.right < b.left || b.right < a.left);
                    for (label, leader) in [(a, b), (b, a)] {
                        let through = label.left < leader.leader && leader.leader < label.right;
                        prop_assert!(!(through && leader.row > label.row));
                    }
                }
            }
        }
    }
}
