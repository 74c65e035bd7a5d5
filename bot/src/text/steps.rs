//! Steps: the tree of phrases, from a node by a word to the next node; node 0 is the root.
//!
//! Grown while a word list is taken in, then packed: a fifth of a million steps a language are asked for at every word.

use std::collections::HashMap;

#[derive(Debug, Default)]
pub struct Steps {
    /// (node, word) to node, while growing.
    growing: HashMap<u64, u32>,
    /// By node: where its edges start. One more than there are nodes.
    starts: Box<[u32]>,
    /// (word, node) of each node in turn, sorted by word.
    edges: Box<[(u32, u32)]>,
}

impl Steps {
    /// The node after `word` at `node`; `fresh` if there was none.
    pub fn grow(&mut self, node: u32, word: u32, fresh: u32) -> u32 {
        *self.growing.entry(key(node, word)).or_insert(fresh)
    }

    /// Nothing grows any more.
    pub fn pack(&mut self) {
        let mut steps: Vec<(u64, u32)> = std::mem::take(&mut self.growing).into_iter().collect();
        steps.sort_unstable();
        let nodes = steps.iter().map(|&(_, node)| node + 1).max().unwrap_or(1);
        let from = |key: u64| (key >> 32) as u32;
        let mut at = 0;
        let start = |node: u32| {
            at += steps[at..].partition_point(|&(key, _)| from(key) < node);
            at as u32
        };
        self.starts = (0..=nodes).map(start).collect();
        self.edges = steps.iter().map(|&(key, node)| (key as u32, node)).collect();
    }

    pub fn get(&self, node: u32, word: u32) -> Option<u32> {
        let at = node as usize;
        let Some(&[start, end]) = self.starts.get(at..at + 2) else {
            return self.growing.get(&key(node, word)).copied();
        };
        let edges = &self.edges[start as usize..end as usize];
        edges.binary_search_by_key(&word, |&(word, _)| word).ok().map(|at| edges[at].1)
    }
}

fn key(node: u32, word: u32) -> u64 {
    u64::from(node) << 32 | u64::from(word)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_is_the_same_growing_and_packed() {
        let mut steps = Steps::default();
        assert_eq!(steps.grow(0, 7, 1), 1);
        assert_eq!(steps.grow(1, 3, 2), 2);
        assert_eq!(steps.grow(0, 5, 3), 3);
        assert_eq!(steps.grow(0, 7, 4), 1, "known already");
        let all = |steps: &Steps| [(0, 7), (1, 3), (0, 5), (2, 7), (3, 0), (0, 6)].map(|(n, w)| steps.get(n, w));
        let growing = all(&steps);
        steps.pack();
        assert_eq!(all(&steps), growing);
        assert_eq!(growing, [Some(1), Some(2), Some(3), None, None, None]);
    }
}
