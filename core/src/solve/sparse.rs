//! Sparse LU factorisation whose order of work is settled once, from the pattern alone.
//!
//! Takes the places where a Jacobian may be non-zero; gives a plan that factorises `shift·M - J` and solves with it,
//! for all lanes at once, without search, pivoting or allocation. It never checks that a pivot is large: in a
//! linearly implicit step the diagonal is, or the step is rejected.

use std::collections::{BTreeMap, BTreeSet};

/// The places where a square matrix may be non-zero; the diagonal always is among them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pattern {
    size: usize,
    entries: Vec<(usize, usize)>,
}

impl Pattern {
    /// Entries are (row, column), in any order, repeats allowed.
    pub fn new(size: usize, entries: impl IntoIterator<Item = (usize, usize)>) -> Pattern {
        let all: BTreeSet<(usize, usize)> = entries.into_iter().chain((0..size).map(|i| (i, i))).collect();
        assert!(all.iter().all(|&(row, column)| row < size && column < size), "an entry lies outside the matrix");
        Pattern { size, entries: all.into_iter().collect() }
    }

    pub fn size(&self) -> usize {
        self.size
    }

    /// Row-major order: the order in which Jacobian values are handed over.
    pub fn entries(&self) -> &[(usize, usize)] {
        &self.entries
    }

    /// Where an entry stands in that order.
    pub fn position(&self, row: usize, column: usize) -> Option<usize> {
        self.entries.binary_search(&(row, column)).ok()
    }
}

const NONE: u16 = u16::MAX;

/// One entry of the factors: `a - Σ l·u`, then divided by the pivot when below the diagonal.
#[derive(Debug, Clone, Copy)]
struct Entry {
    /// Place in the Jacobian, or `NONE` for fill.
    jacobian: u16,
    /// Component whose mass is added when on the diagonal, else `NONE`.
    mass: u16,
    /// Place of the inverse pivot to multiply by when below the diagonal, else `NONE`.
    pivot: u16,
    products: (u16, u16),
}

/// One row of a triangle: the factors in it, each with the component it multiplies.
#[derive(Debug, Clone, Copy)]
struct Row {
    component: u16,
    inverse_pivot: u16,
    lower: (u16, u16),
    upper: (u16, u16),
}

/// The order of work for one pattern.
#[derive(Debug, Clone)]
pub struct Plan {
    pattern: Pattern,
    entries: Vec<Entry>,
    products: Vec<(u16, u16)>,
    rows: Vec<Row>,
    terms: Vec<(u16, u16)>,
}

impl Plan {
    /// Chooses pivots on the diagonal by Markowitz's count and lays out every product.
    ///
    /// Source: Markowitz, Management Science 3 (1957) 255 (order); Duff, Erisman & Reid, Direct Methods for Sparse
    /// Matrices (1986), chapter 7.
    pub fn new(pattern: &Pattern) -> Plan {
        let order = pivot_order(pattern);
        let filled = with_fill(pattern, &order);
        let place: BTreeMap<(usize, usize), u16> =
            filled.iter().enumerate().map(|(place, &entry)| (entry, narrow(place))).collect();
        let (mut entries, mut products, mut rows, mut terms) = (vec![], vec![], vec![], vec![]);
        for &(i, j) in &filled {
            let start = narrow(products.len());
            products.extend((0..i.min(j)).filter_map(|k| place.get(&(i, k)).copied().zip(place.get(&(k, j)).copied())));
            entries.push(Entry {
                jacobian: pattern.position(order[i], order[j]).map_or(NONE, narrow),
                mass: if i == j { narrow(order[i]) } else { NONE },
                pivot: if i > j { place[&(j, j)] } else { NONE },
                products: (start, narrow(products.len())),
            });
        }
        for i in 0..pattern.size {
            let mut side = |columns: std::ops::Range<usize>| {
                let start = narrow(terms.len());
                terms.extend(columns.filter_map(|j| place.get(&(i, j)).map(|&at| (at, narrow(order[j])))));
                (start, narrow(terms.len()))
            };
            let (lower, upper) = (side(0..i), side(i + 1..pattern.size));
            rows.push(Row { component: narrow(order[i]), inverse_pivot: place[&(i, i)], lower, upper });
        }
        Plan { pattern: pattern.clone(), entries, products, rows, terms }
    }

    pub fn pattern(&self) -> &Pattern {
        &self.pattern
    }

    /// Entries of both factors, fill included.
    pub fn factor_entries(&self) -> usize {
        self.entries.len()
    }

    /// Multiplications of one factorisation.
    pub fn factor_products(&self) -> usize {
        self.products.len()
    }

    /// Factorises `shift·mass - jacobian`. Diagonal places hold the inverse pivots.
    #[inline(always)]
    pub(super) fn factorise<const L: usize>(
        &self,
        shift: f64,
        mass: &[[f64; L]],
        jacobian: &[[f64; L]],
        factors: &mut [[f64; L]],
    ) {
        for (at, entry) in self.entries.iter().enumerate() {
            let mut sum = [0.0; L];
            if entry.jacobian != NONE {
                let a = &jacobian[usize::from(entry.jacobian)];
                for l in 0..L {
                    sum[l] = -a[l];
                }
            }
            if entry.mass != NONE {
                let m = &mass[usize::from(entry.mass)];
                for l in 0..L {
                    sum[l] += shift * m[l];
                }
            }
            for &(lower, upper) in &self.products[usize::from(entry.products.0)..usize::from(entry.products.1)] {
                let (a, b) = (&factors[usize::from(lower)], &factors[usize::from(upper)]);
                for l in 0..L {
                    sum[l] -= a[l] * b[l];
                }
            }
            if entry.mass != NONE {
                for s in &mut sum {
                    *s = 1.0 / *s;
                }
            } else if entry.pivot != NONE {
                let pivot = &factors[usize::from(entry.pivot)];
                for l in 0..L {
                    sum[l] *= pivot[l];
                }
            }
            factors[at] = sum;
        }
    }

    /// Replaces a right-hand side by the solution.
    #[inline(always)]
    pub(super) fn solve<const L: usize>(&self, factors: &[[f64; L]], x: &mut [[f64; L]]) {
        for row in &self.rows {
            let mut sum = x[usize::from(row.component)];
            self.subtract(row.lower, factors, x, &mut sum);
            x[usize::from(row.component)] = sum;
        }
        for row in self.rows.iter().rev() {
            let mut sum = x[usize::from(row.component)];
            self.subtract(row.upper, factors, x, &mut sum);
            let pivot = &factors[usize::from(row.inverse_pivot)];
            for l in 0..L {
                sum[l] *= pivot[l];
            }
            x[usize::from(row.component)] = sum;
        }
    }

    #[inline(always)]
    fn subtract<const L: usize>(&self, terms: (u16, u16), factors: &[[f64; L]], x: &[[f64; L]], sum: &mut [f64; L]) {
        for &(factor, component) in &self.terms[usize::from(terms.0)..usize::from(terms.1)] {
            let (a, b) = (&factors[usize::from(factor)], &x[usize::from(component)]);
            for l in 0..L {
                sum[l] -= a[l] * b[l];
            }
        }
    }
}

fn narrow(place: usize) -> u16 {
    u16::try_from(place).ok().filter(|&place| place != NONE).expect("systems here have far fewer than 65535 entries")
}

/// At each turn the diagonal whose elimination could fill the fewest places.
fn pivot_order(pattern: &Pattern) -> Vec<usize> {
    let mut left: BTreeSet<(usize, usize)> = pattern.entries.iter().copied().collect();
    let mut waiting: BTreeSet<usize> = (0..pattern.size).collect();
    let mut order = Vec::with_capacity(pattern.size);
    while !waiting.is_empty() {
        let cost = |&p: &usize| {
            let row = left.iter().filter(|&&(i, j)| i == p && j != p).count();
            let column = left.iter().filter(|&&(i, j)| j == p && i != p).count();
            (row * column, row + column, p)
        };
        let pivot = *waiting.iter().min_by_key(|p| cost(p)).expect("some wait");
        let rows: Vec<usize> = left.iter().filter(|&&(i, j)| j == pivot && i != pivot).map(|&(i, _)| i).collect();
        let columns: Vec<usize> = left.iter().filter(|&&(i, j)| i == pivot && j != pivot).map(|&(_, j)| j).collect();
        left.retain(|&(i, j)| i != pivot && j != pivot);
        left.extend(rows.iter().flat_map(|&i| columns.iter().map(move |&j| (i, j))));
        waiting.remove(&pivot);
        order.push(pivot);
    }
    order
}

/// The pattern in pivot order with the places that elimination fills, row-major.
fn with_fill(pattern: &Pattern, order: &[usize]) -> Vec<(usize, usize)> {
    let mut turn = vec![0; order.len()];
    for (at, &p) in order.iter().enumerate() {
        turn[p] = at;
    }
    let mut all: BTreeSet<(usize, usize)> = pattern.entries.iter().map(|&(i, j)| (turn[i], turn[j])).collect();
    for k in 0..order.len() {
        let rows: Vec<usize> = all.iter().filter(|&&(i, j)| j == k && i > k).map(|&(i, _)| i).collect();
        let columns: Vec<usize> = all.iter().filter(|&&(i, j)| i == k && j > k).map(|&(_, j)| j).collect();
        all.extend(rows.iter().flat_map(|&i| columns.iter().map(move |&j| (i, j))));
    }
    all.into_iter().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// `(shift·M - J) x` must give back the right-hand side.
    fn check(size: usize, places: &[(usize, usize)], seed: u64) {
        let pattern = Pattern::new(size, places.iter().copied());
        let plan = Plan::new(&pattern);
        let mut noise = seed;
        let mut next = || {
            noise = noise.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
            (noise >> 11) as f64 / (1u64 << 53) as f64 - 0.5
        };
        let jacobian: Vec<[f64; 2]> = pattern.entries().iter().map(|_| [next(), next()]).collect();
        let mass = vec![[1.0; 2]; size];
        let shift = 2.0 * size as f64; // diagonally dominant, as short steps make it
        let right: Vec<[f64; 2]> = (0..size).map(|_| [next(), next()]).collect();
        let mut factors = vec![[0.0; 2]; plan.factor_entries()];
        let mut x = right.clone();
        plan.factorise(shift, &mass, &jacobian, &mut factors);
        plan.solve(&factors, &mut x);
        for lane in 0..2 {
            let mut left: Vec<f64> = x.iter().map(|x| shift * x[lane]).collect();
            for (&(i, j), a) in pattern.entries().iter().zip(&jacobian) {
                left[i] -= a[lane] * x[j][lane];
            }
            for i in 0..size {
                assert!((left[i] - right[i][lane]).abs() < 1e-12, "row {i}: {} is not {}", left[i], right[i][lane]);
            }
        }
    }

    proptest! {
        #[test]
        fn a_solution_put_back_gives_the_right_hand_side(
            places in prop::collection::vec((0usize..12, 0usize..12), 0..60), seed: u64
        ) {
            check(12, &places, seed);
        }
    }

    #[test]
    fn an_arrow_is_eliminated_from_its_shaft_without_fill() {
        let arrow: Vec<(usize, usize)> = (1..20).flat_map(|i| [(0, i), (i, 0)]).collect();
        let plan = Plan::new(&Pattern::new(20, arrow));
        assert_eq!(plan.factor_entries(), 20 + 2 * 19);
    }
}
