//! `bellyful read`: one text, or JSON lines, to readings.

use crate::text::{Lexicons, read};
use anyhow::Context;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use std::io::{BufRead, Write};
use std::path::PathBuf;
use std::process::ExitCode;

/// Read one text, or JSON lines from standard input, into readings.
#[derive(Debug, clap::Args)]
pub struct ReadArgs {
    /// The language of the text (ISO 639-1); told from the text itself when left out.
    #[arg(long)]
    lang: Option<String>,
    /// When the text was written (RFC 3339); the clock when left out.
    #[arg(long)]
    now: Option<DateTime<Utc>>,
    /// Read JSON lines {"text","lang","now"} from standard input, and write one reading a line.
    #[arg(long, conflicts_with_all = ["text", "lang", "now"])]
    lines: bool,
    /// A folder with further languages: xx/words.toml in it is read beside the built-in ones.
    #[arg(long)]
    lang_dir: Option<PathBuf>,
    /// The text.
    #[arg(required_unless_present = "lines")]
    text: Option<String>,
}

#[derive(Deserialize)]
struct Line {
    text: String,
    lang: Option<String>,
    now: Option<DateTime<Utc>>,
}

#[derive(Serialize)]
struct BadLine {
    error: String,
}

pub fn run(args: &ReadArgs) -> anyhow::Result<ExitCode> {
    let folder = args.lang_dir.clone().or_else(|| std::env::var_os("BELLYFUL__LANG_DIR").map(PathBuf::from));
    let lexicons = match &folder {
        Some(folder) => Lexicons::with_folder(folder)?,
        None => Lexicons::built_in(),
    };
    if args.lines {
        return lines(&lexicons, std::io::stdin().lock(), std::io::stdout().lock());
    }
    if let Some(lang) = args.lang.as_deref().filter(|lang| lexicons.get(lang).is_none()) {
        anyhow::bail!("{}", unknown_language(&lexicons, lang));
    }
    let text = args.text.as_deref().unwrap_or_default();
    let reading = read(&lexicons, text, args.lang.as_deref(), args.now.unwrap_or_else(Utc::now).date_naive());
    println!("{}", serde_json::to_string(&reading)?);
    Ok(ExitCode::SUCCESS)
}

fn unknown_language(lexicons: &Lexicons, lang: &str) -> String {
    let codes: Vec<&str> = lexicons.all().iter().map(|lexicon| lexicon.code.as_str()).collect();
    format!("there are no words for language `{lang}`; choose one of {}", codes.join(", "))
}

/// One line out for each line in; a bad line is answered in its place, and the exit code tells.
fn lines(lexicons: &Lexicons, input: impl BufRead, output: impl Write) -> anyhow::Result<ExitCode> {
    let mut output = std::io::BufWriter::new(output);
    let mut bad = false;
    for line in input.split(b'\n') {
        let line = line.context("standard input cannot be read")?;
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        let parsed: Result<Line, String> = serde_json::from_slice(&line)
            .map_err(|error| format!("the line is not {{\"text\",\"lang\",\"now\"}} in JSON: {error}"));
        let reading = parsed.and_then(|line| match line.lang.as_deref() {
            Some(lang) if lexicons.get(lang).is_none() => Err(unknown_language(lexicons, lang)),
            lang => Ok(read(lexicons, &line.text, lang, line.now.unwrap_or_else(Utc::now).date_naive())),
        });
        match reading {
            Ok(reading) => serde_json::to_writer(&mut output, &reading)?,
            Err(error) => {
                bad = true;
                serde_json::to_writer(&mut output, &BadLine { error })?;
            }
        }
        output.write_all(b"\n")?;
    }
    output.flush()?;
    Ok(ExitCode::from(u8::from(bad)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bad_line_is_answered_in_its_place() {
        let mut out = Vec::new();
        let input = b"{\"text\":\"stop\",\"lang\":\"en\"}\nnonsense\n{\"text\":\"stop\",\"lang\":\"zz\"}\n{\"text\":\"help\"}\n";
        let code = lines(&Lexicons::built_in(), &input[..], &mut out).expect("runs");
        let out = String::from_utf8(out).expect("UTF-8");
        let rows: Vec<&str> = out.lines().collect();
        assert_eq!(rows.len(), 4);
        assert!(rows[0].contains("\"control\":\"stop\""), "{}", rows[0]);
        assert!(rows[1].starts_with("{\"error\":") && rows[2].starts_with("{\"error\":"));
        assert!(rows[3].contains("\"control\":\"help\""), "{}", rows[3]);
        assert_eq!(format!("{code:?}"), format!("{:?}", ExitCode::from(1)));
    }
}
