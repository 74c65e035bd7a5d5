//! Which instruction set the lanes run on.
//!
//! Takes nothing but the processor; gives the widest set it has. All sets do the same additions, multiplications and
//! divisions in the same order, never fused, so the choice changes speed and no byte of the answer.

/// Instruction sets that the time loop is compiled for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InstructionSet {
    /// What every machine of this kind has.
    Baseline,
    Avx2,
    Avx512,
}

impl InstructionSet {
    /// The widest one of this processor.
    pub fn widest() -> InstructionSet {
        Self::available().last().copied().expect("the baseline is always there")
    }

    /// All that this processor has, narrowest first.
    pub fn available() -> Vec<InstructionSet> {
        let mut all = vec![InstructionSet::Baseline];
        #[cfg(target_arch = "x86_64")]
        {
            if std::arch::is_x86_feature_detected!("avx2") {
                all.push(InstructionSet::Avx2);
                if std::arch::is_x86_feature_detected!("avx512f") {
                    all.push(InstructionSet::Avx512);
                }
            }
        }
        all
    }

    /// This one if the processor has it, else the widest it has.
    pub(super) fn or_widest(self) -> InstructionSet {
        if Self::available().contains(&self) { self } else { Self::widest() }
    }
}
