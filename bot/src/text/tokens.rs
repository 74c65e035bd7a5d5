//! Tokens: a text cut into words, numbers and marks.
//!
//! Takes any text, however hostile; gives tokens with their place in it, in time linear in its length. Numbers stuck
//! to units come apart ("10L", "1hr20") unless the whole is a word ("2day"). Knows words only by asking whether they exist.

use super::fold::{self, digit, in_word, invisible};
use super::lexicon::Lexicon;
use super::wordlist::kept_as_typed;

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mark {
    /// Ends a sentence.
    Stop,
    Question,
    Comma,
    Colon,
    Dash,
    Slash,
    Plus,
    Equals,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TokenKind {
    /// A folded word: a range of [`Tokens::letters`].
    Word(u32, u32),
    /// Digits with the marks inside them: a range of [`Tokens::letters`], digits made ASCII.
    Digits(u32, u32),
    /// ½ and its like.
    Fraction(f64),
    Mark(Mark),
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Token {
    pub kind: TokenKind,
    /// Where it stands in the text, in bytes.
    pub start: u32,
    pub end: u32,
    /// Whether it touches the token before it.
    pub glued: bool,
}

#[derive(Debug, Default)]
pub struct Tokens {
    pub letters: String,
    pub list: Vec<Token>,
}

impl Tokens {
    pub fn text(&self, token: &Token) -> &str {
        match token.kind {
            TokenKind::Word(from, to) | TokenKind::Digits(from, to) => &self.letters[from as usize..to as usize],
            _ => "",
        }
    }

    pub fn new(text: &str, lexicon: &Lexicon) -> Tokens {
        let mut cut = Cutter { text, lexicon, out: Tokens::default(), last_end: usize::MAX };
        cut.out.letters.reserve(text.len());
        cut.run();
        cut.out
    }
}

/// As many as the longest text that is taken in has letters: what comes after is not read, so that none costs more.
const MOST: usize = 1_600;

struct Cutter<'a> {
    text: &'a str,
    lexicon: &'a Lexicon,
    out: Tokens,
    last_end: usize,
}

impl Cutter<'_> {
    fn run(&mut self) {
        let mut at = 0;
        while let Some(c) = self.text[at..].chars().next().filter(|_| self.out.list.len() < MOST) {
            let after = at + c.len_utf8();
            at = if invisible(c) {
                if self.last_end == at {
                    self.last_end = after;
                }
                after
            } else if in_word(c) || digit(c).is_some() {
                self.chunk(at)
            } else if c == '.' && self.leads_a_number(after) {
                after
            } else {
                self.mark(at, c);
                after
            };
        }
    }

    /// ".5 kg": whether the point before `start` stands for a nought and a point.
    fn leads_a_number(&self, start: usize) -> bool {
        let before = self.text[..start].strip_suffix('.').map(|text| text.chars().next_back());
        before.is_some_and(|last| last.is_none_or(char::is_whitespace))
            && self.text[start..].chars().next().is_some_and(|c| digit(c).is_some())
    }

    /// A run of letters and digits.
    fn chunk(&mut self, start: usize) -> usize {
        let mut end = start;
        let mut has_digit = false;
        let mut has_letter = false;
        let mut chars = self.text[start..].char_indices().peekable();
        while let Some((at, c)) = chars.next() {
            let joins = |c: &char| matches!(c, '\'' | '’' | '‘' | '`' | 'ʼ');
            if digit(c).is_some() {
                has_digit = true;
            } else if in_word(c) {
                has_letter = true;
            } else if joins(&c)
                && has_letter
                && !self.lexicon.habits.apostrophe_splits
                && chars.peek().is_some_and(|&(_, next)| in_word(next))
            {
            } else if !invisible(c) {
                break;
            }
            end = start + at + c.len_utf8();
        }
        if has_digit && has_letter && self.whole(start, end) {
            return end;
        }
        if !has_digit {
            self.word(start, end);
            return end;
        }
        self.runs(start)
    }

    /// A chunk such as "2day" or "m3" that is listed as it stands.
    fn whole(&mut self, start: usize, end: usize) -> bool {
        let folded: String = self.text[start..end].chars().fold(String::new(), |mut word, c| {
            match digit(c) {
                Some(value) => word.push(char::from(b'0' + value)),
                None => fold::push(&mut word, c),
            }
            word
        });
        let listed = folded.len() <= 16 && self.lexicon.exact(&folded).is_some();
        if listed {
            let from = self.out.letters.len() as u32;
            self.out.letters.push_str(&folded);
            self.push(TokenKind::Word(from, self.out.letters.len() as u32), start, end);
        }
        listed
    }

    fn word(&mut self, start: usize, end: usize) {
        let from = self.out.letters.len();
        let typed = &self.text[start..end];
        match kept_as_typed(&self.lexicon.habits, typed) {
            Some(kept) => self.out.letters.push_str(&kept),
            None => typed
                .chars()
                .filter(|c| !matches!(c, '\'' | '’' | '‘' | '`' | 'ʼ'))
                .for_each(|c| fold::push(&mut self.out.letters, c)),
        }
        if self.out.letters.len() > from {
            self.push(TokenKind::Word(from as u32, self.out.letters.len() as u32), start, end);
        }
    }

    /// One run of letters, or one number with the marks inside it; gives where it ends.
    fn runs(&mut self, start: usize) -> usize {
        let rest = &self.text[start..];
        let first = rest.chars().next().expect("a chunk is not empty");
        if digit(first).is_none() {
            let end = rest.char_indices().find(|&(_, c)| !in_word(c) && !invisible(c)).map_or(rest.len(), |(at, _)| at);
            // "O" typed for zero in front of digits is left alone: too rare to guess.
            self.word(start, start + end);
            return start + end;
        }
        let from = self.out.letters.len();
        if self.leads_a_number(start) {
            self.out.letters.push_str("0.");
        }
        let mut end = 0;
        let mut chars = rest.char_indices().peekable();
        while let Some((at, c)) = chars.next() {
            if let Some(value) = digit(c) {
                self.out.letters.push(char::from(b'0' + value));
            } else if matches!(c, '.' | ',' | ':' | '\'' | '’' | '٫' | '٬')
                && chars.peek().is_some_and(|&(_, next)| digit(next).is_some())
            {
                self.out.letters.push(match c {
                    '٫' => '.',
                    '٬' => ',',
                    '’' => '\'',
                    other => other,
                });
            } else if matches!(c, 'O' | 'o') && chars.peek().is_none_or(|&(_, next)| !in_word(next)) {
                // "2O kg": the letter typed for zero.
                self.out.letters.push('0');
            } else if !invisible(c) {
                break;
            }
            end = at + c.len_utf8();
        }
        self.push(TokenKind::Digits(from as u32, self.out.letters.len() as u32), start, start + end);
        start + end
    }

    fn mark(&mut self, start: usize, c: char) {
        let end = start + c.len_utf8();
        let kind = match c {
            '.' | ';' | '!' | '\n' | '…' | '।' | '¡' | '|' => TokenKind::Mark(Mark::Stop),
            '?' | '؟' | '¿' => TokenKind::Mark(Mark::Question),
            ',' | '(' | ')' | '،' | '、' => TokenKind::Mark(Mark::Comma),
            ':' => TokenKind::Mark(Mark::Colon),
            '-' | '–' | '—' | '~' => TokenKind::Mark(Mark::Dash),
            '/' => TokenKind::Mark(Mark::Slash),
            '+' | '&' => TokenKind::Mark(Mark::Plus),
            '=' => TokenKind::Mark(Mark::Equals),
            '×' | '*' => {
                let from = self.out.letters.len() as u32;
                self.out.letters.push('x');
                TokenKind::Word(from, from + 1)
            }
            '°' | '%' | '👍' | '👎' | '✅' | '❌' | '🔥' | '💧' => {
                let from = self.out.letters.len() as u32;
                self.out.letters.push(c);
                TokenKind::Word(from, self.out.letters.len() as u32)
            }
            _ => match vulgar(c) {
                Some(value) => TokenKind::Fraction(value),
                None => return,
            },
        };
        self.push(kind, start, end);
    }

    fn push(&mut self, kind: TokenKind, start: usize, end: usize) {
        let glued = self.last_end == start;
        self.last_end = end;
        self.out.list.push(Token { kind, start: start as u32, end: end as u32, glued });
    }
}

fn vulgar(c: char) -> Option<f64> {
    Some(match c {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '⅕' => 0.2,
        '⅛' => 0.125,
        _ => return None,
    })
}
